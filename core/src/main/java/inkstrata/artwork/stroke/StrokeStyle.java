package inkstrata.artwork.stroke;

import java.util.Arrays;
import java.util.List;

/**
 * How a line is drawn (SVG 2, section 13.5), in the path's units.
 *
 * @param width 0 draws nothing
 * @param cap what the ends of lines and dashes look like
 * @param join what corners look like
 * @param miterLimit miter length by width beyond which a corner is bevelled
 * @param dashes lengths on and off in turn; none for a solid line
 * @param dashOffset where in the pattern a line starts
 */
public record StrokeStyle(double width, Cap cap, Join join, double miterLimit, List<Double> dashes, double dashOffset) {
    /** The ends of open lines and of dashes. */
    public enum Cap {
        BUTT,
        ROUND,
        SQUARE
    }

    /** Corners. */
    public enum Join {
        MITER,
        ROUND,
        BEVEL
    }

    public StrokeStyle {
        dashes = List.copyOf(dashes);
    }

    /** The same stroke in other units. */
    public StrokeStyle scaled(double factor) {
        return new StrokeStyle(width * factor, cap, join, miterLimit, scaled(dashes, factor), dashOffset * factor);
    }

    /** With dashes longer by a factor, for paths that state their own length. */
    public StrokeStyle withDashesScaled(double factor) {
        return new StrokeStyle(width, cap, join, miterLimit, scaled(dashes, factor), dashOffset * factor);
    }

    /** Whether the pattern leaves gaps: negative or all-zero patterns draw a solid line (SVG 2, section 13.5.6). */
    public boolean isDashed() {
        double sum = dashes.stream().mapToDouble(Double::doubleValue).sum();
        return sum > 0 && Double.isFinite(sum) && dashes.stream().allMatch(length -> length >= 0);
    }

    /** Length of the pattern until it repeats with dashes where dashes were: an odd list counts twice. */
    public double dashPeriod() {
        double sum = dashes.stream().mapToDouble(Double::doubleValue).sum();
        return dashes.size() % 2 == 0 ? sum : 2 * sum;
    }

    /** Dashes and gaps in turn, as many of one as of the other. */
    double[] pattern() {
        int n = dashes.size();
        double[] pattern = new double[n % 2 == 0 ? n : 2 * n];
        Arrays.setAll(pattern, i -> dashes.get(i % n));
        return pattern;
    }

    /** The offset within one period. */
    double positiveDashOffset() {
        double period = dashPeriod();
        double within = dashOffset % period;
        return within < 0 ? within + period : within;
    }

    private static List<Double> scaled(List<Double> lengths, double factor) {
        return lengths.stream().map(length -> length * factor).toList();
    }
}
