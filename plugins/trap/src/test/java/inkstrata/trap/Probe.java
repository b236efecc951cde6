package inkstrata.trap;

import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

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

    /** The edges that the outlines of two regions have in common: four numbers each. */
    static List<int[]> sharedEdges(Region one, Region other) {
        Set<List<Integer>> edges = new HashSet<>();
        edges(one).forEach(edge -> edges.add(List.of(edge[0], edge[1], edge[2], edge[3])));
        return edges(other).stream()
                .filter(edge -> edges.contains(List.of(edge[2], edge[3], edge[0], edge[1])))
                .toList();
    }

    /** All edges of a region's outlines: from, to, and to where the next one goes. */
    static List<int[]> edges(Region region) {
        List<int[]> edges = new ArrayList<>();
        for (Region.Polygon polygon : region.polygons()) {
            addEdges(polygon.shell(), edges);
            polygon.holes().forEach(hole -> addEdges(hole, edges));
        }
        return edges;
    }

    private static void addEdges(Ring ring, List<int[]> edges) {
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            int k = (i + 1) % ring.size();
            edges.add(new int[] {ring.x(j), ring.y(j), ring.x(i), ring.y(i), ring.x(k), ring.y(k)});
        }
    }

    /** Whether an edge and the next one turn back at a sharper angle than 15 degrees. */
    static boolean endsInANeedle(int[] edge) {
        double back = Math.atan2((double) edge[1] - edge[3], (double) edge[0] - edge[2]);
        double on = Math.atan2((double) edge[5] - edge[3], (double) edge[4] - edge[2]);
        double angle = Math.abs(back - on);
        return Math.min(angle, 2 * Math.PI - angle) < Math.toRadians(15);
    }

    /** How far a place lies from the nearest of some edges, and where on it. */
    static double[] nearest(List<int[]> edges, double x, double y) {
        double[] best = {Double.POSITIVE_INFINITY, 0, 0};
        for (int[] e : edges) {
            double dx = e[2] - e[0];
            double dy = e[3] - e[1];
            double t = ((x - e[0]) * dx + (y - e[1]) * dy) / (dx * dx + dy * dy);
            double at = Math.max(0, Math.min(1, t));
            double px = e[0] + at * dx;
            double py = e[1] + at * dy;
            double distance = Math.hypot(x - px, y - py);
            if (distance < best[0]) {
                best = new double[] {distance, px, py};
            }
        }
        return best;
    }

    /** How far a place lies from the nearest outline of some regions. */
    static double nearestOutline(List<Region> regions, double x, double y) {
        return regions.stream()
                .mapToDouble(region -> nearest(edges(region), x, y)[0])
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    static double steps(double millimetres) {
        return millimetres * Grid.STEPS_PER_MM;
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
