package inkstrata.planar;

import java.util.Arrays;
import java.util.List;

/**
 * Edges that follow one curve.
 *
 * @param edges the edges
 * @param t for each vertex the curve's parameter near it
 * @param curve all of it, from the first vertex to the last
 */
record Following(Stretch edges, double[] t, Bezier curve) {
    /**
     * The part of a curve that edges follow.
     *
     * @param t parameters of the whole curve near the vertices
     * @param ends the line between the places that it starts and ends at
     */
    static Following of(Bezier curve, double[] t, Stretch edges, Bezier ends) {
        int last = edges.last();
        double[] relative = relative(t);
        Bezier own = curve.part(t[0], t[last]);
        Bezier drawn = own.between(ends.x(0), ends.y(0), ends.x(1), ends.y(1));
        boolean isWhole = Math.abs(t[last] - t[0]) == 1 && !own.isMovedIn(drawn);
        return new Following(edges, relative, isWhole ? drawn : withArea(drawn, edges, 0, last, relative));
    }

    /**
     * With the area beside it that is beside some edges, if it can be bent to that; chords of a part have not quite the part's own.
     *
     * @param t for each vertex from the first to the last the parameter near it
     */
    private static Bezier withArea(Bezier drawn, Stretch edges, int from, int to, double[] t) {
        return drawn.withAreaBesideChord(edges.areaBeside(from, to, drawn))
                .filter(bent -> edges.distance(bent, from, to, t) <= Stretch.TOLERANCE)
                .orElse(drawn);
    }

    /** The curve as it is, or where it leaves the edges, parts of it as long as may be and lines between. */
    void pieces(List<Bezier> pieces) {
        for (int from = 0; from < edges.last(); ) {
            int to = isNear(from, edges.last()) ? edges.last() : farthest(from);
            Bezier part = part(from, to);
            boolean isLine = isStraight(part) || !isNear(from, to);
            boolean isAll = to - from == edges.last();
            pieces.add(isLine ? line(part) : isAll ? part : withArea(part, edges, from, to, between(from, to)));
            from = to;
        }
    }

    /** How far one part goes that starts at a vertex: the next vertex at least, the last but one at most. */
    private int farthest(int from) {
        int near = from + 1;
        int far = edges.last();
        while (far - near > 1) {
            int middle = (near + far) / 2;
            if (isNear(from, middle)) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return near;
    }

    private boolean isNear(int from, int to) {
        return edges.distance(part(from, to), from, to, between(from, to)) <= Stretch.TOLERANCE;
    }

    private double[] between(int from, int to) {
        return relative(Arrays.copyOfRange(t, from, to + 1));
    }

    private Bezier part(int from, int to) {
        double[] start = point(from);
        double[] end = point(to);
        return curve.part(t[from], t[to]).between(start[0], start[1], end[0], end[1]);
    }

    /** Where a curve that is cut at a vertex is cut: at the curve's own point, or as near to it as may be. */
    private double[] point(int vertex) {
        double dx = curve.xAt(t[vertex]) - edges.x()[vertex];
        double dy = curve.yAt(t[vertex]) - edges.y()[vertex];
        double share = Math.min(1, Anchors.FARTHEST / Math.hypot(dx, dy));
        return new double[] {edges.x()[vertex] + share * dx, edges.y()[vertex] + share * dy};
    }

    private static Bezier line(Bezier part) {
        int end = part.degree();
        return new Bezier(part.x(0), part.y(0), part.x(end), part.y(end));
    }

    /** Whether nobody could tell it from a line. */
    private static boolean isStraight(Bezier part) {
        int end = part.degree();
        for (int i = 1; i < end; i++) {
            if (Polyline.distance(part.x(i), part.y(i), part.x(0), part.y(0), part.x(end), part.y(end)) > 0.25) {
                return false;
            }
        }
        return true;
    }

    /** Parameters of the part between the first and the last. */
    private static double[] relative(double[] t) {
        double[] relative = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            relative[i] = (t[i] - t[0]) / (t[t.length - 1] - t[0]);
        }
        return relative;
    }
}
