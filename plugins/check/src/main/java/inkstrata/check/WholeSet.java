package inkstrata.check;

import inkstrata.check.WholeFilm.Fault;
import inkstrata.measure.Frame;
import inkstrata.planar.Affine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Films that are wrong as wholes in one and the same way.
 *
 * @param fault what is wrong with each
 * @param films by position
 * @param isAll whether these are all films of the set that hold anything, and more than one
 */
record WholeSet(Fault fault, List<WholeFilm> films, boolean isAll) {
    /** Films lie in one place if their corners do, but for this, in millimetres. */
    private static final double ONE_PLACE_MM = 0.03;

    /** Sizes that differ by less, as a ratio, and turns, in radians, are the same. */
    private static final double ONE_SIZE = 0.0003;

    /** Films are spread alike if the amounts differ by less, in millimetres. */
    private static final double ONE_SPREAD_MM = 0.012;

    WholeSet {
        films = List.copyOf(films);
    }

    /** The film that tells best: the one with the largest picture. */
    WholeFilm first() {
        return films.get(0);
    }

    /**
     * Sorts films by what is wrong with them. Where one place explains all films of a set, it is taken for those too that would be explained
     * otherwise: in a set that is mirrored a disc has merely moved.
     *
     * @param films all there are
     */
    static List<WholeSet> of(List<WholeFilm> films, Intent intent, Diagnosis diagnosis) {
        List<WholeFilm> holding = films.stream()
                .filter(film -> film.fault() != Fault.EMPTY
                        && !intent.planned().get(film.pull()).isEmpty())
                .toList();
        Optional<WholeSet> all = holding.stream()
                .filter(film -> film.fault().isPlacing() || film.fault().isAllRound())
                .sorted(Comparator.comparing((WholeFilm film) -> film.fault() != Fault.MIRRORED)
                        .thenComparing(film -> !film.fault().isAllRound())
                        .thenComparing(film -> -extent(film, intent)))
                .flatMap(film -> all(film, holding, intent, diagnosis).stream())
                .findFirst()
                .map(set -> set.withBlank(films, intent, diagnosis))
                .filter(set -> holding.size() > 1 || set.clearsTheBlank());
        if (all.isPresent()) {
            List<WholeSet> sets = new ArrayList<>(List.of(all.get()));
            films.stream()
                    .filter(film -> film.fault() == Fault.EMPTY)
                    .forEach(film -> sets.add(new WholeSet(film.fault(), List.of(film), false)));
            return sets;
        }
        List<WholeSet> sets = new ArrayList<>();
        List<WholeFilm> left = new ArrayList<>(films.stream()
                .filter(WholeFilm::isWrong)
                .sorted(Comparator.comparingDouble((WholeFilm film) -> -extent(film, intent)))
                .toList());
        while (!left.isEmpty()) {
            WholeFilm first = left.get(0);
            List<WholeFilm> alike =
                    left.stream().filter(film -> isAlike(first, film, intent)).toList();
            left.removeAll(alike);
            sets.add(new WholeSet(first.fault(), alike, alike.size() == holding.size() && alike.size() > 1));
        }
        return sets;
    }

    /** All films, explained by one film's place, if they are. */
    @SuppressWarnings("ReferenceEquality")
    private static Optional<WholeSet> all(WholeFilm film, List<WholeFilm> holding, Intent intent, Diagnosis diagnosis) {
        List<WholeFilm> placed = new ArrayList<>(List.of(film));
        for (WholeFilm other : holding) {
            if (other != film) {
                Optional<WholeFilm> explained =
                        isAlike(film, other, intent) && film.fault().isAllRound()
                                ? Optional.of(other)
                                : diagnosis
                                        .explainedBy(film, other, ONE_SPREAD_MM)
                                        .or(() -> isAlike(film, other, intent) ? Optional.of(other) : Optional.empty());
                if (explained.isEmpty()) {
                    return Optional.empty();
                }
                placed.add(explained.get());
            }
        }
        return Optional.of(new WholeSet(film.fault(), placed, true));
    }

    /** With films on which nothing is to print but what lies around the picture. */
    private WholeSet withBlank(List<WholeFilm> all, Intent intent, Diagnosis diagnosis) {
        List<WholeFilm> more = new ArrayList<>(films);
        all.stream()
                .filter(film -> intent.planned().get(film.pull()).isEmpty())
                .flatMap(film -> diagnosis.explainedBy(first(), film, ONE_SPREAD_MM).stream())
                .forEach(more::add);
        return new WholeSet(fault, more, isAll);
    }

    /** Whether what lies in the picture on films that are to be blank does not lie there then: that has moved with the set. */
    private boolean clearsTheBlank() {
        return films.stream()
                .anyMatch(film -> film.fault() == Fault.NONE
                        && !film.film().picture().isEmpty()
                        && film.mended().picture().isEmpty());
    }

    @SuppressWarnings("ReferenceEquality")
    private static boolean isAlike(WholeFilm one, WholeFilm other, Intent intent) {
        if (one == other) {
            return true;
        }
        if (one.fault() != other.fault()) {
            return false;
        }
        return switch (one.fault()) {
            case NONE, EMPTY, SWAPPED -> false;
            case NEGATIVE, MIRRORED -> true;
            case SIZE -> Math.abs(Math.log(one.larger() / other.larger())) < ONE_SIZE;
            case TURNED, STRETCHED -> isSameTurn(one.place(), other.place());
            case PLACE ->
                isSameTurn(one.place(), other.place())
                        && Math.hypot(
                                        moved(one, intent)[0] - moved(other, intent)[0],
                                        moved(one, intent)[1] - moved(other, intent)[1])
                                < ONE_PLACE_MM;
            case SPREAD, CHOKED -> Math.abs(one.offsetMm() - other.offsetMm()) < ONE_SPREAD_MM;
        };
    }

    private static boolean isSameTurn(Affine one, Affine other) {
        return Math.abs(one.xx() - other.xx()) < ONE_SIZE
                && Math.abs(one.xy() - other.xy()) < ONE_SIZE
                && Math.abs(one.yx() - other.yx()) < ONE_SIZE
                && Math.abs(one.yy() - other.yy()) < ONE_SIZE;
    }

    /** How far the middle of a film's picture has to move, in millimetres. */
    static double[] moved(WholeFilm film, Intent intent) {
        var middle = intent.middle(film.pull());
        var meant = film.place().of(middle);
        return new double[] {middle.x() - meant.x(), middle.y() - meant.y()};
    }

    private static double extent(WholeFilm film, Intent intent) {
        Frame bounds = intent.planned().get(film.pull()).bounds().orElse(intent.frame());
        return Math.max(bounds.width(), bounds.height());
    }
}
