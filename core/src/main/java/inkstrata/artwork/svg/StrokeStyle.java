package inkstrata.artwork.svg;

/**
 * How a line is drawn (SVG 2, section 13.5), in user units.
 *
 * @param width 0 draws nothing
 * @param cap as in {@link java.awt.BasicStroke}
 * @param join as in {@link java.awt.BasicStroke}
 * @param miterLimit miter length by width beyond which a corner is bevelled
 * @param dashes lengths on and off in turn; none for a solid line
 * @param dashOffset where in the pattern a line starts
 */
record StrokeStyle(double width, int cap, int join, double miterLimit, double[] dashes, double dashOffset) {
    StrokeStyle scaled(double factor) {
        return new StrokeStyle(width * factor, cap, join, miterLimit, scaled(dashes, factor), dashOffset * factor);
    }

    /** With dashes longer by a factor, for paths that state their own length. */
    StrokeStyle withDashesScaled(double factor) {
        return new StrokeStyle(width, cap, join, miterLimit, scaled(dashes, factor), dashOffset * factor);
    }

    /** Whether the pattern leaves gaps: negative or all-zero patterns draw a solid line (SVG 2, section 13.5.6). */
    boolean isDashed() {
        double sum = 0;
        for (double length : dashes) {
            if (!(length >= 0)) {
                return false;
            }
            sum += length;
        }
        return sum > 0 && Double.isFinite(sum);
    }

    /** Length of the pattern until it repeats with dashes where dashes were. */
    double dashPeriod() {
        double sum = 0;
        for (double length : dashes) {
            sum += length;
        }
        return dashes.length % 2 == 0 ? sum : 2 * sum;
    }

    /** The offset within one period. */
    double positiveDashOffset() {
        if (!isDashed()) {
            return 0;
        }
        double period = dashPeriod();
        double within = dashOffset % period;
        return within < 0 ? within + period : within;
    }

    private static double[] scaled(double[] lengths, double factor) {
        double[] scaled = lengths.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return scaled;
    }
}
