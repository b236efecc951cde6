package inkstrata.artwork.svg;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/**
 * What a mitred corner has more than a bevelled one: a wedge from the path's vertex to the tip (SVG 2, section 13.5.5; a
 * mitre longer than the limit times the width is bevelled).
 */
final class MitredCorners {
    /** A turn below this is no corner: a mitre would reach out by less than a 40,000th of the width. */
    private static final double SMALLEST_TURN = 0.01;

    /** Half-length nodes and weights of five-point Gauss-Legendre quadrature. */
    private static final double[] NODES = {
        0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
    };

    private static final double[] WEIGHTS = {
        0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891
    };

    /** Which way round the stroker draws a stroke; a wedge must wind the same way or it would cut a hole. */
    private static final double STROKERS_WAY = strokersWay();

    private final StrokeStyle style;
    private final Path2D.Double outline;
    private final List<double[]> legs = new ArrayList<>();
    private double length;

    private MitredCorners(StrokeStyle style, Path2D.Double outline) {
        this.style = style;
        this.outline = outline;
    }

    /**
     * Adds the wedges of all corners that fall on a dash.
     *
     * @param path lines and cubics that turn little
     */
    static void add(Path2D.Double path, StrokeStyle style, Path2D.Double outline) {
        MitredCorners corners = new MitredCorners(style, outline);
        double[] c = new double[8];
        double[] p = new double[6];
        double startX = 0;
        double startY = 0;
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> {
                    corners.open(false);
                    startX = p[0];
                    startY = p[1];
                    c[6] = startX;
                    c[7] = startY;
                }
                case PathIterator.SEG_LINETO -> corners.leg(line(c, p[0], p[1]));
                case PathIterator.SEG_CUBICTO -> {
                    c[0] = c[6];
                    c[1] = c[7];
                    System.arraycopy(p, 0, c, 2, 6);
                    corners.leg(c);
                }
                default -> {
                    corners.leg(line(c, startX, startY));
                    corners.open(true);
                }
            }
        }
        corners.open(false);
    }

    private static double[] line(double[] c, double x, double y) {
        c[0] = c[6];
        c[1] = c[7];
        for (int k = 0; k < 2; k++) {
            double to = k == 0 ? x : y;
            c[2 + k] = c[k] + (to - c[k]) / 3;
            c[4 + k] = c[k] + (to - c[k]) * 2 / 3;
            c[6 + k] = to;
        }
        return c;
    }

    /** Keeps a leg's start, the directions at both its ends, and how far along the path it starts. */
    private void leg(double[] c) {
        double in = heading(c, 0, 2, 4, 6);
        double out = heading(c, 6, 4, 2, 0);
        if (Double.isNaN(in)) {
            return;
        }
        legs.add(new double[] {c[0], c[1], in, out + Math.PI, length});
        length += length(c);
    }

    /** From one control point to the first that lies elsewhere. */
    private static double heading(double[] c, int from, int... to) {
        for (int k : to) {
            double dx = c[k] - c[from];
            double dy = c[k + 1] - c[from + 1];
            if (Math.hypot(dx, dy) > 1e-6) {
                return Math.atan2(dy, dx);
            }
        }
        return Double.NaN;
    }

    private static double length(double[] c) {
        double sum = 0;
        for (int i = 0; i < NODES.length; i++) {
            double t = (NODES[i] + 1) / 2;
            double u = 1 - t;
            double dx = u * u * (c[2] - c[0]) + 2 * u * t * (c[4] - c[2]) + t * t * (c[6] - c[4]);
            double dy = u * u * (c[3] - c[1]) + 2 * u * t * (c[5] - c[3]) + t * t * (c[7] - c[5]);
            sum += WEIGHTS[i] * 1.5 * Math.hypot(dx, dy);
        }
        return sum;
    }

    /** Makes the wedges of a finished subpath and begins the next. */
    private void open(boolean closed) {
        for (int i = 1; i < legs.size(); i++) {
            corner(legs.get(i - 1), legs.get(i), isOn(legs.get(i)[4], true));
        }
        if (closed && !legs.isEmpty()) {
            corner(legs.get(legs.size() - 1), legs.get(0), isOn(length, false) && isOn(0, false));
        }
        legs.clear();
        length = 0;
    }

    /** Whether a place along the path lies on a dash; strictly inside one if asked. */
    private boolean isOn(double along, boolean strictly) {
        if (!style.isDashed()) {
            return true;
        }
        double at = (along + style.positiveDashOffset()) % style.dashPeriod();
        double margin = strictly ? 1e-3 : -1e-3;
        boolean on = true;
        double from = 0;
        int n = style.dashes().length;
        for (int i = 0; i < 2 * n; i++) {
            double part = style.dashes()[i % n];
            if (on && at > from + margin && at < from + part - margin) {
                return true;
            }
            from += part;
            on = !on;
        }
        return false;
    }

    private void corner(double[] before, double[] after, boolean on) {
        double turn = Math.IEEEremainder(after[2] - before[3], 2 * Math.PI);
        double ratio = 1 / Math.cos(turn / 2);
        if (!on || Math.abs(turn) < SMALLEST_TURN || !(ratio <= style.miterLimit())) {
            return;
        }
        double x = after[0];
        double y = after[1];
        double half = style.width() / 2;
        // On the outside of the turn, square to the leg before, to the leg after, and half way between.
        double outwards = turn > 0 ? -Math.PI / 2 : Math.PI / 2;
        double first = before[3] + outwards;
        double last = after[2] + outwards;
        double middle = before[3] + turn / 2 + outwards;
        double[] wedge = {
            x,
            y,
            x + half * Math.cos(first),
            y + half * Math.sin(first),
            x + half * ratio * Math.cos(middle),
            y + half * ratio * Math.sin(middle),
            x + half * Math.cos(last),
            y + half * Math.sin(last),
        };
        boolean forwards = (turn > 0) == (STROKERS_WAY > 0);
        outline.moveTo(wedge[0], wedge[1]);
        for (int k = 1; k < 4; k++) {
            int at = 2 * (forwards ? k : 4 - k);
            outline.lineTo(wedge[at], wedge[at + 1]);
        }
        outline.closePath();
    }

    private static double strokersWay() {
        Path2D.Double line = new Path2D.Double();
        line.moveTo(0, 0);
        line.lineTo(100, 0);
        Shape stroke = new BasicStroke(10, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL).createStrokedShape(line);
        double doubled = 0;
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator i = stroke.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(p);
            if (kind == PathIterator.SEG_LINETO) {
                doubled += x * p[1] - p[0] * y;
            }
            if (kind != PathIterator.SEG_CLOSE) {
                x = p[0];
                y = p[1];
            }
        }
        return doubled;
    }
}
