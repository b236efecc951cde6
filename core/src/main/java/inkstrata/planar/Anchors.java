package inkstrata.planar;

import java.util.Optional;

/**
 * Where the ends of drawn pieces lie: on the artwork's curves rather than on the chords that stand for them in the map, so that
 * all pieces of one curve lie on it, wherever and for whatever region it was cut.
 *
 * <p>Where a curve meets another, or a line, it is where their tangents meet; that is as near to the true crossing as
 * the chords' crossing is to it, squared. None is farther from its vertex than {@link #FARTHEST},
 * and on the frame they stay on the frame.
 */
final class Anchors {
    /** In grid steps: what lines between anchors may leave besides is the rest of {@link Stretch#TOLERANCE}. */
    static final double FARTHEST = 17;

    /** Flatter crossings are too uncertain along the curve: the curve's own point is taken. */
    private static final double LEAST_SINE = 0.25;

    private final Box frame;
    private final BorderNet net;
    private final EdgeCurves edges;
    private final CommandCurves commands;
    private final double[] x;
    private final double[] y;
    private final boolean[] known;
    private final boolean[] pinned;

    Anchors(Box frame, BorderNet net, EdgeCurves edges, CommandCurves commands) {
        this.frame = frame;
        this.net = net;
        this.edges = edges;
        this.commands = commands;
        this.x = new double[net.vertexCount()];
        this.y = new double[net.vertexCount()];
        this.known = new boolean[net.vertexCount()];
        this.pinned = new boolean[net.vertexCount()];
    }

    double x(int vertex) {
        find(vertex);
        return x[vertex];
    }

    double y(int vertex) {
        find(vertex);
        return y[vertex];
    }

    /** Leaves it where the map has it. */
    void pin(int vertex) {
        pinned[vertex] = true;
        known[vertex] = true;
        x[vertex] = net.x(vertex);
        y[vertex] = net.y(vertex);
    }

    boolean isPinned(int vertex) {
        return pinned[vertex];
    }

    /** A way on from a vertex: where it really starts, and in which direction. */
    private record Way(double x, double y, double dx, double dy) {
        double sineTo(Way other) {
            return Math.abs(dx * other.dy - dy * other.dx) / (Math.hypot(dx, dy) * Math.hypot(other.dx, other.dy));
        }
    }

    private void find(int vertex) {
        if (known[vertex]) {
            return;
        }
        known[vertex] = true;
        x[vertex] = net.x(vertex);
        y[vertex] = net.y(vertex);
        int outline = Integer.MAX_VALUE;
        Way curved = null;
        for (int i = 0; i < net.degree(vertex); i++) {
            int other = net.neighbour(vertex, i);
            Optional<Sources.Part> part = edges.part(vertex, other);
            Optional<Bezier> curve = part.flatMap(commands::of);
            if (curve.isPresent() && part.get().outline() < outline) {
                outline = part.get().outline();
                curved = along(curve.get(), part.get());
            }
        }
        if (curved == null) {
            return;
        }
        Way across = null;
        double sine = LEAST_SINE;
        for (int i = 0; i < net.degree(vertex); i++) {
            Way way = way(vertex, net.neighbour(vertex, i));
            double here = way.sineTo(curved);
            if (here > sine) {
                sine = here;
                across = way;
            }
        }
        if (across == null || !move(vertex, crossing(curved, across))) {
            move(vertex, new double[] {curved.x, curved.y});
        }
    }

    private Way way(int vertex, int other) {
        Optional<Sources.Part> part = edges.part(vertex, other);
        Optional<Bezier> curve = part.flatMap(commands::of);
        if (curve.isPresent()) {
            return along(curve.get(), part.get());
        }
        return new Way(
                net.x(vertex),
                net.y(vertex),
                (double) net.x(other) - net.x(vertex),
                (double) net.y(other) - net.y(vertex));
    }

    private static Way along(Bezier curve, Sources.Part part) {
        double x0 = curve.xAt(part.from());
        double y0 = curve.yAt(part.from());
        double dx = curve.dxAt(part.from());
        double dy = curve.dyAt(part.from());
        // At a cusp the chord has to do.
        boolean isCusp = dx == 0 && dy == 0;
        return new Way(x0, y0, isCusp ? curve.xAt(part.to()) - x0 : dx, isCusp ? curve.yAt(part.to()) - y0 : dy);
    }

    private static double[] crossing(Way one, Way other) {
        double det = one.dx * other.dy - one.dy * other.dx;
        double t = ((other.x - one.x) * other.dy - (other.y - one.y) * other.dx) / det;
        return new double[] {one.x + t * one.dx, one.y + t * one.dy};
    }

    private boolean move(int vertex, double[] to) {
        int fromX = net.x(vertex);
        int fromY = net.y(vertex);
        double toX = fromX == frame.left() || fromX == frame.right() ? fromX : to[0];
        double toY = fromY == frame.low() || fromY == frame.high() ? fromY : to[1];
        boolean isNear = Math.hypot(toX - fromX, toY - fromY) <= FARTHEST;
        if (isNear) {
            x[vertex] = toX;
            y[vertex] = toY;
        }
        return isNear;
    }
}
