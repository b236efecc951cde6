package inkstrata.artwork.svg;

import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/**
 * Strokes as shapes: what a pen of some width covers along a path, to be filled by the nonzero rule.
 *
 * <p>Java2D's stroker does most of the work, with two mends. It offsets each curve by a few others without a stated bound, so
 * curves are first cut until each turns by no more than {@link #LARGEST_TURN}; then the outline stays within 5 µm of the true
 * offset. And where two curves meet smoothly its mitred corners shoot off by up to the width of the pen, since
 * it intersects lines that are all but parallel; so it makes bevelled corners, and {@link MitredCorners} adds what a mitre
 * has more. The path is scaled so that 1 is 1 µm, for tolerances inside the stroker are absolute.
 */
final class Stroker {
    private static final double LARGEST_TURN = Math.toRadians(22.5);

    /** A curve is halved at most so often; by then its pieces are straight to the last bit or it is a cusp. */
    private static final int MOST_HALVINGS = 12;

    private Stroker() {}

    /**
     * The outline of a stroke.
     *
     * @param local the path, in any unit
     * @param style of a width more than 0, in the path's unit
     * @param unitMm one unit of the path in millimetres on the sheet
     * @throws Reach.Exceeded if the path or its stroke reaches too far
     */
    static Path2D.Double outline(Path2D.Double local, StrokeStyle style, double unitMm) {
        check(local, style, unitMm);
        double scale = unitMm * 1000;
        StrokeStyle large = style.scaled(scale);
        boolean mitred = style.join() == BasicStroke.JOIN_MITER;
        BasicStroke stroke = new BasicStroke(
                (float) large.width(),
                style.cap(),
                mitred ? BasicStroke.JOIN_BEVEL : style.join(),
                1,
                dashes(large),
                (float) large.positiveDashOffset());
        Path2D.Double path = gentle(local, AffineTransform.getScaleInstance(scale, scale));
        Path2D.Double outline = new Path2D.Double(stroke.createStrokedShape(path));
        if (mitred) {
            MitredCorners.add(path, large, outline);
        }
        outline.transform(AffineTransform.getScaleInstance(1 / scale, 1 / scale));
        outline.setWindingRule(Path2D.WIND_NON_ZERO);
        return outline;
    }

    private static void check(Path2D.Double path, StrokeStyle style, double unitMm) {
        Reach.checked(style.width() * unitMm);
        Reach.checked(style.dashOffset() * unitMm);
        for (double dash : style.dashes()) {
            Reach.checked(dash * unitMm);
        }
        double[] c = new double[6];
        for (PathIterator i = path.getPathIterator(AffineTransform.getScaleInstance(unitMm, unitMm));
                !i.isDone();
                i.next()) {
            int segment = i.currentSegment(c);
            for (int k = 0; k < Outlines.NUMBERS[segment]; k++) {
                Reach.checked(c[k]);
            }
        }
    }

    /** Dashes and gaps in turn, an odd list twice; null for a solid line. */
    private static float[] dashes(StrokeStyle style) {
        if (!style.isDashed()) {
            return null;
        }
        int n = style.dashes().length;
        float[] dashes = new float[n % 2 == 0 ? n : 2 * n];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = (float) style.dashes()[i % n];
        }
        return dashes;
    }

    private static Path2D.Double gentle(Path2D.Double path, AffineTransform transform) {
        Path2D.Double result = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double[] c = new double[8];
        for (PathIterator i = path.getPathIterator(transform); !i.isDone(); i.next()) {
            double[] p = new double[6];
            switch (i.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> {
                    result.moveTo(p[0], p[1]);
                    c[0] = p[0];
                    c[1] = p[1];
                }
                case PathIterator.SEG_LINETO -> {
                    result.lineTo(p[0], p[1]);
                    c[0] = p[0];
                    c[1] = p[1];
                }
                case PathIterator.SEG_QUADTO -> {
                    c[2] = c[0] + 2.0 / 3 * (p[0] - c[0]);
                    c[3] = c[1] + 2.0 / 3 * (p[1] - c[1]);
                    c[4] = p[2] + 2.0 / 3 * (p[0] - p[2]);
                    c[5] = p[3] + 2.0 / 3 * (p[1] - p[3]);
                    c[6] = p[2];
                    c[7] = p[3];
                    halve(result, c.clone(), MOST_HALVINGS);
                    c[0] = p[2];
                    c[1] = p[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    System.arraycopy(p, 0, c, 2, 6);
                    halve(result, c.clone(), MOST_HALVINGS);
                    c[0] = p[4];
                    c[1] = p[5];
                }
                default -> {
                    result.closePath();
                    c[0] = result.getCurrentPoint().getX();
                    c[1] = result.getCurrentPoint().getY();
                }
            }
        }
        return result;
    }

    /** Cuts a cubic in the middle until each part turns little; a flat part of less than 1 µm stays as it is. */
    private static void halve(Path2D.Double result, double[] c, int left) {
        if (left == 0 || turn(c) <= LARGEST_TURN) {
            result.curveTo(c[2], c[3], c[4], c[5], c[6], c[7]);
            return;
        }
        double[] first = new double[8];
        double[] second = new double[8];
        for (int k = 0; k < 2; k++) {
            double ab = (c[k] + c[k + 2]) / 2;
            double bc = (c[k + 2] + c[k + 4]) / 2;
            double cd = (c[k + 4] + c[k + 6]) / 2;
            double abc = (ab + bc) / 2;
            double bcd = (bc + cd) / 2;
            first[k] = c[k];
            first[k + 2] = ab;
            first[k + 4] = abc;
            first[k + 6] = (abc + bcd) / 2;
            second[k] = first[k + 6];
            second[k + 2] = bcd;
            second[k + 4] = cd;
            second[k + 6] = c[k + 6];
        }
        halve(result, first, left - 1);
        halve(result, second, left - 1);
    }

    /** How much the legs of the control polygon turn, added up, in radians. */
    private static double turn(double[] c) {
        double sum = 0;
        double heading = Double.NaN;
        for (int k = 0; k < 6; k += 2) {
            double dx = c[k + 2] - c[k];
            double dy = c[k + 3] - c[k + 1];
            if (Math.hypot(dx, dy) < 1) {
                continue;
            }
            double next = Math.atan2(dy, dx);
            if (!Double.isNaN(heading)) {
                sum += Math.abs(Math.IEEEremainder(next - heading, 2 * Math.PI));
            }
            heading = next;
        }
        return sum;
    }
}
