package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pieces that chains of a {@link BorderNet} are drawn with.
 *
 * <p>Edges in a row that follow one curve of the artwork become that part of it, its ends moved to the vertices there (by no
 * more than the flatness); edges that follow one line become a line; for edges that follow nothing curves are fitted. None
 * leaves the edges by more than {@link Stretch#TOLERANCE}: where one would, it is cut in two.
 */
final class ChainCurves {
    /** Parameters nearer to each other than this are one: they are kept in single precision. */
    private static final double SAME = 1e-6;

    /** Vertices that a line is drawn past, in steps: snapping has moved them off it by less. */
    private static final double STRAIGHT = 2;

    private final BorderNet net;
    private final EdgeCurves edges;
    private final CommandCurves commands;

    ChainCurves(BorderNet net, EdgeCurves edges, CommandCurves commands) {
        this.net = net;
        this.edges = edges;
        this.commands = commands;
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

    private void run(int[] vertices, List<Optional<Sources.Part>> parts, int from, int to, List<Bezier> pieces) {
        Stretch stretch = new Stretch(new double[to - from + 1], new double[to - from + 1]);
        double[] t = new double[to - from + 1];
        for (int i = from; i <= to; i++) {
            stretch.x()[i - from] = net.x(vertices[i]);
            stretch.y()[i - from] = net.y(vertices[i]);
            if (i < to) {
                t[i - from] = parts.get(i).map(Sources.Part::from).orElse(0.0);
            }
        }
        if (parts.get(from).isEmpty()) {
            CurveFit.fit(stretch, pieces);
            return;
        }
        t[to - from] = parts.get(to - 1).orElseThrow().to();
        Optional<Bezier> curve = commands.of(parts.get(from).get());
        if (curve.isEmpty()) {
            stretch.straighten(0, stretch.last(), STRAIGHT, pieces);
        } else {
            new Following(stretch, t, curve.get()).pieces(0, stretch.last(), pieces);
        }
    }

    /**
     * Edges that follow one curve.
     *
     * @param t for each vertex the curve's parameter there
     */
    private record Following(Stretch stretch, double[] t, Bezier curve) {
        void pieces(int from, int to, List<Bezier> pieces) {
            double x0 = stretch.x()[from];
            double y0 = stretch.y()[from];
            double x1 = stretch.x()[to];
            double y1 = stretch.y()[to];
            Bezier part = curve.part(t[from], t[to]).between(x0, y0, x1, y1);
            double[] relative = new double[to - from + 1];
            for (int i = 0; i < relative.length; i++) {
                relative[i] = (t[from + i] - t[from]) / (t[to] - t[from]);
            }
            if (stretch.distance(part, from, to, relative) <= Stretch.TOLERANCE) {
                pieces.add(isStraight(part) ? new Bezier(x0, y0, x1, y1) : part);
            } else if (to - from > 1) {
                int middle = (from + to) / 2;
                pieces(from, middle, pieces);
                pieces(middle, to, pieces);
            } else {
                pieces.add(new Bezier(x0, y0, x1, y1));
            }
        }

        /** Whether nobody could tell it from a line. */
        private static boolean isStraight(Bezier part) {
            int end = part.degree();
            for (int i = 1; i < end; i++) {
                if (Polyline.distance(part.x(i), part.y(i), part.x(0), part.y(0), part.x(end), part.y(end)) > 1) {
                    return false;
                }
            }
            return true;
        }
    }
}
