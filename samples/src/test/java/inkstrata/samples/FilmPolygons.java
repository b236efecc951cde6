package inkstrata.samples;

import static java.nio.charset.StandardCharsets.UTF_8;

import inkstrata.artwork.Area;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.parser.AWTPathProducer;
import org.locationtech.jts.awt.ShapeReader;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateArrays;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * Files of films and outlines of drawings as polygons of JTS, in micrometres: read by Batik's parser of path data, cut into chords by the
 * JDK, laid over each other by JTS. Nothing of the planar map is in it.
 */
final class FilmPolygons {
    static final GeometryFactory FACTORY = new GeometryFactory();

    private static final double UM_PER_MM = 1000;
    private static final double FLATNESS_UM = 0.5;

    /** Vertices of overlays go to 1/64 µm: that is what never fails. */
    private static final PrecisionModel PRECISION = new PrecisionModel(64);

    private static final Pattern PICTURE = Pattern.compile("<g id=\"picture\"[^>]*>(.*?)</g>", Pattern.DOTALL);
    private static final Pattern DATA = Pattern.compile(" d=\"([^\"]*)\"");

    private FilmPolygons() {}

    /** What a film's picture lets through, in the sheet's coordinates. */
    static Geometry film(byte[] svg) {
        Matcher picture = PICTURE.matcher(new String(svg, UTF_8));
        if (!picture.find()) {
            return FACTORY.createPolygon();
        }
        List<Geometry> rings = new ArrayList<>();
        Matcher data = DATA.matcher(picture.group(1));
        while (data.find()) {
            try {
                rings.addAll(rings(AWTPathProducer.createShape(new StringReader(data.group(1)), Path2D.WIND_EVEN_ODD)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return evenOdd(rings);
    }

    /** What an area of a drawing covers; contours of areas that are not even-odd have to be simple and apart, or holes. */
    static Geometry area(Area area) {
        Path2D.Double path = new Path2D.Double();
        area.outline().sendTo(new Into(path));
        List<Geometry> rings = rings(path);
        return area.rule() == FillRule.EVENODD || rings.size() > 1 ? evenOdd(rings) : rings.get(0);
    }

    static Geometry area(Outline outline) {
        return area(new Area(outline, FillRule.NONZERO));
    }

    static Geometry rectangle(double x, double y, double width, double height) {
        return area(Outline.rectangle(x, y, width, height));
    }

    static Geometry moved(Geometry geometry, double dx, double dy) {
        return AffineTransformation.translationInstance(dx, dy).transform(geometry);
    }

    static Geometry minus(Geometry one, Geometry other) {
        return overlay(one, other, OverlayNG.DIFFERENCE);
    }

    static Geometry both(Geometry one, Geometry other) {
        return overlay(one, other, OverlayNG.INTERSECTION);
    }

    static Geometry union(List<Geometry> all) {
        Geometry union = FACTORY.createPolygon();
        for (Geometry one : all) {
            union = overlay(union, one, OverlayNG.UNION);
        }
        return union;
    }

    /** What of it holds a disc of that width, so that hairs and needles are gone. */
    static Geometry wide(Geometry geometry, double um) {
        Geometry core = geometry.buffer(-um / 2, 16);
        return core.isEmpty() ? core : both(geometry, core.buffer(um / 2 + 0.5, 16));
    }

    private static Geometry overlay(Geometry one, Geometry other, int operation) {
        Geometry result = OverlayNG.overlay(one, other, operation, PRECISION);
        return FACTORY.createMultiPolygon(GeometryFactory.toPolygonArray(PolygonExtracter.getPolygons(result)));
    }

    private static Geometry evenOdd(List<Geometry> rings) {
        Geometry result = FACTORY.createPolygon();
        for (Geometry ring : rings) {
            result = overlay(result, ring, OverlayNG.SYMDIFFERENCE);
        }
        return result;
    }

    private static List<Geometry> rings(Shape shape) {
        PathIterator chords =
                shape.getPathIterator(AffineTransform.getScaleInstance(UM_PER_MM, UM_PER_MM), FLATNESS_UM);
        List<Geometry> rings = new ArrayList<>();
        for (Object contour : ShapeReader.toCoordinates(chords)) {
            Coordinate[] open = CoordinateArrays.removeRepeatedPoints((Coordinate[]) contour);
            if (open.length > 2) {
                Coordinate[] closed = open[0].equals2D(open[open.length - 1]) ? open : append(open, open[0]);
                if (closed.length > 3) {
                    rings.add(GeometryFixer.fix(FACTORY.createPolygon(closed)));
                }
            }
        }
        return rings;
    }

    private static Coordinate[] append(Coordinate[] open, Coordinate last) {
        Coordinate[] closed = Arrays.copyOf(open, open.length + 1);
        closed[open.length] = last;
        return closed;
    }

    private record Into(Path2D.Double path) implements CurveSink {
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
