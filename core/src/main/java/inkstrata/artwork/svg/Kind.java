package inkstrata.artwork.svg;

import org.w3c.dom.Element;

/** What an element is to the walk. */
enum Kind {
    SHAPE,
    TEXT,
    GROUP,
    SWITCH,
    SVG,
    USE,
    IMAGE,
    FOREIGN,
    /** Definitions, descriptions, unknown elements: nothing is drawn where they stand. */
    NOTHING;

    static Kind of(Element element) {
        if (BasicShapes.isShape(element)) {
            return SHAPE;
        }
        if (!Elements.isSvg(element)) {
            return NOTHING;
        }
        return switch (element.getLocalName()) {
            case "g", "a" -> GROUP;
            case "text" -> TEXT;
            case "use" -> USE;
            case "svg" -> SVG;
            case "switch" -> SWITCH;
            case "image" -> IMAGE;
            case "foreignObject" -> FOREIGN;
            default -> NOTHING;
        };
    }

    boolean isDrawn() {
        return this != NOTHING;
    }
}
