package inkstrata.artwork.svg;

import inkstrata.artwork.Clip;
import inkstrata.artwork.TranslucentGroup;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.w3c.dom.Element;

/** Draws markers on the vertices of a path, whether or not the path itself is painted (SVG 2, section 13.7). */
final class Markers {
    private final Reading reading;

    Markers(Reading reading) {
        this.reading = reading;
    }

    void paint(Element element, LocalPath path, Scene scene, Canvas canvas) {
        if (!List.of("path", "line", "polyline", "polygon").contains(element.getLocalName())) {
            return;
        }
        Optional<Element> start = marker(element, SVGCSSEngine.MARKER_START_INDEX, scene);
        Optional<Element> mid = marker(element, SVGCSSEngine.MARKER_MID_INDEX, scene);
        Optional<Element> end = marker(element, SVGCSSEngine.MARKER_END_INDEX, scene);
        if (start.isEmpty() && mid.isEmpty() && end.isEmpty()) {
            return;
        }
        double strokeWidth = Style.stroke(element).width();
        List<PathVertices.Vertex> vertices = PathVertices.of(path);
        int last = vertices.size() - 1;
        Scene inside = scene.inside(Elements.layer(element));
        start.ifPresent(marker -> draw(element, marker, vertices.get(0), true, strokeWidth, inside, canvas));
        mid.ifPresent(marker -> {
            for (PathVertices.Vertex vertex : vertices.subList(Math.min(1, last), last)) {
                draw(element, marker, vertex, false, strokeWidth, inside, canvas);
            }
        });
        end.ifPresent(marker -> draw(element, marker, vertices.get(last), false, strokeWidth, inside, canvas));
    }

    private Optional<Element> marker(Element element, int property, Scene scene) {
        String id = Style.reference(element, property);
        Optional<Element> marker = reading.references().find(id, "marker");
        if (marker.isEmpty() && !id.isEmpty()) {
            reading.notes().warning(reading.source(element, scene), "marker #" + id + " does not exist");
        }
        return marker;
    }

    private void draw(
            Element shape,
            Element marker,
            PathVertices.Vertex vertex,
            boolean start,
            double strokeWidth,
            Scene scene,
            Canvas canvas) {
        Lengths lengths = new Lengths(marker, scene.viewport());
        double opacity = Style.opacity(marker);
        double width = lengths.across("markerWidth", 3);
        double height = lengths.down("markerHeight", 3);
        Optional<ViewBox> viewBox = ViewBox.of(marker);
        boolean byStroke = !marker.getAttributeNS(null, "markerUnits").equals("userSpaceOnUse");
        double scale = byStroke ? strokeWidth : 1;
        if (!(width > 0 && height > 0 && scale > 0 && opacity > 0)
                || viewBox.map(ViewBox::isEmpty).orElse(false)) {
            return;
        }
        AffineTransform fit = viewBox.map(
                        box -> box.fit(width, height, marker.getAttributeNS(null, "preserveAspectRatio")))
                .orElseGet(AffineTransform::new);
        Viewport inside = viewBox.map(box -> new Viewport(box.width(), box.height()))
                .orElseGet(() -> new Viewport(width, height));
        Point2D reference = fit.transform(
                new Point2D.Double(
                        reference(marker, "refX", inside.width(), viewBox.map(ViewBox::x), inside),
                        reference(marker, "refY", inside.height(), viewBox.map(ViewBox::y), inside)),
                null);

        AffineTransform place = AffineTransform.getTranslateInstance(vertex.x(), vertex.y());
        place.rotate(Math.toRadians(angle(marker, vertex, start)));
        place.scale(scale, scale);
        place.translate(-reference.getX(), -reference.getY());
        Scene placed = scene.transformed(place);
        if (Style.hidesOverflow(marker)) {
            Clip frame = Clips.rectangle(new Rectangle2D.Double(0, 0, width, height), placed.toMm());
            placed = placed.clippedBy(List.of(frame));
        }
        Scene content = placed.transformed(fit).within(inside);
        if (opacity == 1) {
            inside(shape, marker, content, canvas);
            return;
        }
        TranslucentGroup group = reading.openGroup(opacity, scene.group());
        int before = canvas.size();
        inside(shape, marker, content.inGroup(Optional.of(group)), canvas);
        canvas.fold(group, before);
    }

    private void inside(Element shape, Element marker, Scene content, Canvas canvas) {
        reading.contextPaints().onMarkersOf(shape, () -> ArtworkWalk.inside(marker, content, reading, canvas));
    }

    /** A number, a percentage of the viewBox, or a side of it by name (SVG 2, section 13.7.2). */
    private static double reference(
            Element marker, String attribute, double size, Optional<Double> origin, Viewport inside) {
        String text = marker.getAttributeNS(null, attribute).trim();
        return switch (text) {
            case "left", "top" -> origin.orElse(0.0);
            case "center" -> origin.orElse(0.0) + size / 2;
            case "right", "bottom" -> origin.orElse(0.0) + size;
            default -> new Lengths(marker, inside).parse(text, size).orElse(0);
        };
    }

    private static double angle(Element marker, PathVertices.Vertex vertex, boolean start) {
        String orient = marker.getAttributeNS(null, "orient").trim();
        return switch (orient) {
            case "" -> 0;
            case "auto" -> vertex.angle();
            case "auto-start-reverse" -> start ? vertex.angle() + 180 : vertex.angle();
            default -> degrees(marker, orient);
        };
    }

    private static double degrees(Element marker, String text) {
        try {
            AffineTransform turned = Transforms.parse("rotate(" + text + ")", new Lengths(marker, new Viewport(0, 0)));
            return Math.toDegrees(Math.atan2(turned.getShearY(), turned.getScaleY()));
        } catch (NumberScanner.Mistake mistake) {
            return 0;
        }
    }
}
