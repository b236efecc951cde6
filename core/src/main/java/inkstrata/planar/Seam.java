package inkstrata.planar;

import inkstrata.measure.Place;
import java.util.Comparator;
import java.util.Optional;

/**
 * A strip between two outlines, in which shows what lies beneath both: sheet, or a lower paint.
 *
 * <p>All places at which the same two outlines run beside each other that near count as one. The order is closed ones first,
 * then by area, the largest first.
 *
 * @param shows what shows in the strip, as drawn; empty for bare sheet
 * @param one what shows at one side; empty where that is the picture's edge
 * @param other what shows at the other side
 * @param lengthMm along the strip
 * @param widestMm where it is widest
 * @param place where that is
 * @param closed whether it was narrow enough to be closed; else it was kept
 */
public record Seam(
        Optional<Paint> shows,
        Optional<Paint> one,
        Optional<Paint> other,
        double lengthMm,
        double widestMm,
        Place place,
        boolean closed)
        implements Comparable<Seam> {
    private static final Comparator<Seam> ORDER = Comparator.comparing((Seam seam) -> !seam.closed)
            .thenComparing(Comparator.comparingDouble((Seam seam) -> seam.lengthMm * seam.widestMm)
                    .reversed())
            .thenComparingDouble(seam -> seam.place.y())
            .thenComparingDouble(seam -> seam.place.x());

    @Override
    public int compareTo(Seam that) {
        return ORDER.compare(this, that);
    }
}
