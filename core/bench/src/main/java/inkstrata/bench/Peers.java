package inkstrata.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The same question answered with JTS OverlayNG, used plainly in two ways. Both give, for each shape, the part of it
 * that shows; the second gives it in faces.
 */
final class Peers {
    /** A quarter micrometre, the grid of the map. */
    private static final PrecisionModel GRID = new PrecisionModel(4000);

    private Peers() {}

    /** From each shape, subtracts the union of those above that meet its box. */
    static List<Geometry> subtractThoseAbove(List<Geometry> shapes) {
        STRtree index = new STRtree();
        for (int i = 0; i < shapes.size(); i++) {
            index.insert(shapes.get(i).getEnvelopeInternal(), i);
        }
        index.build();
        List<Geometry> visible = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            List<Geometry> above = new ArrayList<>();
            for (Object other : index.query(shapes.get(i).getEnvelopeInternal())) {
                if ((Integer) other > i) {
                    above.add(shapes.get((Integer) other));
                }
            }
            visible.add(
                    above.isEmpty()
                            ? shapes.get(i)
                            : OverlayNGRobust.overlay(
                                    shapes.get(i), OverlayNGRobust.union(above), OverlayNG.DIFFERENCE));
        }
        return visible;
    }

    /** Nodes all outlines at once, makes polygons of the lines and finds the top shape at a point of each. */
    static List<List<Geometry>> nodeAllOnce(List<Geometry> shapes) {
        GeometryFactory factory = new GeometryFactory();
        List<Geometry> lines = shapes.stream().map(Geometry::getBoundary).toList();
        Geometry noded = UnaryUnionNG.union(lines, factory, GRID);
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
