package inkstrata.artwork.svg;

import java.awt.geom.AffineTransform;
import java.util.Optional;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * The part of a drawing that is fitted into a box (SVG 2, sections 8.6 and 8.7).
 *
 * @param width 0 or more; 0 shows nothing
 * @param height 0 or more; 0 shows nothing
 */
record ViewBox(double x, double y, double width, double height) {
    private static final Pattern SEPARATOR = Pattern.compile("[\\s,]+");

    /** Empty if the attribute is missing or is not four numbers. */
    static Optional<ViewBox> of(Element element) {
        String[] parts = SEPARATOR.split(element.getAttributeNS(null, "viewBox").trim(), 5);
        if (parts.length != 4) {
            return Optional.empty();
        }
        try {
            ViewBox box = new ViewBox(
                    Double.parseDouble(parts[0]),
                    Double.parseDouble(parts[1]),
                    Double.parseDouble(parts[2]),
                    Double.parseDouble(parts[3]));
            boolean usable =
                    Double.isFinite(box.x + box.y + box.width + box.height) && box.width >= 0 && box.height >= 0;
            return usable ? Optional.of(box) : Optional.empty();
        } catch (NumberFormatException notNumbers) {
            return Optional.empty();
        }
    }

    boolean isEmpty() {
        return width == 0 || height == 0;
    }

    /**
     * From this box to a box at the origin.
     *
     * @param intoWidth of the box to be filled
     * @param intoHeight of the box to be filled
     * @param preserveAspectRatio as written in the attribute; anything else means {@code xMidYMid meet}
     */
    AffineTransform fit(double intoWidth, double intoHeight, String preserveAspectRatio) {
        double scaleX = intoWidth / width;
        double scaleY = intoHeight / height;
        String align = preserveAspectRatio.isBlank() ? "xMidYMid" : preserveAspectRatio;
        if (!align.contains("none")) {
            double scale = align.contains("slice") ? Math.max(scaleX, scaleY) : Math.min(scaleX, scaleY);
            scaleX = scale;
            scaleY = scale;
        }
        double moveX = share(align, "xMin", "xMax") * (intoWidth - width * scaleX);
        double moveY = share(align, "YMin", "YMax") * (intoHeight - height * scaleY);
        AffineTransform fit = AffineTransform.getTranslateInstance(moveX, moveY);
        fit.scale(scaleX, scaleY);
        fit.translate(-x, -y);
        return fit;
    }

    private static double share(String align, String start, String end) {
        return align.contains(start) ? 0 : align.contains(end) ? 1 : 0.5;
    }
}
