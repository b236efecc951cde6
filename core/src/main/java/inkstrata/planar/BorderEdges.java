package inkstrata.planar;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** The edges of a border, found by their ends. */
final class BorderEdges {
    private final Map<Coordinate, Set<Coordinate>> next = new HashMap<>();

    BorderEdges(Border border) {
        for (int[] chain : border.chains()) {
            for (int i = 2; i < chain.length; i += 2) {
                next.computeIfAbsent(new Coordinate(chain[i - 2], chain[i - 1]), from -> new HashSet<>())
                        .add(new Coordinate(chain[i], chain[i + 1]));
            }
        }
    }

    /** Whether both ends of some edge are vertices of that polygon. */
    boolean touch(Polygon polygon) {
        Set<Coordinate> vertices = new HashSet<>(List.of(polygon.getCoordinates()));
        return vertices.stream()
                .anyMatch(vertex -> next.getOrDefault(vertex, Set.of()).stream().anyMatch(vertices::contains));
    }
}
