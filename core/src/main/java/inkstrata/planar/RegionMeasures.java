package inkstrata.planar;

import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** What is asked of regions without making new ones. */
final class RegionMeasures {
    /** In grid steps. */
    private static final double NEARLY_WHOLE = 1e-6;

    private RegionMeasures() {}

    static boolean covers(Region region, Place place) {
        return covers(region, new Coordinate(steps(place.x()), steps(place.y())));
    }

    /** A grid line given in millimetres comes out whole: the error of the product is far below {@link #NEARLY_WHOLE}. */
    private static double steps(double millimetres) {
        double steps = millimetres * Grid.STEPS_PER_MM;
        return Math.abs(steps - Math.rint(steps)) < NEARLY_WHOLE ? Math.rint(steps) : steps;
    }

    static double distanceMm(Region one, Region other) {
        Geometry first = JtsShapes.multiPolygon(one);
        Geometry second = JtsShapes.multiPolygon(other);
        if (holdsAPieceOf(first, other) || holdsAPieceOf(second, one)) {
            return 0;
        }
        return new IndexedFacetDistance(first).distance(second) * Grid.STEP_MM;
    }

    /** Either outlines meet, or a whole polygon lies inside: then its first vertex does. */
    private static boolean holdsAPieceOf(Geometry outer, Region inner) {
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(outer);
        return inner.polygons().stream()
                .map(Region.Polygon::shell)
                .anyMatch(shell -> locator.locate(new Coordinate(shell.x(0), shell.y(0))) != Location.EXTERIOR);
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
