package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.film.Stain;
import inkstrata.planar.Affine;
import inkstrata.planar.Region;

/**
 * What is wrong with a film as a whole, and what it would print if that were mended.
 *
 * @param pull whose film it is said to be, by position
 * @param film as it lies
 * @param fault what is wrong
 * @param place how it would have to be placed
 * @param prints the pull that it prints, by position
 * @param offsetMm by how much it is spread all round, or choked if below zero
 * @param mended what it prints once that is mended
 */
record WholeFilm(int pull, Film film, Fault fault, Affine place, int prints, double offsetMm, Film mended) {
    /** What can be wrong with all of a film. */
    enum Fault {
        NONE(""),
        EMPTY("empty film"),
        SWAPPED("swapped films"),
        NEGATIVE("negative film"),
        PLACE("film place"),
        TURNED("turned film"),
        SIZE("film size"),
        STRETCHED("stretched film"),
        MIRRORED("mirrored film"),
        SPREAD("spread film"),
        CHOKED("choked film");

        private final String rule;

        Fault(String rule) {
            this.rule = rule;
        }

        String rule() {
            return rule;
        }

        boolean isPlacing() {
            return this == PLACE || this == TURNED || this == SIZE || this == STRETCHED || this == MIRRORED;
        }

        boolean isAllRound() {
            return this == SPREAD || this == CHOKED;
        }

        /** Whether films fit each other nevertheless if all of them lie so. */
        boolean keepsTheFit() {
            return this == PLACE || this == TURNED;
        }
    }

    static WholeFilm right(int pull, Film film) {
        return new WholeFilm(pull, film, Fault.NONE, Affine.NONE, pull, 0, film);
    }

    WholeFilm with(Fault newFault, Film newMended) {
        return new WholeFilm(pull, film, newFault, place, prints, offsetMm, newMended);
    }

    /** One that lies where it should not. */
    WholeFilm placed(Fault newFault, Affine newPlace, Film newMended) {
        return new WholeFilm(pull, film, newFault, newPlace, prints, offsetMm, newMended);
    }

    WholeFilm anothers(int newPrints) {
        return new WholeFilm(pull, film, Fault.SWAPPED, place, newPrints, offsetMm, film);
    }

    /** Another's that is wrong by itself as well. */
    WholeFilm anothers(int newPrints, Affine newPlace, Film newMended) {
        return new WholeFilm(pull, film, Fault.SWAPPED, newPlace, newPrints, offsetMm, newMended);
    }

    WholeFilm allRound(double offset, Film newMended) {
        return new WholeFilm(pull, film, offset > 0 ? Fault.SPREAD : Fault.CHOKED, place, prints, offset, newMended);
    }

    /** All that is black or grey in the picture: what somebody wanted to print. */
    static Region painted(Film film) {
        return film.picture().union(stained(film));
    }

    /** Where a film is neither black nor clear. */
    static Region stained(Film film) {
        return Region.union(film.stains().stream().map(Stain::region).toList());
    }

    /** How much larger than the artwork it is. */
    double larger() {
        return 1 / place.scale();
    }

    boolean isWrong() {
        return fault != Fault.NONE;
    }
}
