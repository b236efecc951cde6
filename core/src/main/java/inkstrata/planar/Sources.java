package inkstrata.planar;

import java.util.Optional;

/**
 * Which curve of the artwork each edge of a map follows, and which part of it.
 *
 * <p>An edge lies within a step of its source segment, a chord of that curve (1.5 steps beside tile lines). Where several
 * outlines run along an edge, it is the topmost one that is named.
 *
 * @param edges of the map
 * @param segments that they name
 */
record Sources(EdgeTable edges, Segments segments) {
    /**
     * A part of one command of an outline.
     *
     * @param outline as numbered in {@link Drawing}
     * @param command position in the outline's commands; their number stands for a line that closes a contour
     * @param from parameter where the edge starts, 0 to 1
     * @param to parameter where it ends; less than {@code from} if the edge runs against the curve
     */
    record Part(int outline, int command, double from, double to) {}

    /** What an edge follows; empty on the frame, and where an edge stands for several curves joined to one straight line. */
    Optional<Part> of(int edge) {
        int from = edges.from()[edge];
        int to = edges.to()[edge];
        return of(edge, edges.x()[from], edges.y()[from], edges.x()[to], edges.y()[to]);
    }

    /** What a piece of an edge follows, from one point near the edge to another, in grid steps. */
    Optional<Part> of(int edge, int x0, int y0, int x1, int y1) {
        int segment = edges.source()[edge];
        if (segment < 0) {
            return Optional.empty();
        }
        return Optional.of(new Part(
                segments.outline(segment),
                segments.command(segment),
                parameter(segment, x0, y0),
                parameter(segment, x1, y1)));
    }

    /** Along its segment a snapped vertex is where it is on the way, measured along both axes, which no snapping reverses. */
    private double parameter(int s, int x, int y) {
        double dx = (double) segments.x1(s) - segments.x0(s);
        double dy = (double) segments.y1(s) - segments.y0(s);
        double along = (x - segments.x0(s)) * Math.signum(dx) + (y - segments.y0(s)) * Math.signum(dy);
        double share = Math.max(0, Math.min(1, along / (Math.abs(dx) + Math.abs(dy))));
        return segments.t0(s) + (segments.t1(s) - segments.t0(s)) * share;
    }
}
