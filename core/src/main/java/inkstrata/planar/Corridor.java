package inkstrata.planar;

import inkstrata.artwork.CurveSink;
import inkstrata.measure.Grid;
import inkstrata.measure.Tolerance;

/**
 * The places within a width of a chain of edges, on the side of positive cross products.
 *
 * <p>It is the union of a parallelogram over each edge, a sector at each vertex where the chain bends away from that side, and
 * a sector at each open end, as far as what is spread into reaches around it (three quarters of a disc at most), all the way round to the chain itself. Each of these turns the same way, so the sum of
 * their outlines, drawn as one contour, has winding numbers above 0 inside the union and 0 outside (K. Chen and S. McMains,
 * Polygon offsetting by computing winding numbers, 2005): noding with the non-zero rule does the rest, whatever the chain
 * does. Where neighbours overlap at a vertex, the contour takes a short cut if both edges are long enough to make it safe,
 * and else goes by way of the vertex.
 */
final class Corridor {
    /** Facets leave an arc by at most this part of its radius: sectors come out less than a thousandth too large. */
    private static final double FACET_DEPTH_BY_RADIUS = 1.5e-3;

    /** Likewise at open ends, most of whose arcs lie beyond what is spread into: less than two thousandths. */
    private static final double CAP_DEPTH_BY_RADIUS = 2.8e-3;

    /** Nor by more than curves may be flattened. */
    private static final double MOST_FACET_DEPTH = Tolerance.FLATNESS_MM / Grid.STEP_MM;

    /** Room for the rounding of vertices, in grid steps. */
    private static final double ROUNDING = 2;

    /** No short cuts where a chain turns by more, in radians: they would reach far. */
    private static final double STEEP = Math.PI / 3;

    private final int[] xy;
    private final int edges;
    private final boolean isClosed;
    private final double width;
    private final double startSweep;
    private final double endSweep;
    private final Corners corners;
    private final double mitreLimit;
    private final double facet;
    private final double capFacet;
    /** Of each edge: its length, and the vector from it to its side of the corridor, rounded. */
    private final double[] length;

    private final int[] acrossX;
    private final int[] acrossY;
    /** Of each edge: the angle from the one before it, 0 to pi, to either side; 0 where nothing is before. */
    private final double[] turn;

    private final Ints side;

    private Corridor(BorderChain chain, Corners corners, double mitreLimit) {
        this.xy = chain.xy();
        this.edges = chain.edges();
        this.isClosed = chain.isClosed();
        this.width = chain.width();
        this.startSweep = chain.startSweep();
        this.endSweep = chain.endSweep();
        this.corners = corners;
        this.mitreLimit = mitreLimit;
        this.facet = facet(width, FACET_DEPTH_BY_RADIUS);
        this.capFacet = facet(width, CAP_DEPTH_BY_RADIUS);
        this.length = new double[edges];
        this.acrossX = new int[edges];
        this.acrossY = new int[edges];
        this.turn = new double[edges];
        this.side = new Ints(4 * edges + 64);
        for (int e = 0; e < edges; e++) {
            length[e] = Math.hypot(dx(e), dy(e));
            acrossX[e] = (int) Math.rint(-dy(e) / length[e] * width);
            acrossY[e] = (int) Math.rint(dx(e) / length[e] * width);
            turn[e] = e > 0 ? turn(e - 1, e) : 0;
        }
        turn[0] = isClosed ? turn(edges - 1, 0) : 0;
    }

    /**
     * Draws the contours of a chain's corridor, in millimetres on the grid; for the non-zero rule.
     *
     * @param chain at least a grid step wide
     * @param mitreLimit in widths
     */
    static void draw(BorderChain chain, Corners corners, double mitreLimit, CurveSink sink) {
        Corridor corridor = new Corridor(chain, corners, mitreLimit);
        corridor.layOutSide();
        corridor.send(sink);
    }

    /**
     * Draws the places within a width of a point, likewise.
     *
     * @param width in grid steps, at least 1
     */
    static void drawAround(int x, int y, double width, CurveSink sink) {
        int vertices = (int) Math.max(8, Math.ceil(2 * Math.PI / facet(width, FACET_DEPTH_BY_RADIUS)));
        double part = 2 * Math.PI / vertices;
        double far = width / StrictMath.cos(part / 2);
        for (int k = 0; k < vertices; k++) {
            int toX = x + (int) Math.rint(far * StrictMath.cos(k * part));
            int toY = y + (int) Math.rint(far * StrictMath.sin(k * part));
            if (k == 0) {
                move(toX, toY, sink);
            } else {
                line(toX, toY, sink);
            }
        }
    }

    /** The most that facets which touch an arc from outside may turn at a vertex, in radians. */
    private static double facet(double radius, double depthByRadius) {
        return 2 * StrictMath.acos(1 / (1 + Math.min(depthByRadius, MOST_FACET_DEPTH / radius)));
    }

    private void layOutSide() {
        if (!isClosed) {
            startCap();
        }
        for (int e = isClosed ? 0 : 1; e < edges; e++) {
            corner(e);
        }
        if (!isClosed) {
            endCap();
        }
    }

    private void send(CurveSink sink) {
        int last = isClosed ? edges - 1 : edges;
        move(xy[0], xy[1], sink);
        for (int v = 1; v <= last; v++) {
            line(xy[2 * v], xy[2 * v + 1], sink);
        }
        for (int i = side.size() - 2; i >= 0; i -= 2) {
            if (isClosed && i == side.size() - 2) {
                move(side.get(i), side.get(i + 1), sink);
            } else {
                line(side.get(i), side.get(i + 1), sink);
            }
        }
    }

    private static void move(int x, int y, CurveSink sink) {
        sink.moveTo(Grid.millimetres(x), Grid.millimetres(y));
    }

    private static void line(int x, int y, CurveSink sink) {
        sink.lineTo(Grid.millimetres(x), Grid.millimetres(y));
    }

    /** What lies beside the vertex at which an edge starts. */
    private void corner(int edge) {
        int before = edge == 0 ? edges - 1 : edge - 1;
        int x = xy[2 * edge];
        int y = xy[2 * edge + 1];
        if (bendsAway(before, edge)) {
            turn(before, edge, x, y);
        } else if (isRoomy(before, edge)) {
            double nx = -dy(before) / length[before] - dy(edge) / length[edge];
            double ny = dx(before) / length[before] + dx(edge) / length[edge];
            double scale = 2 * width / (nx * nx + ny * ny);
            add(x + (int) Math.rint(nx * scale), y + (int) Math.rint(ny * scale));
        } else {
            add(x + acrossX[before], y + acrossY[before]);
            add(x, y);
            add(x + acrossX[edge], y + acrossY[edge]);
        }
    }

    /** Decided by the rounded vectors, so that a sector never turns the wrong way; nearly straight back, by the edges. */
    private boolean bendsAway(int before, int edge) {
        long straight = (long) acrossX[before] * acrossX[edge] + (long) acrossY[before] * acrossY[edge];
        return straight > 0
                ? (long) acrossX[before] * acrossY[edge] - (long) acrossY[before] * acrossX[edge] < 0
                : (long) dx(before) * dy(edge) - (long) dy(before) * dx(edge) < 0;
    }

    /**
     * Whether the sides of two edges meet where both run, and what the short cut leaves out of one edge's parallelogram lies
     * within the other's, short cuts at its far end included.
     */
    private boolean isRoomy(int before, int edge) {
        if (turn[edge] > STEEP) {
            return false;
        }
        double reach = width * StrictMath.sin(turn[edge]) + ROUNDING;
        int next = edge + 1 < edges ? edge + 1 : 0;
        return reach + setback(before) <= length[before] && reach + setback(next) <= length[edge];
    }

    /** How far a short cut at the start of an edge takes the sides back that meet there. */
    private double setback(int edge) {
        return turn[edge] > STEEP ? 0 : width * StrictMath.tan(turn[edge] / 2) + ROUNDING;
    }

    private double turn(int one, int next) {
        double cross = dx(one) * (double) dy(next) - dy(one) * (double) dx(next);
        double dot = dx(one) * (double) dx(next) + dy(one) * (double) dy(next);
        return StrictMath.atan2(Math.abs(cross), dot);
    }

    private void turn(int before, int edge, int x, int y) {
        switch (corners) {
            case ROUND -> arc(before, turn[edge], x, y);
            case MITRE -> mitre(before, edge, turn[edge], x, y);
            case BEVEL -> {
                add(x + acrossX[before], y + acrossY[before]);
                add(x + acrossX[edge], y + acrossY[edge]);
            }
        }
    }

    /** Facets that touch the arc from outside, the first and the last in line with the sides they join. */
    private void arc(int before, double turn, int x, int y) {
        int vertices = (int) Math.max(1, Math.ceil(turn / facet));
        double part = turn / vertices;
        double scale = 1 / StrictMath.cos(part / 2);
        for (int k = 0; k < vertices; k++) {
            addTurned(before, -(k + 0.5) * part, scale, x, y);
        }
    }

    private void mitre(int one, int next, double turn, int x, int y) {
        double cos = StrictMath.cos(turn / 2);
        double sin = StrictMath.sin(turn / 2);
        if (cos * mitreLimit >= 1) {
            addAlong(one, width * sin / cos, x, y);
            return;
        }
        double along = width * (mitreLimit - cos) / sin;
        addAlong(one, along, x, y);
        addAlong(next, -along, x, y);
    }

    private void addAlong(int edge, double along, int x, int y) {
        double ex = dx(edge) / length[edge];
        double ey = dy(edge) / length[edge];
        add(x + (int) Math.rint(-ey * width + ex * along), y + (int) Math.rint(ex * width + ey * along));
    }

    private void startCap() {
        int vertices = capVertices(startSweep);
        for (int k = vertices; k > 0; k--) {
            addTurned(0, (k - 0.5) * capFacet, 1 / StrictMath.cos(capFacet / 2), xy[0], xy[1]);
        }
        if (vertices == 0) {
            add(xy[0] + acrossX[0], xy[1] + acrossY[0]);
        }
    }

    private void endCap() {
        int last = edges - 1;
        int vertices = capVertices(endSweep);
        if (vertices == 0) {
            add(xy[2 * edges] + acrossX[last], xy[2 * edges + 1] + acrossY[last]);
        }
        for (int k = 1; k <= vertices; k++) {
            addTurned(last, -(k - 0.5) * capFacet, 1 / StrictMath.cos(capFacet / 2), xy[2 * edges], xy[2 * edges + 1]);
        }
    }

    /** The last of them lies beyond the sweep by up to a facet; all the way round, by half of one. */
    private int capVertices(double sweep) {
        int most = (int) Math.ceil(BorderChain.ALL_ROUND / capFacet);
        return sweep <= 0 ? 0 : Math.min(most, (int) Math.ceil(sweep / capFacet + 0.5));
    }

    /** The point so many widths across from a vertex, turned around it. */
    private void addTurned(int edge, double angle, double widths, int x, int y) {
        double cos = StrictMath.cos(angle) * widths * width / length[edge];
        double sin = StrictMath.sin(angle) * widths * width / length[edge];
        add(
                x + (int) Math.rint(-dy(edge) * cos - dx(edge) * sin),
                y + (int) Math.rint(dx(edge) * cos - dy(edge) * sin));
    }

    private void add(int x, int y) {
        side.add(x);
        side.add(y);
    }

    private int dx(int edge) {
        return xy[2 * edge + 2] - xy[2 * edge];
    }

    private int dy(int edge) {
        return xy[2 * edge + 3] - xy[2 * edge + 1];
    }
}
