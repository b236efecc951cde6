package inkstrata.artwork.svg;

import inkstrata.artwork.Source;
import inkstrata.artwork.stroke.StrokeStyle;
import inkstrata.artwork.stroke.Stroker;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;

/** Lays down the fill, the stroke and the markers of a shape element (SVG 2, chapter 13). */
final class ShapePainter {
    private final Reading reading;
    private final Canvas canvas;

    ShapePainter(Reading reading, Canvas canvas) {
        this.reading = reading;
        this.canvas = canvas;
    }

    void paint(Element element, Scene scene, Source source) {
        if (!Style.isVisible(element)) {
            return;
        }
        Optional<LocalPath> outline = reading.outline(element, scene.viewport());
        if (outline.isEmpty()) {
            return;
        }
        for (String part : order(Style.inherited(element, "paint-order", "normal"))) {
            switch (part) {
                case "fill" -> fill(element, outline.get(), scene, source);
                case "stroke" -> stroke(element, outline.get(), scene, source);
                default -> reading.markers().paint(element, outline.get(), scene, canvas);
            }
        }
    }

    /** What {@code paint-order} leaves out follows in the usual order (SVG 2, section 13.8). */
    static List<String> order(String paintOrder) {
        List<String> usual = List.of("fill", "stroke", "markers");
        List<String> order = new ArrayList<>();
        for (String part : paintOrder.split("\\s+", -1)) {
            if (usual.contains(part) && !order.contains(part)) {
                order.add(part);
            }
        }
        for (String part : usual) {
            if (!order.contains(part)) {
                order.add(part);
            }
        }
        return order;
    }

    private void fill(Element element, LocalPath outline, Scene scene, Source source) {
        if (Elements.isSvg(element, "line")) {
            return;
        }
        Optional<FlatPaint> paint = reading.paints().fill(element, source);
        if (paint.isPresent()) {
            reading.paints().noteOpacity("fill-opacity", paint.get().opacity(), source);
            canvas.add(outline.path(), Style.fillRule(element), paint.get(), scene, source);
        }
    }

    private void stroke(Element element, LocalPath outline, Scene scene, Source source) {
        Optional<FlatPaint> paint = reading.paints().stroke(element, source);
        StrokeStyle style = Style.stroke(element);
        if (paint.isEmpty() || !(style.width() > 0)) {
            return;
        }
        reading.paints().noteOpacity("stroke-opacity", paint.get().opacity(), source);
        style = scaledToPathLength(element, outline.path(), style, source);
        if (element.getAttributeNS(null, "vector-effect").contains("non-scaling-stroke")) {
            // In px of the outermost viewport instead of the element's units (SVG 2, section 8.13).
            Path2D.Double onSheet = new Path2D.Double(outline.path(), scene.toMm());
            StrokeStyle inMm = style.scaled(reading.hostUnitMm());
            Scene sheet =
                    new Scene(new AffineTransform(), scene.viewport(), scene.clips(), scene.group(), scene.layers());
            canvas.addStroke(Strokes.outline(onSheet, inMm, 1), paint.get(), sheet, source);
            return;
        }
        canvas.addStroke(
                Strokes.outline(outline.path(), style, largestScale(scene.toMm())), paint.get(), scene, source);
    }

    /** {@code pathLength} says how long the author takes the path to be; dashes are measured in that (SVG 2, section 9.6.1). */
    private StrokeStyle scaledToPathLength(Element element, Path2D.Double path, StrokeStyle style, Source source) {
        String text = element.getAttributeNS(null, "pathLength");
        if (!style.isDashed() || text.isBlank()) {
            return style;
        }
        double stated = new Lengths(element, new Viewport(0, 0)).parse(text, 0).orElse(-1);
        double measured = Stroker.length(path);
        if (!(stated >= 0 && measured > 0)) {
            reading.notes().warning(source, "pathLength " + text + " is no length from 0 up and was left out");
            return style;
        }
        if (stated == 0) {
            // Scaled by infinity, whatever is more than 0 is longer than the path.
            double least = style.dashes().stream()
                    .filter(dash -> dash > 0)
                    .min(Double::compare)
                    .orElseThrow();
            return style.withDashesScaled(2 * measured / least);
        }
        return style.withDashesScaled(measured / stated);
    }

    /** The larger singular value: by how much the transform stretches at most. */
    static double largestScale(AffineTransform t) {
        double a = t.getScaleX();
        double b = t.getShearY();
        double c = t.getShearX();
        double d = t.getScaleY();
        double sum = a * a + b * b + c * c + d * d;
        double product = a * d - b * c;
        return Math.sqrt((sum + Math.sqrt(Math.max(0, sum * sum - 4 * product * product))) / 2);
    }
}
