package inkstrata.planar;

/** Distances from straight segments. */
final class Polyline {
    private Polyline() {}

    /** From a point to the nearest one of a segment. */
    static double distance(double x, double y, double x0, double y0, double x1, double y1) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double length2 = dx * dx + dy * dy;
        double t = length2 == 0 ? 0 : Math.max(0, Math.min(1, ((x - x0) * dx + (y - y0) * dy) / length2));
        return Math.hypot(x - x0 - t * dx, y - y0 - t * dy);
    }
}
