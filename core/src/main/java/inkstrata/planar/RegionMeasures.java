package inkstrata.planar;

import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** What is asked of regions without making new ones. */
final class RegionMeasures {
    private RegionMeasures() {}

    static boolean covers(Region region, Place place) {
        return covers(region, new Coordinate(place.x() / Grid.STEP_MM, place.y() / Grid.STEP_MM));
    }

    static double distanceMm(Region one, Region other) {
        if (holdsAPieceOf(one, other) || holdsAPieceOf(other, one)) {
            return 0;
        }
        return new IndexedFacetDistance(JtsShapes.multiPolygon(one)).distance(JtsShapes.multiPolygon(other))
                * Grid.STEP_MM;
    }

    /** Either outlines meet, or a whole polygon lies inside: then its first vertex does. */
    private static boolean holdsAPieceOf(Region outer, Region inner) {
        return inner.polygons().stream()
                .map(Region.Polygon::shell)
                .anyMatch(shell -> covers(outer, new Coordinate(shell.x(0), shell.y(0))));
    }

    private static boolean covers(Region region, Coordinate point) {
        RayCrossingCounter counter = new RayCrossingCounter(point);
        for (Ring ring : region.rings()) {
            Coordinate before = new Coordinate(ring.x(ring.size() - 1), ring.y(ring.size() - 1));
            for (int i = 0; i < ring.size(); i++) {
                Coordinate vertex = new Coordinate(ring.x(i), ring.y(i));
                counter.countSegment(before, vertex);
                before = vertex;
            }
        }
        return counter.getLocation() != Location.EXTERIOR;
    }
}
