package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.PolygonExtracter;

/** Regions as JTS geometry and back; coordinates are whole grid steps on both sides. */
final class JtsShapes {
    /** One grid step. */
    static final PrecisionModel GRID = new PrecisionModel(1);

    static final GeometryFactory FACTORY = new GeometryFactory(GRID);

    private JtsShapes() {}

    static Geometry multiPolygon(Region region) {
        return FACTORY.createMultiPolygon(
                region.polygons().stream().map(JtsShapes::polygon).toArray(org.locationtech.jts.geom.Polygon[]::new));
    }

    static org.locationtech.jts.geom.Polygon polygon(Region.Polygon polygon) {
        return FACTORY.createPolygon(
                ring(polygon.shell()),
                polygon.holes().stream().map(JtsShapes::ring).toArray(LinearRing[]::new));
    }

    /**
     * The polygons of a geometry, in an order that depends on their shape alone.
     *
     * @param geometry on the grid; its lines and points are left out
     */
    static Region region(Geometry geometry) {
        Geometry ordered = geometry.norm();
        List<Region.Polygon> polygons = new ArrayList<>();
        for (Object each : PolygonExtracter.getPolygons(ordered)) {
            org.locationtech.jts.geom.Polygon polygon = (org.locationtech.jts.geom.Polygon) each;
            if (!polygon.isEmpty()) {
                polygons.add(polygon(polygon));
            }
        }
        return polygons.isEmpty() ? Region.EMPTY : new Region(polygons);
    }

    private static Region.Polygon polygon(org.locationtech.jts.geom.Polygon polygon) {
        List<Ring> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            holes.add(ring(polygon.getInteriorRingN(i)));
        }
        return new Region.Polygon(ring(polygon.getExteriorRing()), holes);
    }

    private static LinearRing ring(Ring ring) {
        Coordinate[] closed = new Coordinate[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            closed[i] = new Coordinate(ring.x(i), ring.y(i));
        }
        closed[ring.size()] = closed[0].copy();
        return FACTORY.createLinearRing(closed);
    }

    private static Ring ring(LinearRing ring) {
        Coordinate[] closed = ring.getCoordinates();
        int[] xy = new int[2 * (closed.length - 1)];
        for (int i = 0; i < closed.length - 1; i++) {
            xy[2 * i] = (int) Math.rint(closed[i].x);
            xy[2 * i + 1] = (int) Math.rint(closed[i].y);
        }
        return new Ring(xy);
    }
}
