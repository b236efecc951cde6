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
 */
public record Ink(String name, Rgb swatch, double hiding, Optional<Mesh> mesh, boolean key) {
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

    /** One printed film of it, as far as swatch and hiding tell. */
    public InkFilm film() {
        return InkFilm.of(Spectrum.of(swatch), hiding);
    }
}
