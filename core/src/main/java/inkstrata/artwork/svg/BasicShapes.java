package inkstrata.artwork.svg;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.w3c.dom.Element;

/** The outlines of SVG's shape elements, in their user units (SVG 2, chapters 9 and 10). */
final class BasicShapes {
    private static final Set<String> NAMES = Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");

    private BasicShapes() {}

    static boolean isShape(Element element) {
        return Elements.isSvg(element) && NAMES.contains(element.getLocalName());
    }

    /**
     * Empty where nothing is to be drawn: no data, no size.
     *
     * @param complaint is told what is wrong with the data
     */
    static Optional<LocalPath> outline(Element element, Viewport viewport, Consumer<String> complaint) {
        Lengths lengths = new Lengths(element, viewport);
        LocalPath path = switch (element.getLocalName()) {
            case "path" -> PathData.parse(element.getAttributeNS(null, "d"), complaint);
            case "rect" -> rectangle(lengths);
            case "circle" -> {
                double r = lengths.either("r", 0);
                yield ellipse(lengths, r, r);
            }
            case "ellipse" -> {
                double rx = lengths.across("rx", Double.NaN);
                double ry = lengths.down("ry", Double.NaN);
                yield ellipse(lengths, Double.isNaN(rx) ? ry : rx, Double.isNaN(ry) ? rx : ry);
            }
            case "line" -> line(lengths);
            case "polyline" -> polygon(element, false, complaint);
            default -> polygon(element, true, complaint);
        };
        return path.isEmpty() ? Optional.empty() : Optional.of(path);
    }

    private static LocalPath line(Lengths lengths) {
        PathPen pen = new PathPen();
        pen.moveTo(lengths.across("x1", 0), lengths.down("y1", 0));
        pen.lineTo(lengths.across("x2", 0), lengths.down("y2", 0));
        return pen.finish();
    }

    private static LocalPath ellipse(Lengths lengths, double rx, double ry) {
        PathPen pen = new PathPen();
        if (rx > 0 && ry > 0) {
            double cx = lengths.across("cx", 0);
            double cy = lengths.down("cy", 0);
            pen.moveTo(cx + rx, cy);
            pen.arcTo(rx, ry, 0, false, true, cx, cy + ry);
            pen.arcTo(rx, ry, 0, false, true, cx - rx, cy);
            pen.arcTo(rx, ry, 0, false, true, cx, cy - ry);
            pen.arcTo(rx, ry, 0, false, true, cx + rx, cy);
            pen.close();
        }
        return pen.finish();
    }

    private static LocalPath rectangle(Lengths lengths) {
        PathPen pen = new PathPen();
        double x = lengths.across("x", 0);
        double y = lengths.down("y", 0);
        double width = lengths.across("width", 0);
        double height = lengths.down("height", 0);
        if (!(width > 0 && height > 0)) {
            return pen.finish();
        }
        double rx = radius(lengths.across("rx", Double.NaN), lengths.down("ry", Double.NaN), width);
        double ry = radius(lengths.down("ry", Double.NaN), lengths.across("rx", Double.NaN), height);
        boolean round = rx > 0 && ry > 0;
        if (!round) {
            rx = 0;
            ry = 0;
        }
        double right = x + width;
        double bottom = y + height;
        pen.moveTo(x + rx, y);
        pen.lineTo(right - rx, y);
        if (round) {
            pen.arcTo(rx, ry, 0, false, true, right, y + ry);
        }
        pen.lineTo(right, bottom - ry);
        if (round) {
            pen.arcTo(rx, ry, 0, false, true, right - rx, bottom);
        }
        pen.lineTo(x + rx, bottom);
        if (round) {
            pen.arcTo(rx, ry, 0, false, true, x, bottom - ry);
            pen.lineTo(x, y + ry);
            pen.arcTo(rx, ry, 0, false, true, x + rx, y);
        }
        pen.close();
        return pen.finish();
    }

    /** What is not given or negative follows the other one (SVG 2, section 7.4). */
    private static double radius(double own, double other, double side) {
        double radius = own >= 0 ? own : other >= 0 ? other : 0;
        return Math.min(radius, side / 2);
    }

    private static LocalPath polygon(Element element, boolean close, Consumer<String> complaint) {
        PathPen pen = new PathPen();
        NumberScanner scanner = new NumberScanner(element.getAttributeNS(null, "points"));
        boolean first = true;
        try {
            scanner.skipSpace();
            while (!scanner.atEnd()) {
                double x = scanner.number();
                double y = scanner.number();
                if (first) {
                    pen.moveTo(x, y);
                } else {
                    pen.lineTo(x, y);
                }
                first = false;
                scanner.skipSpace();
            }
        } catch (NumberScanner.Mistake mistake) {
            complaint.accept("points are at fault at character " + (scanner.position() + 1) + ": "
                    + mistake.getMessage() + "; the shape is drawn up to there");
        }
        if (close && !first) {
            pen.close();
        }
        return pen.finish();
    }
}
