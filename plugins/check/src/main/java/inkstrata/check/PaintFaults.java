package inkstrata.check;

import inkstrata.film.Stain;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Subject;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Paint on films that is neither black nor clear. */
final class PaintFaults {
    private PaintFaults() {}

    /** One finding for each film, at the largest piece of its commonest shade. */
    static List<Finding> of(List<WholeFilm> films, Intent intent) {
        return films.stream()
                .filter(film -> !film.film().stains().isEmpty())
                .map(film -> fault(film, intent))
                .toList();
    }

    private static Finding fault(WholeFilm film, Intent intent) {
        List<Stain> stains = film.film().stains();
        Stain commonest = stains.stream()
                .max(Comparator.comparingDouble(stain -> stain.region().areaMm2()))
                .orElseThrow();
        Region largest = commonest.region().polygons().stream()
                .map(Region::of)
                .max(Comparator.comparingDouble(Region::areaMm2))
                .orElseThrow();
        Region area = WholeFilm.stained(film.film());
        String shades = stains.size() == 1
                ? commonest.shade().hex()
                : String.format(
                        Locale.ROOT,
                        "%d shades, most of it %s",
                        stains.size(),
                        commonest.shade().hex());
        return new Finding(
                        Severity.ERROR,
                        "grey paint",
                        largest.somewhere(),
                        String.format(
                                Locale.ROOT,
                                "%s holds paint of %s (%.2f mm²)",
                                film.film().file(),
                                shades,
                                area.areaMm2()),
                        "black or clear",
                        "Fill it with #000000, fully opaque, or take it out: emulsion knows no half-tones.")
                .about(Subject.ink(intent.inks().get(film.pull()))
                        .withPull(film.pull())
                        .withFile(film.film().file()))
                .withQuantity(Quantity.of(area.areaMm2(), 0, Unit.SQUARE_MILLIMETRES))
                .withArea(area);
    }
}
