package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The pieces that chains of a {@link BorderNet} are drawn with.
 *
 * <p>Edges in a row that follow one curve of the artwork become that part of it, between {@link Anchors}; edges that follow one line become a line; for edges that follow nothing curves are fitted. None
 * leaves the edges by more than {@link Stretch#TOLERANCE}: where one would, it is cut in two.
 */
final class ChainCurves {
    /** Parameters nearer to each other than this are one: they are kept in single precision. */
    private static final double SAME = 1e-6;

    /** Vertices that a line is drawn past, in steps: snapping has moved them off it by less. */
    private static final double STRAIGHT = 2;

    /** How far the end of a run may move towards its next vertex: less than half, so that two ends never meet. */
    private static final double CLEAR = 0.4;

    private final BorderNet net;
    private final EdgeCurves edges;
    private final CommandCurves commands;
    private final Anchors anchors;

    ChainCurves(BorderNet net, EdgeCurves edges, CommandCurves commands, Anchors anchors) {
        this.net = net;
        this.edges = edges;
        this.commands = commands;
        this.anchors = anchors;
    }

    /** The pieces of a chain from its first vertex to its last; a closed one may begin at another vertex from now on. */
    List<Bezier> of(int chain) {
        List<Optional<Sources.Part>> parts = parts(net.chain(chain));
        int[] vertices = net.chain(chain);
        int last = vertices.length - 1;
        if (net.isClosed(chain)) {
            int start = start(vertices, parts);
            if (start > 0) {
                net.turn(chain, start);
                vertices = net.chain(chain);
                parts = parts(vertices);
            }
        }
        List<Bezier> pieces = new ArrayList<>();
        for (int from = 0; from < last; ) {
            int to = from + 1;
            while (to < last && goesOn(parts.get(to - 1), parts.get(to))) {
                to++;
            }
            run(vertices, parts, from, to, pieces);
            from = to;
        }
        return pieces;
    }

    private List<Optional<Sources.Part>> parts(int[] vertices) {
        List<Optional<Sources.Part>> parts = new ArrayList<>();
        for (int i = 0; i + 1 < vertices.length; i++) {
            parts.add(edges.part(vertices[i], vertices[i + 1]));
        }
        return parts;
    }

    /** Where a closed chain best begins: at its leftmost vertex where one curve ends or the way turns, if there is one. */
    private int start(int[] vertices, List<Optional<Sources.Part>> parts) {
        int best = -1;
        int count = vertices.length - 1;
        for (int i = 0; i < count; i++) {
            int before = (i + count - 1) % count;
            boolean breaks = !goesOn(parts.get(before), parts.get(i))
                    || (parts.get(i).isEmpty() && isCorner(vertices[before], vertices[i], vertices[i + 1]));
            if (breaks && (best < 0 || vertices[i] < vertices[best])) {
                best = i;
            }
        }
        return Math.max(best, 0);
    }

    private boolean isCorner(int before, int at, int after) {
        double ax = net.x(at) - net.x(before);
        double ay = net.y(at) - net.y(before);
        double bx = net.x(after) - net.x(at);
        double by = net.y(after) - net.y(at);
        return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) > CurveFit.CORNER;
    }

    private static boolean goesOn(Optional<Sources.Part> one, Optional<Sources.Part> next) {
        if (one.isEmpty() || next.isEmpty()) {
            return one.isEmpty() && next.isEmpty();
        }
        Sources.Part a = one.get();
        Sources.Part b = next.get();
        return a.outline() == b.outline()
                && a.command() == b.command()
                && Math.abs(a.to() - b.from()) < SAME
                && (a.to() - a.from()) * (b.to() - b.from()) > 0;
    }

    /** A chain as the straight edges it is. */
    List<Bezier> edgesOf(int chain) {
        List<Bezier> straight = new ArrayList<>();
        int[] v = net.chain(chain);
        for (int i = 0; i + 1 < v.length; i++) {
            straight.add(new Bezier(anchors.x(v[i]), anchors.y(v[i]), anchors.x(v[i + 1]), anchors.y(v[i + 1])));
        }
        return straight;
    }

    private void run(int[] vertices, List<Optional<Sources.Part>> parts, int from, int to, List<Bezier> pieces) {
        Optional<Bezier> curve = parts.get(from).flatMap(commands::of).filter(drawn -> drawn.degree() > 1);
        double[] t = parameters(parts, from, to);
        if (curve.isPresent() && t[0] != t[to - from]) {
            double first = nearest(curve.get(), vertices[from], t[0], t[1]);
            t[to - from] = nearest(curve.get(), vertices[to], t[to - from], t[to - from - 1]);
            t[0] = first;
            Bezier own = curve.get().part(t[0], t[to - from]);
            Bezier whole = own.between(
                    anchors.x(vertices[from]),
                    anchors.y(vertices[from]),
                    anchors.x(vertices[to]),
                    anchors.y(vertices[to]));
            Stretch stretch = stretch(vertices, from, to);
            if (own.isMovedIn(whole)) {
                Optional<Bezier> withArea = whole.withAreaBesideChord(stretch.areaBeside(0, to - from, whole))
                        .filter(bent -> stretch.distance(bent, 0, to - from, relative(t)) <= Stretch.TOLERANCE);
                whole = withArea.orElse(whole);
            }
            new Following(stretch, relative(t), whole).pieces(0, to - from, pieces);
            return;
        }
        Stretch stretch = stretch(vertices, from, to);
        Stretch edgesHere = stretch(vertices, from, to);
        for (int i : new int[] {from, to}) {
            stretch.x()[i - from] = anchors.x(vertices[i]);
            stretch.y()[i - from] = anchors.y(vertices[i]);
        }
        if (parts.get(from).isEmpty()) {
            CurveFit.fit(stretch, edgesHere, pieces);
        } else {
            stretch.straighten(0, stretch.last(), STRAIGHT, pieces);
        }
    }

    /**
     * The parameter at which a curve passes an anchor.
     *
     * @param t at which it passes the vertex
     * @param inner of the next vertex within the run, which it stays clear of
     */
    private double nearest(Bezier curve, int vertex, double t, double inner) {
        double at = curve.nearest(anchors.x(vertex), anchors.y(vertex), t);
        double most = t + CLEAR * (inner - t);
        return t < inner ? Math.min(at, most) : Math.max(at, most);
    }

    /** At each vertex that of what its edges follow; zeros where they follow nothing. */
    private static double[] parameters(List<Optional<Sources.Part>> parts, int from, int to) {
        double[] t = new double[to - from + 1];
        for (int i = from; i < to; i++) {
            t[i - from] = parts.get(i).map(Sources.Part::from).orElse(0.0);
        }
        t[to - from] = parts.get(to - 1).map(Sources.Part::to).orElse(0.0);
        return t;
    }

    private Stretch stretch(int[] vertices, int from, int to) {
        Stretch stretch = new Stretch(new double[to - from + 1], new double[to - from + 1]);
        for (int i = from; i <= to; i++) {
            stretch.x()[i - from] = net.x(vertices[i]);
            stretch.y()[i - from] = net.y(vertices[i]);
        }
        return stretch;
    }

    /** Parameters of the part between the first and the last. */
    private static double[] relative(double[] t) {
        double[] relative = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            relative[i] = (t[i] - t[0]) / (t[t.length - 1] - t[0]);
        }
        return relative;
    }

    /**
     * Edges that follow one curve.
     *
     * @param edges the edges
     * @param t for each vertex the curve's parameter near it
     * @param curve all of it, from the first vertex to the last
     */
    private record Following(Stretch edges, double[] t, Bezier curve) {
        void pieces(int from, int to, List<Bezier> pieces) {
            double[] start = point(from);
            double[] end = point(to);
            Bezier part = curve.part(t[from], t[to]).between(start[0], start[1], end[0], end[1]);
            double off = edges.distance(part, from, to, relative(Arrays.copyOfRange(t, from, to + 1)));
            if (off <= Stretch.TOLERANCE) {
                pieces.add(isStraight(part) ? line(part) : part);
            } else if (to - from > 1) {
                int middle = (from + to) / 2;
                pieces(from, middle, pieces);
                pieces(middle, to, pieces);
            } else {
                pieces.add(line(part));
            }
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
    }
}
