package inkstrata.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.noding.IntersectionAdder;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The same question answered with JTS OverlayNG, used plainly in two ways. Both give, for each shape, the part of it
 * that shows; the second gives it in faces.
 */
final class Peers {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Peers() {}

    /** From each shape, subtracts the union of those above that meet its box. */
    static List<List<Geometry>> subtractThoseAbove(List<Geometry> shapes) {
        STRtree index = new STRtree();
        for (int i = 0; i < shapes.size(); i++) {
            index.insert(shapes.get(i).getEnvelopeInternal(), i);
        }
        index.build();
        List<List<Geometry>> visible = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            List<Geometry> above = new ArrayList<>();
            for (Object other : index.query(shapes.get(i).getEnvelopeInternal())) {
                if ((Integer) other > i) {
                    above.add(shapes.get((Integer) other));
                }
            }
            Geometry shape = shapes.get(i);
            visible.add(List.of(
                    above.isEmpty()
                            ? shape
                            : OverlayNGRobust.overlay(shape, OverlayNGRobust.union(above), OverlayNG.DIFFERENCE)));
        }
        return visible;
    }

    /** Nodes all outlines at once and makes sure of it; makes polygons of the lines and finds the top shape at a point of each. */
    static List<List<Geometry>> nodeAllOnce(List<Geometry> shapes) {
        return topOfFaces(shapes, OverlayNGRobust.union(boundaries(shapes)));
    }

    /** The same, about twice as fast where one look in floating precision will do, and wrong where it will not. */
    static List<List<Geometry>> nodeAllOnceQuickly(List<Geometry> shapes) {
        Geometry lines = FACTORY.buildGeometry(boundaries(shapes));
        MCIndexNoder noder = new MCIndexNoder(new IntersectionAdder(new RobustLineIntersector()));
        return topOfFaces(shapes, OverlayNG.overlay(lines, null, OverlayNG.UNION, new PrecisionModel(), noder));
    }

    private static List<Geometry> boundaries(List<Geometry> shapes) {
        return shapes.stream().map(Geometry::getBoundary).toList();
    }

    private static List<List<Geometry>> topOfFaces(List<Geometry> shapes, Geometry noded) {
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded);
        @SuppressWarnings("unchecked")
        Collection<Geometry> faces = polygonizer.getPolygons();
        STRtree index = new STRtree();
        List<IndexedPointInAreaLocator> inside = new ArrayList<>();
        List<List<Geometry>> visible = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            index.insert(shapes.get(i).getEnvelopeInternal(), i);
            inside.add(new IndexedPointInAreaLocator(shapes.get(i)));
            visible.add(new ArrayList<>());
        }
        for (Geometry face : faces) {
            Point point = face.getInteriorPoint();
            Coordinate at = point.getCoordinate();
            int top = -1;
            for (Object shape : index.query(point.getEnvelopeInternal())) {
                int i = (Integer) shape;
                if (i > top && inside.get(i).locate(at) != Location.EXTERIOR) {
                    top = i;
                }
            }
            if (top >= 0) {
                visible.get(top).add(face);
            }
        }
        return visible;
    }
}
