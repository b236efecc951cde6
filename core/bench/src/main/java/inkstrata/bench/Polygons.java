package inkstrata.bench;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.measure.Tolerance;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.awt.ShapeReader;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** A drawing as valid JTS polygons, lowest first; made before any clock starts. */
final class Polygons {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Polygons() {}

    static List<Geometry> of(Artwork artwork) {
        List<Geometry> polygons = new ArrayList<>();
        for (FlatShape shape : artwork.shapes()) {
            Geometry polygon = polygon(shape.area());
            for (var clip : shape.clips()) {
                Geometry window = FACTORY.createPolygon();
                for (Area part : clip.parts()) {
                    window = OverlayNGRobust.overlay(window, polygon(part), OverlayNG.UNION);
                }
                polygon = OverlayNGRobust.overlay(polygon, window, OverlayNG.INTERSECTION);
            }
            polygons.add(polygon);
        }
        return polygons;
    }

    private static Geometry polygon(Area area) {
        Path2D.Double path =
                new Path2D.Double(area.rule() == FillRule.NONZERO ? Path2D.WIND_NON_ZERO : Path2D.WIND_EVEN_ODD);
        area.outline().sendTo(new Java2dSink(path));
        List<Geometry> rings = new ArrayList<>();
        for (Object ring : ShapeReader.toCoordinates(flat(path))) {
            Coordinate[] coordinates = closed((Coordinate[]) ring);
            if (coordinates.length >= 4) {
                rings.add(GeometryFixer.fix(FACTORY.createPolygon(coordinates)));
            }
        }
        Geometry whole = FACTORY.createPolygon();
        for (Geometry ring : rings) {
            whole = OverlayNGRobust.overlay(whole, ring, OverlayNG.SYMDIFFERENCE);
        }
        return whole;
    }

    private static PathIterator flat(Shape path) {
        return path.getPathIterator(null, Tolerance.FLATNESS_MM);
    }

    private static Coordinate[] closed(Coordinate[] ring) {
        if (ring.length == 0 || ring[0].equals2D(ring[ring.length - 1])) {
            return ring;
        }
        Coordinate[] closed = Arrays.copyOf(ring, ring.length + 1);
        closed[ring.length] = ring[0].copy();
        return closed;
    }

    /** Draws an outline into a Java2D path. */
    private record Java2dSink(Path2D.Double path) implements CurveSink {
        @Override
        public void moveTo(double x, double y) {
            path.moveTo(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            path.lineTo(x, y);
        }

        @Override
        public void quadTo(double x1, double y1, double x, double y) {
            path.quadTo(x1, y1, x, y);
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
            path.curveTo(x1, y1, x2, y2, x, y);
        }
    }
}
