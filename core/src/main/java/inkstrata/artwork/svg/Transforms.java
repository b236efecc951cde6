package inkstrata.artwork.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.w3c.dom.Element;

/** Reads {@code transform} as an attribute and as CSS write it (CSS Transforms 1, sections 8 and 13). */
final class Transforms {
    private Transforms() {}

    /** Whether an element has a transform of its own. */
    static boolean isTransformed(Element element) {
        String text = element.getAttributeNS(null, "transform").trim();
        return !text.isEmpty() && !text.equals("none");
    }

    /**
     * An element's own transform, its origin taken into account.
     *
     * @param box what percentages refer to, and where an origin is counted from: its reference box
     * @param notes where a mistake is said; a transform with a mistake counts as none
     */
    static AffineTransform of(Element element, Rectangle2D box, Notes notes) {
        if (!isTransformed(element)) {
            return new AffineTransform();
        }
        String text = element.getAttributeNS(null, "transform").trim();
        Viewport viewport = new Viewport(box.getWidth(), box.getHeight());
        Lengths lengths = new Lengths(element, viewport);
        try {
            AffineTransform transform = parse(text, lengths);
            String[] origin =
                    element.getAttributeNS(null, "transform-origin").trim().split("[\\s,]+", 3);
            if (origin[0].isEmpty()) {
                return around(box.getX(), box.getY(), transform);
            }
            String first = origin[0];
            String second = origin.length > 1 ? origin[1] : "center";
            // A side of one direction says which number is which.
            boolean turned =
                    first.equals("top") || first.equals("bottom") || second.equals("left") || second.equals("right");
            double x = origin(turned ? second : first, lengths, viewport.width());
            double y = origin(turned ? first : second, lengths, viewport.height());
            return around(box.getX() + x, box.getY() + y, transform);
        } catch (NumberScanner.Mistake mistake) {
            notes.warning(
                    Elements.source(element),
                    "transform \"" + text + "\" is at fault: " + mistake.getMessage() + "; it counts as none");
            return new AffineTransform();
        }
    }

    private static AffineTransform around(double x, double y, AffineTransform transform) {
        if (x == 0 && y == 0) {
            return transform;
        }
        AffineTransform around = AffineTransform.getTranslateInstance(x, y);
        around.concatenate(transform);
        around.translate(-x, -y);
        return around;
    }

    private static double origin(String text, Lengths lengths, double hundredPercent) {
        return switch (text) {
            case "left", "top" -> 0;
            case "center" -> hundredPercent / 2;
            case "right", "bottom" -> hundredPercent;
            default -> lengths.parse(text, hundredPercent).orElse(0);
        };
    }

    static AffineTransform parse(String text, Lengths lengths) throws NumberScanner.Mistake {
        NumberScanner scanner = new NumberScanner(text);
        AffineTransform all = new AffineTransform();
        scanner.skipSpace();
        while (!scanner.atEnd()) {
            String name = scanner.name().toLowerCase(Locale.ROOT);
            all.concatenate(function(name, arguments(scanner, name, lengths)));
            scanner.skipSeparator();
        }
        return all;
    }

    private static double[] arguments(NumberScanner scanner, String name, Lengths lengths)
            throws NumberScanner.Mistake {
        scanner.skipSpace();
        expect(scanner, '(');
        List<Double> numbers = new ArrayList<>();
        while (scanner.moreNumbers()) {
            double number = scanner.number();
            String unit = scanner.unit();
            numbers.add(unit.isEmpty() ? number : inUnits(number, unit, name, numbers.size(), lengths));
        }
        expect(scanner, ')');
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void expect(NumberScanner scanner, char wanted) throws NumberScanner.Mistake {
        if (scanner.peek() != wanted) {
            throw new NumberScanner.Mistake("'" + wanted + "' is missing");
        }
        scanner.skip();
    }

    private static double inUnits(double number, String unit, String function, int position, Lengths lengths)
            throws NumberScanner.Mistake {
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "deg" -> number;
            case "grad" -> number * 0.9;
            case "rad" -> Math.toDegrees(number);
            case "turn" -> number * 360;
            default -> {
                if (position == 0 && (function.startsWith("rotate") || function.startsWith("skew"))) {
                    throw new NumberScanner.Mistake("'" + unit + "' is no unit of angles");
                }
                boolean down = position == 1 || function.equals("translatey");
                double side =
                        down ? lengths.viewport().height() : lengths.viewport().width();
                double hundred = function.startsWith("scale") ? 1 : side;
                OptionalDouble length = lengths.parse(number + unit, hundred);
                yield length.orElseThrow(() -> new NumberScanner.Mistake("'" + unit + "' is no unit"));
            }
        };
    }

    private static AffineTransform function(String name, double[] a) throws NumberScanner.Mistake {
        return switch (name + a.length) {
            case "matrix6" -> new AffineTransform(a);
            case "translate1", "translatex1" -> AffineTransform.getTranslateInstance(a[0], 0);
            case "translate2" -> AffineTransform.getTranslateInstance(a[0], a[1]);
            case "translatey1" -> AffineTransform.getTranslateInstance(0, a[0]);
            case "scale1" -> AffineTransform.getScaleInstance(a[0], a[0]);
            case "scale2" -> AffineTransform.getScaleInstance(a[0], a[1]);
            case "scalex1" -> AffineTransform.getScaleInstance(a[0], 1);
            case "scaley1" -> AffineTransform.getScaleInstance(1, a[0]);
            case "rotate1" -> AffineTransform.getRotateInstance(Math.toRadians(a[0]));
            case "rotate3" -> AffineTransform.getRotateInstance(Math.toRadians(a[0]), a[1], a[2]);
            case "skewx1" -> AffineTransform.getShearInstance(Math.tan(Math.toRadians(a[0])), 0);
            case "skewy1" -> AffineTransform.getShearInstance(0, Math.tan(Math.toRadians(a[0])));
            case "skew1" -> AffineTransform.getShearInstance(Math.tan(Math.toRadians(a[0])), 0);
            case "skew2" ->
                new AffineTransform(1, Math.tan(Math.toRadians(a[1])), Math.tan(Math.toRadians(a[0])), 1, 0, 0);
            default ->
                throw new NumberScanner.Mistake(
                        name.isEmpty() ? "a function is missing" : name + " does not take " + a.length + " numbers");
        };
    }
}
