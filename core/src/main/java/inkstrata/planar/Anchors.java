package inkstrata.planar;

import java.util.Optional;

/**
 * Where the ends of drawn pieces lie: on the artwork's curves and lines rather than on the map's edges that stand for them, so that
 * all pieces of one lie on it, wherever and for whatever region it was cut.
 *
 * <p>Where a curve or line meets another, it is where their tangents meet; that is as near to the true crossing as
 * the chords' crossing is to it, squared. None is farther from its vertex than {@link #FARTHEST},
 * what is on the frame stays there and what is within it stays within.
 */
final class Anchors {
    /** In grid steps: what lines between anchors may leave besides is the rest of {@link Stretch#TOLERANCE}. */
    static final double FARTHEST = 17;

    /** What lines alone pass is moved no farther, so that it is rounded to its vertex again when a film is read. */
    private static final double ROUNDED = 0.45;

    /** From the frame, in grid steps. */
    private static final double INSIDE = 0.5;

    /** Flatter crossings are too uncertain along the curve: the curve's own point is taken. */
    private static final double LEAST_SINE = 0.25;

    /** What a point may lie beside a line of rounded ends and be on it, in grid steps. */
    private static final double ON_LINE = 1;

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
    private record Way(double x, double y, double dx, double dy, boolean isLine) {
        double sineTo(Way other) {
            return Math.abs(dx * other.dy - dy * other.dx) / (Math.hypot(dx, dy) * Math.hypot(other.dx, other.dy));
        }

        double distance(double[] point) {
            return Math.abs((point[0] - x) * dy - (point[1] - y) * dx) / Math.hypot(dx, dy);
        }

        /** The point nearest to another, however far along. */
        double[] foot(double[] point) {
            double t = ((point[0] - x) * dx + (point[1] - y) * dy) / (dx * dx + dy * dy);
            return new double[] {x + t * dx, y + t * dy};
        }
    }

    private void find(int vertex) {
        if (known[vertex]) {
            return;
        }
        known[vertex] = true;
        x[vertex] = net.x(vertex);
        y[vertex] = net.y(vertex);
        Way base = base(vertex);
        if (base == null) {
            return;
        }
        Way across = null;
        double best = LEAST_SINE;
        for (int i = 0; i < net.degree(vertex); i++) {
            Way way = way(vertex, net.neighbour(vertex, i), !base.isLine);
            double sine = way.sineTo(base);
            // A line first: a curve may be bent a little, a line may not.
            double rank = sine > LEAST_SINE && way.isLine ? 1 + sine : sine;
            if (rank > best) {
                best = rank;
                across = way;
            }
        }
        double farthest = base.isLine ? ROUNDED : FARTHEST;
        if (across == null || !move(vertex, crossing(base, across), farthest)) {
            move(vertex, onLine(vertex, base), farthest);
        }
    }

    /** Along the lowest curve that passes there, or the lowest line; null if there is neither. */
    private Way base(int vertex) {
        int outline = Integer.MAX_VALUE;
        Way base = null;
        for (int i = 0; i < net.degree(vertex); i++) {
            Optional<Sources.Part> part = edges.part(vertex, net.neighbour(vertex, i));
            Optional<Bezier> drawn = part.flatMap(commands::of);
            if (drawn.isPresent()) {
                boolean isLine = drawn.get().degree() == 1;
                boolean isLower = part.get().outline() < outline;
                if (base == null || (base.isLine && !isLine) || (base.isLine == isLine && isLower)) {
                    outline = part.get().outline();
                    base = along(vertex, drawn.get(), part.get());
                }
            }
        }
        return base;
    }

    /** Where a curve or line passes the vertex, or the nearest point of a line that does so elsewhere. */
    private double[] onLine(int vertex, Way base) {
        double[] own = {base.x, base.y};
        double[] moved = own;
        for (int i = 0; i < net.degree(vertex); i++) {
            Way way = way(vertex, net.neighbour(vertex, i), !base.isLine);
            if (way.isLine && way.distance(own) <= ON_LINE) {
                return own;
            }
            moved = way.isLine ? way.foot(own) : moved;
        }
        return moved;
    }

    /** Beside a curve a line is the map's edge: drawn from there on it bounds the same area. */
    private Way way(int vertex, int other, boolean besideCurve) {
        Optional<Sources.Part> part = edges.part(vertex, other);
        Optional<Bezier> drawn = part.flatMap(commands::of).filter(d -> d.degree() > 1 || !besideCurve);
        if (drawn.isPresent()) {
            return along(vertex, drawn.get(), part.get());
        }
        return new Way(
                net.x(vertex),
                net.y(vertex),
                (double) net.x(other) - net.x(vertex),
                (double) net.y(other) - net.y(vertex),
                true);
    }

    private Way along(int vertex, Bezier drawn, Sources.Part part) {
        if (drawn.degree() == 1) {
            double dx = drawn.x(1) - drawn.x(0);
            double dy = drawn.y(1) - drawn.y(0);
            double[] foot =
                    new Way(drawn.x(0), drawn.y(0), dx, dy, true).foot(new double[] {net.x(vertex), net.y(vertex)});
            return new Way(foot[0], foot[1], dx, dy, true);
        }
        double x0 = drawn.xAt(part.from());
        double y0 = drawn.yAt(part.from());
        double dx = drawn.dxAt(part.from());
        double dy = drawn.dyAt(part.from());
        // At a cusp the chord has to do.
        boolean isCusp = dx == 0 && dy == 0;
        return new Way(x0, y0, isCusp ? drawn.xAt(part.to()) - x0 : dx, isCusp ? drawn.yAt(part.to()) - y0 : dy, false);
    }

    private static double[] crossing(Way one, Way other) {
        double det = one.dx * other.dy - one.dy * other.dx;
        double t = ((other.x - one.x) * other.dy - (other.y - one.y) * other.dx) / det;
        return new double[] {one.x + t * one.dx, one.y + t * one.dy};
    }

    private boolean move(int vertex, double[] to, double farthest) {
        int fromX = net.x(vertex);
        int fromY = net.y(vertex);
        double toX = within(frame.left(), to[0], frame.right(), fromX);
        double toY = within(frame.low(), to[1], frame.high(), fromY);
        boolean isNear = Math.hypot(toX - fromX, toY - fromY) <= farthest;
        if (isNear) {
            x[vertex] = toX;
            y[vertex] = toY;
        }
        return isNear;
    }

    /** A new coordinate, but what was on the frame stays there, and what was not does not get there. */
    private static double within(int low, double to, int high, int from) {
        return from == low || from == high ? from : Math.max(low + INSIDE, Math.min(high - INSIDE, to));
    }
}
