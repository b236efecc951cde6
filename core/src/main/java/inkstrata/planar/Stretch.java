package inkstrata.planar;

import java.util.List;

/**
 * A run of vertices that is drawn with few pieces: in a row, in grid steps.
 *
 * @param x of each
 * @param y of each
 */
record Stretch(double[] x, double[] y) {
    /**
     * What a drawn curve may leave the straight edges of the map where it is looked at, in grid steps: 5 µm, less a little for
     * where it is not.
     */
    static final double TOLERANCE = 19.9;

    /** Points at which a curve is held against each edge, besides its ends. */
    private static final int LOOKS = 16;

    int last() {
        return x.length - 1;
    }

    /** How far along its edges each vertex lies, in grid steps. */
    double[] along() {
        double[] along = new double[x.length];
        for (int i = 1; i < x.length; i++) {
            along[i] = along[i - 1] + length(i - 1);
        }
        return along;
    }

    /** Of the edge from a vertex to the next. */
    double length(int i) {
        return Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
    }

    /** The vertex that lies farthest from the straight way between two others; the first of those if all lie on it. */
    int farthest(int from, int to) {
        int farthest = from;
        double most = 0;
        for (int i = from + 1; i < to; i++) {
            double away = Polyline.distance(x[i], y[i], x[from], y[from], x[to], y[to]);
            if (away > most) {
                most = away;
                farthest = i;
            }
        }
        return farthest;
    }

    /**
     * Between the edges from one vertex to another and a line that starts and ends near those: positive as for
     * {@link Bezier#areaBesideChord}.
     */
    double areaBeside(int from, int to, Bezier line) {
        int end = line.degree();
        double area = cross(from, x[to] - line.x(0), y[to] - line.y(0), line.x(end), line.y(end));
        for (int i = from + 1; i < to; i++) {
            area += cross(from, x[i] - x[from], y[i] - y[from], x[i + 1], y[i + 1]);
        }
        return area / 2;
    }

    private double cross(int from, double dx, double dy, double px, double py) {
        return dx * (py - y[from]) - dy * (px - x[from]);
    }

    /** Whether all vertices between two others lie that near to the straight way. */
    boolean isStraight(int from, int to, double within) {
        int far = farthest(from, to);
        return Polyline.distance(x[far], y[far], x[from], y[from], x[to], y[to]) <= within;
    }

    /**
     * How far a curve leaves the edges between two vertices, or they it, as seen at some points of each.
     *
     * @param t for each vertex from the first to the second the curve's parameter near it, from 0 to 1
     */
    double distance(Bezier curve, int from, int to, double[] t) {
        double most = 0;
        for (int i = from; i < to; i++) {
            double start = t[i - from];
            double step = (t[i - from + 1] - start) / LOOKS;
            most = Math.max(most, Math.hypot(curve.xAt(start) - x[i], curve.yAt(start) - y[i]));
            for (int look = 1; look < LOOKS; look++) {
                double at = start + look * step;
                most = Math.max(
                        most, toEdges(curve.xAt(at), curve.yAt(at), Math.max(from, i - 1), Math.min(to, i + 2)));
            }
        }
        return most;
    }

    private double toEdges(double px, double py, int from, int to) {
        double least = Double.MAX_VALUE;
        for (int i = from; i < to; i++) {
            least = Math.min(least, Polyline.distance(px, py, x[i], y[i], x[i + 1], y[i + 1]));
        }
        return least;
    }

    /** Sends straight pieces that no vertex lies farther from than that. */
    void straighten(int from, int to, double within, List<Bezier> out) {
        int far = farthest(from, to);
        if (far > from && !isStraight(from, to, within)) {
            straighten(from, far, within, out);
            straighten(far, to, within, out);
        } else {
            out.add(new Bezier(x[from], y[from], x[to], y[to]));
        }
    }
}
