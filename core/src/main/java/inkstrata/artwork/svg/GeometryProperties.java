package inkstrata.artwork.svg;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Element;

/** Geometry that style sheets may set (SVG 2, section 8 and section 9.3.1); it is written into the attribute of that name. */
final class GeometryProperties {
    private static final Set<String> BOXES = Set.of("svg", "rect", "image", "foreignObject");
    private static final Map<String, Set<String>> ELEMENTS = Map.of(
            "x", BOXES,
            "y", BOXES,
            "width", BOXES,
            "height", BOXES,
            "cx", Set.of("circle", "ellipse"),
            "cy", Set.of("circle", "ellipse"),
            "r", Set.of("circle"),
            "rx", Set.of("rect", "ellipse"),
            "ry", Set.of("rect", "ellipse"),
            "d", Set.of("path"));

    private GeometryProperties() {}

    static boolean has(String property) {
        return ELEMENTS.containsKey(property);
    }

    /**
     * What to write into the attribute; empty if the property says nothing about that element. A part of the screen is no
     * size for a picture on a sheet, so that the root keeps the size it has.
     */
    static Optional<String> attribute(Element element, String property, String value) {
        boolean root = !(element.getParentNode() instanceof Element);
        boolean ofScreen = value.endsWith("%") || value.endsWith("vw") || value.endsWith("vh") || value.equals("auto");
        if (!ELEMENTS.get(property).contains(element.getLocalName()) || (root && ofScreen)) {
            return Optional.empty();
        }
        if (!property.equals("d")) {
            return Optional.of(value);
        }
        String quoted = CssText.argumentsOf("path", value);
        boolean quotes = quoted != null && quoted.length() > 1 && "\"'".indexOf(quoted.charAt(0)) >= 0;
        if (quotes) {
            return Optional.of(quoted.substring(1, quoted.length() - 1));
        }
        return value.equals("none") ? Optional.of("") : Optional.empty();
    }
}
