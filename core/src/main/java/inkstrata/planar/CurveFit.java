package inkstrata.planar;

import java.util.List;
import java.util.Optional;

/**
 * Few cubics for edges that follow no curve of the artwork, such as the rims of traps.
 *
 * <p>Corners stay corners, long straight edges stay straight; what runs on smoothly between them is fitted by least squares and
 * cut in two where that is not near enough (P. J. Schneider, An Algorithm for Automatically Fitting Digitized Curves, Graphics
 * Gems, 1990). Fitted are vertices and the middles of edges, since the edges themselves are what counts. Then each is bent a little, so that
 * the area beside it is that beside the edges; what one cannot make up for, the next does.
 */
final class CurveFit {
    /** A sharper turn is a corner: arcs are followed in turns of less. */
    static final double CORNER = Math.toRadians(30);

    /** An edge that many times as long as its neighbours is a line beside a curve. */
    private static final double LONG = 3;

    /** The part of the tolerance that vertices and middles of edges may take; what lies between them needs the rest. */
    private static final double SHARE = 0.8;

    /** Vertices that a line is drawn past, in steps: rounding has moved them off it by less. */
    private static final double STRAIGHT = 0.5;

    /** What a cubic's area may be off for each step of its way, in steps, if it cannot be helped: a quarter of a micrometre. */
    private static final double MOST_OFF = 1;

    private static final int ROUNDS = 4;

    private final Stretch stretch;
    private final Stretch edges;
    private final List<Bezier> out;
    /** What the pieces so far have less of than the edges, beside the way: the next makes up for it. */
    private double lacks;

    private CurveFit(Stretch stretch, Stretch edges, List<Bezier> out) {
        this.stretch = stretch;
        this.edges = edges;
        this.out = out;
    }

    /**
     * Sends pieces for the way from the first vertex to the last.
     *
     * @param edges the same where the map has them: the ends may lie elsewhere
     */
    static void fit(Stretch stretch, Stretch edges, List<Bezier> out) {
        new CurveFit(stretch, edges, out).fit();
    }

    /** How sharply the way turns at a vertex that has edges on both sides, in radians, positive where cross products are. */
    private double turn(int i) {
        double ax = stretch.x()[i] - stretch.x()[i - 1];
        double ay = stretch.y()[i] - stretch.y()[i - 1];
        double bx = stretch.x()[i + 1] - stretch.x()[i];
        double by = stretch.y()[i + 1] - stretch.y()[i];
        return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }

    private boolean isCorner(int i) {
        return Math.abs(turn(i)) > CORNER;
    }

    private boolean isLong(int i) {
        double before = i > 0 && !isCorner(i) ? stretch.length(i - 1) : 0;
        double after = i + 1 < stretch.last() && !isCorner(i + 1) ? stretch.length(i + 1) : 0;
        return stretch.length(i) > LONG * Math.max(before, after);
    }

    private void fit() {
        int start = 0;
        for (int i = 0; i < stretch.last(); i++) {
            boolean isLong = isLong(i);
            if (isLong && start < i) {
                smooth(start, i);
            }
            if (isLong) {
                out.add(line(i, i + 1));
                start = i + 1;
            } else if (i + 1 == stretch.last() || isCorner(i + 1)) {
                smooth(start, i + 1);
                start = i + 1;
            }
        }
    }

    /** Between the edges and the line from one vertex to another. */
    private double area(int from, int to) {
        return edges.areaBeside(from, to, line(from, to));
    }

    private Bezier line(int from, int to) {
        return new Bezier(stretch.x()[from], stretch.y()[from], stretch.x()[to], stretch.y()[to]);
    }

    private void smooth(int from, int to) {
        double[] start = to - from > 1 ? direction(from, from + 1, -turn(from + 1) / 2) : direction(from, to, 0);
        double[] end = to - from > 1 ? direction(to, to - 1, turn(to - 1) / 2) : direction(to, from, 0);
        if (isClosed(from, to)) {
            double[] across =
                    unit(stretch.x()[from + 1] - stretch.x()[to - 1], stretch.y()[from + 1] - stretch.y()[to - 1]);
            start = across;
            end = new double[] {-across[0], -across[1]};
        }
        smooth(from, to, start, end);
    }

    private boolean isClosed(int from, int to) {
        if (stretch.x()[from] != stretch.x()[to] || stretch.y()[from] != stretch.y()[to]) {
            return false;
        }
        double[] out0 = direction(from, from + 1, 0);
        double[] in1 = direction(to - 1, to, 0);
        return out0[0] * in1[0] + out0[1] * in1[1] > Math.cos(CORNER);
    }

    private void smooth(int from, int to, double[] start, double[] end) {
        if (to - from == 1 || stretch.isStraight(from, to, STRAIGHT)) {
            out.add(line(from, to));
            lacks += area(from, to);
            return;
        }
        if (to - from == 2) {
            out.add(line(from, from + 1));
            out.add(line(from + 1, to));
            return;
        }
        Optional<Bezier> fitted = new Fitting(from, to, start, end).best();
        if (fitted.isPresent()) {
            out.add(fitted.get());
            lacks += area(from, to) - fitted.get().areaBesideChord();
            return;
        }
        int middle = (from + to) / 2;
        double[] on = unit(
                stretch.x()[middle + 1] - stretch.x()[middle - 1], stretch.y()[middle + 1] - stretch.y()[middle - 1]);
        smooth(from, middle, start, new double[] {-on[0], -on[1]});
        smooth(middle, to, on, end);
    }

    /** From one vertex towards another, turned by an angle. */
    private double[] direction(int from, int to, double turned) {
        double[] d = unit(stretch.x()[to] - stretch.x()[from], stretch.y()[to] - stretch.y()[from]);
        double c = Math.cos(turned);
        double s = Math.sin(turned);
        return new double[] {c * d[0] - s * d[1], s * d[0] + c * d[1]};
    }

    private static double[] unit(double x, double y) {
        double length = Math.hypot(x, y);
        return length == 0 ? new double[] {1, 0} : new double[] {x / length, y / length};
    }

    /** One cubic for vertices and middles of edges, given where it starts and ends and in which directions. */
    private final class Fitting {
        private final int from;
        private final int to;
        private final double[] start;
        private final double[] end;
        private final double[] px;
        private final double[] py;
        private final double[] t;

        Fitting(int from, int to, double[] start, double[] end) {
            this.from = from;
            this.to = to;
            this.start = start;
            this.end = end;
            int count = 2 * (to - from) + 1;
            px = new double[count];
            py = new double[count];
            t = new double[count];
            for (int i = from; i <= to; i++) {
                int at = 2 * (i - from);
                px[at] = stretch.x()[i];
                py[at] = stretch.y()[i];
                if (i < to) {
                    px[at + 1] = (stretch.x()[i] + stretch.x()[i + 1]) / 2;
                    py[at + 1] = (stretch.y()[i] + stretch.y()[i + 1]) / 2;
                }
            }
            for (int i = 1; i < count; i++) {
                t[i] = t[i - 1] + Math.hypot(px[i] - px[i - 1], py[i] - py[i - 1]);
            }
            double length = t[count - 1];
            for (int i = 1; i < count; i++) {
                t[i] /= length;
            }
        }

        /** A cubic that is near enough, if there is one: one that makes up for what is lacking, else one with the right area, else any. */
        Optional<Bezier> best() {
            double area = area(from, to);
            double mostOff = MOST_OFF * (stretch.along()[to] - stretch.along()[from]);
            Optional<Bezier> near = Optional.empty();
            for (int round = 0; round <= ROUNDS; round++) {
                Bezier curve = leastSquares();
                for (double target : new double[] {area + lacks, area}) {
                    Optional<Bezier> fitted = curve.withAreaBesideChord(target).filter(this::isNear);
                    if (fitted.isPresent()) {
                        return fitted;
                    }
                }
                if (near.isEmpty() && isNear(curve) && Math.abs(curve.areaBesideChord() - area) <= mostOff) {
                    near = Optional.of(curve);
                }
                moveParameters(curve);
            }
            return near;
        }

        private boolean isNear(Bezier curve) {
            return error(curve) <= SHARE * Stretch.TOLERANCE
                    && edges.distance(curve, from, to, atVertices()) <= Stretch.TOLERANCE;
        }

        private double[] atVertices() {
            double[] at = new double[to - from + 1];
            for (int i = 0; i < at.length; i++) {
                at[i] = t[2 * i];
            }
            return at;
        }

        private double error(Bezier curve) {
            double most = 0;
            for (int i = 1; i + 1 < px.length; i++) {
                most = Math.max(most, Math.hypot(curve.xAt(t[i]) - px[i], curve.yAt(t[i]) - py[i]));
            }
            return most;
        }

        private Bezier leastSquares() {
            double c00 = 0;
            double c01 = 0;
            double c11 = 0;
            double r0 = 0;
            double r1 = 0;
            int n = px.length - 1;
            for (int i = 0; i <= n; i++) {
                double u = t[i];
                double v = 1 - u;
                double b1 = 3 * u * v * v;
                double b2 = 3 * u * u * v;
                double b01 = v * v * v + b1;
                double b23 = u * u * u + b2;
                double dx = px[i] - px[0] * b01 - px[n] * b23;
                double dy = py[i] - py[0] * b01 - py[n] * b23;
                c00 += b1 * b1;
                c01 += b1 * b2 * (start[0] * end[0] + start[1] * end[1]);
                c11 += b2 * b2;
                r0 += b1 * (start[0] * dx + start[1] * dy);
                r1 += b2 * (end[0] * dx + end[1] * dy);
            }
            double det = c00 * c11 - c01 * c01;
            double chord = Math.hypot(px[n] - px[0], py[n] - py[0]);
            double first = (r0 * c11 - r1 * c01) / det;
            double second = (c00 * r1 - c01 * r0) / det;
            if (!(first > 0 && second > 0)) {
                first = chord / 3;
                second = chord / 3;
            }
            return new Bezier(
                    px[0],
                    py[0],
                    px[0] + first * start[0],
                    py[0] + first * start[1],
                    px[n] + second * end[0],
                    py[n] + second * end[1],
                    px[n],
                    py[n]);
        }

        /** One step of Newton's method towards the nearest point of the curve for each; parameters keep their order. */
        private void moveParameters(Bezier curve) {
            for (int i = 1; i + 1 < px.length; i++) {
                double u = t[i];
                double v = 1 - u;
                double[] first = new double[2];
                double[] second = new double[2];
                for (int axis = 0; axis < 2; axis++) {
                    double p0 = axis == 0 ? curve.x(0) : curve.y(0);
                    double p1 = axis == 0 ? curve.x(1) : curve.y(1);
                    double p2 = axis == 0 ? curve.x(2) : curve.y(2);
                    double p3 = axis == 0 ? curve.x(3) : curve.y(3);
                    first[axis] = 3 * (v * v * (p1 - p0) + 2 * u * v * (p2 - p1) + u * u * (p3 - p2));
                    second[axis] = 6 * (v * (p2 - 2 * p1 + p0) + u * (p3 - 2 * p2 + p1));
                }
                double ex = curve.xAt(u) - px[i];
                double ey = curve.yAt(u) - py[i];
                double slope = first[0] * first[0] + first[1] * first[1] + ex * second[0] + ey * second[1];
                double moved = slope == 0 ? u : u - (ex * first[0] + ey * first[1]) / slope;
                t[i] = Math.max(t[i - 1], Math.min(1, moved));
            }
        }
    }
}
