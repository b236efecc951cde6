package inkstrata.trap;

import inkstrata.measure.Grid;
import inkstrata.planar.Border;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;

/** Plain point questions, by looking at every edge; grid steps. */
final class Probe {
    private Probe() {}

    /** Even-odd along a ray to the right. */
    static boolean inside(Region region, double x, double y) {
        boolean inside = false;
        for (Region.Polygon polygon : region.polygons()) {
            inside ^= crosses(polygon.shell(), x, y);
            for (Ring hole : polygon.holes()) {
                inside ^= crosses(hole, x, y);
            }
        }
        return inside;
    }

    /** How far a place lies from the nearest edge of a border, and where on it. */
    static double[] nearest(Border border, double x, double y) {
        double[] best = {Double.POSITIVE_INFINITY, 0, 0};
        for (int[] c : border.chains()) {
            for (int i = 2; i < c.length; i += 2) {
                double dx = c[i] - c[i - 2];
                double dy = c[i + 1] - c[i - 1];
                double t = ((x - c[i - 2]) * dx + (y - c[i - 1]) * dy) / (dx * dx + dy * dy);
                double at = Math.max(0, Math.min(1, t));
                double px = c[i - 2] + at * dx;
                double py = c[i - 1] + at * dy;
                double distance = Math.hypot(x - px, y - py);
                if (distance < best[0]) {
                    best = new double[] {distance, px, py};
                }
            }
        }
        return best;
    }

    static boolean hasVertex(Region region, int x, int y) {
        return region.polygons().stream()
                .anyMatch(polygon -> hasVertex(polygon.shell(), x, y)
                        || polygon.holes().stream().anyMatch(hole -> hasVertex(hole, x, y)));
    }

    static double steps(double millimetres) {
        return millimetres * Grid.STEPS_PER_MM;
    }

    private static boolean hasVertex(Ring ring, int x, int y) {
        for (int i = 0; i < ring.size(); i++) {
            if (ring.x(i) == x && ring.y(i) == y) {
                return true;
            }
        }
        return false;
    }

    private static boolean crosses(Ring ring, double x, double y) {
        boolean odd = false;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            double xi = ring.x(i);
            double yi = ring.y(i);
            double xj = ring.x(j);
            double yj = ring.y(j);
            if ((yi > y) != (yj > y) && x < (xj - xi) * (y - yi) / (yj - yi) + xi) {
                odd = !odd;
            }
        }
        return odd;
    }
}
