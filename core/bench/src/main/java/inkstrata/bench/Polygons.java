package inkstrata.bench;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.measure.Frame;
import inkstrata.measure.Tolerance;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.awt.ShapeReader;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
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
            polygons.add(FACTORY.createMultiPolygon(parts(polygon).toArray(new Polygon[0])));
        }
        return polygons;
    }

    static Geometry canvas(Artwork artwork) {
        Frame frame = artwork.frame();
        return FACTORY.toGeometry(new Envelope(frame.x(), frame.right(), frame.y(), frame.bottom()));
    }

    /** What of a part lies on the canvas. */
    static Geometry within(Geometry canvas, Geometry part) {
        return canvas.getEnvelopeInternal().covers(part.getEnvelopeInternal())
                ? part
                : OverlayNGRobust.overlay(canvas, part, OverlayNG.INTERSECTION);
    }

    /** Java2D settles the fill rule; what is left are shells that run one way and holes that run the other. */
    private static Geometry polygon(Area area) {
        Path2D.Double path =
                new Path2D.Double(area.rule() == FillRule.NONZERO ? Path2D.WIND_NON_ZERO : Path2D.WIND_EVEN_ODD);
        area.outline().sendTo(new Java2dSink(path));
        Path2D.Double flat = new Path2D.Double(path.getWindingRule());
        flat.append(path.getPathIterator(null, Tolerance.FLATNESS_MM), false);
        List<Coordinate[]> shells = new ArrayList<>();
        List<Coordinate[]> holes = new ArrayList<>();
        for (Object ring : ShapeReader.toCoordinates(new java.awt.geom.Area(flat).getPathIterator(null))) {
            Coordinate[] coordinates = closed((Coordinate[]) ring);
            if (coordinates.length >= 4) {
                (Orientation.isCCWArea(coordinates) ? shells : holes).add(coordinates);
            }
        }
        return largest(shells) >= largest(holes) ? cutOut(shells, holes) : cutOut(holes, shells);
    }

    /** The largest ring is a shell, and all shells run the same way. */
    private static double largest(List<Coordinate[]> rings) {
        return rings.stream()
                .mapToDouble(ring -> org.locationtech.jts.algorithm.Area.ofRing(ring))
                .max()
                .orElse(0);
    }

    private static Geometry cutOut(List<Coordinate[]> shells, List<Coordinate[]> holes) {
        List<Geometry> cuts = holes.stream().map(Polygons::filled).toList();
        List<Polygon> polygons = new ArrayList<>();
        for (Coordinate[] ring : shells) {
            Geometry shell = filled(ring);
            List<Geometry> within = cuts.stream()
                    .filter(cut -> shell.getEnvelopeInternal().covers(cut.getEnvelopeInternal()))
                    .filter(cut -> cut.getArea() < shell.getArea())
                    .toList();
            Geometry rest = within.isEmpty()
                    ? shell
                    : OverlayNGRobust.overlay(shell, OverlayNGRobust.union(within), OverlayNG.DIFFERENCE);
            polygons.addAll(parts(rest));
        }
        return FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
    }

    /** Without the lines and points that an overlay leaves where shapes only touch. */
    private static List<Polygon> parts(Geometry geometry) {
        List<Polygon> parts = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon) {
                parts.add(polygon);
            }
        }
        return parts;
    }

    private static Geometry filled(Coordinate[] ring) {
        return GeometryFixer.fix(FACTORY.createPolygon(ring));
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
