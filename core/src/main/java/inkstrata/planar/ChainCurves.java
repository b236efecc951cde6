package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
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
    /** Edges that are drawn as they are. */
    private final BitSet plain = new BitSet();

    private final Detours detours;

    ChainCurves(BorderNet net, EdgeCurves edges, CommandCurves commands, Anchors anchors, Detours detours) {
        this.net = net;
        this.edges = edges;
        this.commands = commands;
        this.anchors = anchors;
        this.detours = detours;
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
            while (to < last && goesOn(vertices, parts, to - 1, to)) {
                to++;
            }
            run(vertices, parts, from, to, pieces);
            from = to;
        }
        return pieces;
    }

    /** Draws edges that clash as they are, where they are, from now on; or where that was done, leads them around what they touch; false if nothing changes. */
    boolean keepApart(Clashes clashes) {
        if (clashes.edges().stream().allMatch(plain::get)) {
            boolean isChanged = false;
            for (int[] p : clashes.passed()) {
                isChanged |= detours.lead(p[0], p[1], p[2], p[3], p[4], p[5]);
            }
            return isChanged;
        }
        plain.or(clashes.edges());
        clashes.edges().stream().flatMap(net::endsOf).forEach(anchors::pin);
        return true;
    }

    /** Whether a chain is not drawn as it was before anything had to be kept apart. */
    boolean isChanged(int chain) {
        return Arrays.stream(net.chain(chain)).anyMatch(anchors::isPinned);
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
            boolean breaks = !goesOn(vertices, parts, before, i)
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

    private boolean goesOn(int[] vertices, List<Optional<Sources.Part>> parts, int before, int at) {
        return isPlain(vertices, before) == isPlain(vertices, at) && goesOn(parts.get(before), parts.get(at));
    }

    private boolean isPlain(int[] vertices, int at) {
        return plain.get(net.edge(vertices[at], vertices[at + 1]));
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

    private void run(int[] vertices, List<Optional<Sources.Part>> parts, int from, int to, List<Bezier> pieces) {
        if (isPlain(vertices, from)) {
            for (int i = from; i < to; i++) {
                detours.draw(
                        net.x(vertices[i]), net.y(vertices[i]), net.x(vertices[i + 1]), net.y(vertices[i + 1]), pieces);
            }
            return;
        }
        Stretch stretch = stretch(vertices, from, to);
        Optional<Bezier> curve = parts.get(from).flatMap(commands::of).filter(drawn -> drawn.degree() > 1);
        double[] t = parameters(parts, from, to);
        if (curve.isPresent() && t[0] != t[to - from]) {
            double first = nearest(curve.get(), vertices[from], t[0], t[1]);
            t[to - from] = nearest(curve.get(), vertices[to], t[to - from], t[to - from - 1]);
            t[0] = first;
            Following.of(curve.get(), t, stretch, line(vertices[from], vertices[to]))
                    .pieces(pieces);
            return;
        }
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

    private Bezier line(int from, int to) {
        return new Bezier(anchors.x(from), anchors.y(from), anchors.x(to), anchors.y(to));
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
}
