package inkstrata.artwork.stroke;

/**
 * What lies between two spans that meet at an angle (SVG 2, section 13.5.5): a wedge on the outer side of the turn.
 *
 * @param style of a width more than 0
 */
record Corner(StrokeStyle style) {
    /** Corners that a mitre would sharpen by less than this are none, in the path's units of 1 µm. */
    private static final double UNSEEN = 0.02;

    /** Limits and lengths of mitres that are meant to be equal differ by rounding. */
    private static final double ROUNDING = 1e-9;

    /** Whether spans that turn by this angle meet as if they were one. */
    boolean isSmooth(double turn) {
        return Math.abs(turn) * style.width() / 2 < UNSEEN;
    }

    /** Goes from where the outer side of the span before ends to where that of the next begins. */
    void outside(Contour contour, Station before, Station next, double turn) {
        double half = style.width() / 2;
        double aside = turn > 0 ? -half : half;
        double ratio = 1 / Math.cos(turn / 2);
        if (style.join() == StrokeStyle.Join.ROUND) {
            Arc.draw(contour, before.x(), before.y(), next.x(aside), next.y(aside), turn);
        } else if (style.join() == StrokeStyle.Join.MITER
                && ratio > 0
                && ratio <= style.miterLimit() * (1 + ROUNDING)) {
            double tip = half * Math.tan(Math.abs(turn) / 2);
            contour.to(before.x(aside) + tip * before.tx(), before.y(aside) + tip * before.ty());
        }
        contour.to(next.x(aside), next.y(aside));
    }

    /** How much of each span lies beyond the place where their inner sides cross. */
    double inside(double turn) {
        return style.width() / 2 * Math.tan(Math.abs(turn) / 2);
    }
}
