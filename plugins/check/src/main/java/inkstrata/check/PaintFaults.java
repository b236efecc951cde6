package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.film.Stain;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Paint on films that is neither black nor clear. */
final class PaintFaults {
    private PaintFaults() {}

    /** One finding for each film and shade, at its largest piece. */
    static List<Finding> of(List<Film> films) {
        return films.stream()
                .flatMap(film -> film.stains().stream().map(stain -> fault(film, stain)))
                .toList();
    }

    private static Finding fault(Film film, Stain stain) {
        Region largest = stain.region().polygons().stream()
                .map(Region::of)
                .max(Comparator.comparingDouble(Region::areaMm2))
                .orElseThrow();
        return new Finding(
                Severity.ERROR,
                "grey paint",
                largest.somewhere(),
                String.format(
                        Locale.ROOT,
                        "%s holds paint of %s (%.2f mm²)",
                        film.file(),
                        stain.shade().hex(),
                        stain.region().areaMm2()),
                "black or clear",
                "Fill it with #000000, fully opaque, or take it out: emulsion knows no half-tones.");
    }
}
