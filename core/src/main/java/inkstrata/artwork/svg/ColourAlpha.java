package inkstrata.artwork.svg;

import java.util.Set;
import org.apache.batik.css.engine.CSSEngine;
import org.apache.batik.css.engine.CSSStylableElement;
import org.w3c.dom.Element;

/**
 * How opaque the colour of a fill or stroke itself is, as in {@code rgba()}.
 *
 * <p>Batik's colours have no alpha, and multiplying it into {@code fill-opacity} would go wrong as soon as one of the two
 * is inherited without the other; so it stands beside the colour on the element that set it.
 */
final class ColourAlpha {
    /** On the root element if any colour of the drawing is translucent. */
    static final String ANY = "translucent-colours";

    static final Set<String> PROPERTIES = Set.of("color", "fill", "stroke");

    private ColourAlpha() {}

    /**
     * Alpha of the colour that holds at an element, inherited where the colour is; through {@code use} as well.
     *
     * @param property {@code fill}, {@code stroke} or {@code color}
     * @return 0 to 1; to be multiplied with {@code fill-opacity} or {@code stroke-opacity}
     */
    static double of(Element element, String property) {
        if (!element.getOwnerDocument().getDocumentElement().hasAttributeNS(Elements.OWN, ANY)) {
            return 1;
        }
        CSSStylableElement at = element instanceof CSSStylableElement stylable ? stylable : null;
        while (at != null) {
            String alpha = at.getAttributeNS(Elements.OWN, property + "-alpha");
            CSSStylableElement parent = CSSEngine.getParentCSSStylableElement(at);
            if (alpha.equals("currentColor")) {
                Element decides = property.equals("color") ? parent : at;
                return decides == null ? 1 : of(decides, "color");
            }
            if (!alpha.isEmpty()) {
                return Double.parseDouble(alpha);
            }
            at = parent;
        }
        return 1;
    }
}
