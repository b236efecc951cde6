package inkstrata.plan;

import inkstrata.colour.InkFilm;
import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
import java.util.Optional;

/**
 * One mixed ink.
 *
 * @param name unique in the plan
 * @param swatch its colour over white
 * @param hiding contrast ratio (ISO 6504-3), 0 clear to 1 opaque
 * @param mesh the cloth it is printed through, if the job says so
 * @param key whether the job names it the key
 * @param film one printed film of it
 * @param side on which it is printed; empty for the side that the sheet is printed on
 * @param from the drawing that it prints all of, whatever lies above: {@code #id} of a group, or a file's name; empty for an ink
 *     that prints where its colour shows
 */
public record Ink(
        String name,
        Rgb swatch,
        double hiding,
        Optional<Mesh> mesh,
        boolean key,
        InkFilm film,
        Optional<Side> side,
        Optional<String> from) {
    /** Hiding of an ink of which nothing is known: an ordinary water-based one (common practice, no source). */
    public static final double DEFAULT_HIDING = 0.9;

    public Ink {
        if (name.isBlank()) {
            throw new IllegalArgumentException("an ink needs a name");
        }
        if (!(hiding >= 0 && hiding <= 1)) {
            throw new IllegalArgumentException("hiding " + hiding + " is outside 0 (clear) to 1 (opaque)");
        }
    }

    /** An ink of which no more is known, with the film that swatch and hiding make. */
    public Ink(String name, Rgb swatch, double hiding, Optional<Mesh> mesh, boolean key) {
        this(
                name,
                swatch,
                hiding,
                mesh,
                key,
                InkFilm.of(Spectrum.of(swatch), hiding),
                Optional.empty(),
                Optional.empty());
    }

    /** The same ink under another name. */
    public Ink withName(String newName) {
        return new Ink(newName, swatch, hiding, mesh, key, film, side, from);
    }

    /** An ink of which only name and colour are known. */
    public static Ink ordinary(String name, Rgb swatch) {
        return new Ink(name, swatch, DEFAULT_HIDING, Optional.empty(), false);
    }
}
