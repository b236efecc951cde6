package inkstrata.artwork.svg;

import inkstrata.artwork.FillRule;
import inkstrata.artwork.stroke.StrokeStyle;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.Value;
import org.apache.batik.css.engine.value.css2.FontFamilyManager;
import org.apache.batik.util.CSSConstants;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.css.CSSPrimitiveValue;
import org.w3c.dom.css.CSSValue;

/** What the style of an element comes to after cascade and inheritance. */
final class Style {
    /** What Batik takes for the families of text that names none. */
    private static final String NO_FONT =
            new FontFamilyManager().getDefaultValue().getCssText();

    private Style() {}

    static boolean isDisplayed(Element element) {
        return CSSUtilities.convertDisplay(element);
    }

    static boolean isVisible(Element element) {
        return CSSUtilities.convertVisibility(element);
    }

    static boolean hidesOverflow(Element element) {
        return CSSUtilities.convertOverflow(element);
    }

    static double opacity(Element element) {
        return share(element, SVGCSSEngine.OPACITY_INDEX);
    }

    /** 0 to 1, for opacity, fill-opacity, stroke-opacity and stop-opacity. */
    static double share(Element element, int property) {
        // Through the decimal text, so that 0.3 is 0.3 and not the nearest 32-bit number.
        double value =
                Double.parseDouble(Float.toString(value(element, property).getFloatValue()));
        return Double.isNaN(value) ? 1 : Math.max(0, Math.min(1, value));
    }

    static FillRule fillRule(Element element) {
        return rule(value(element, SVGCSSEngine.FILL_RULE_INDEX));
    }

    static FillRule clipRule(Element element) {
        return rule(value(element, SVGCSSEngine.CLIP_RULE_INDEX));
    }

    static double fontSize(Element element) {
        return value(element, SVGCSSEngine.FONT_SIZE_INDEX).getFloatValue();
    }

    /** The fragment that {@code clip-path}, {@code mask} or {@code marker-*} names, without #; empty for none. */
    static String reference(Element element, int property) {
        Value value = value(element, property);
        if (value.getCssValueType() != CSSValue.CSS_PRIMITIVE_VALUE
                || value.getPrimitiveType() != CSSPrimitiveValue.CSS_URI) {
            return "";
        }
        return fragment(value.getStringValue());
    }

    /** What stands behind # in a link; empty if nothing does. */
    static String fragment(String link) {
        int hash = link.indexOf('#');
        return hash < 0 ? "" : link.substring(hash + 1);
    }

    static StrokeStyle stroke(Element element) {
        Value dashes = value(element, SVGCSSEngine.STROKE_DASHARRAY_INDEX);
        List<Double> lengths = new ArrayList<>();
        int count = dashes.getCssValueType() == CSSValue.CSS_VALUE_LIST ? dashes.getLength() : 0;
        for (int i = 0; i < count; i++) {
            lengths.add(exact(dashes.item(i).getFloatValue()));
        }
        StrokeStyle.Cap cap = switch (ident(element, SVGCSSEngine.STROKE_LINECAP_INDEX)) {
            case CSSConstants.CSS_ROUND_VALUE -> StrokeStyle.Cap.ROUND;
            case CSSConstants.CSS_SQUARE_VALUE -> StrokeStyle.Cap.SQUARE;
            default -> StrokeStyle.Cap.BUTT;
        };
        StrokeStyle.Join join = switch (ident(element, SVGCSSEngine.STROKE_LINEJOIN_INDEX)) {
            case CSSConstants.CSS_ROUND_VALUE -> StrokeStyle.Join.ROUND;
            case CSSConstants.CSS_BEVEL_VALUE -> StrokeStyle.Join.BEVEL;
            default -> StrokeStyle.Join.MITER;
        };
        return new StrokeStyle(
                exact(value(element, SVGCSSEngine.STROKE_WIDTH_INDEX).getFloatValue()),
                cap,
                join,
                exact(value(element, SVGCSSEngine.STROKE_MITERLIMIT_INDEX).getFloatValue()),
                lengths,
                exact(value(element, SVGCSSEngine.STROKE_DASHOFFSET_INDEX).getFloatValue()));
    }

    /** Families of fonts that the drawing names for an element, best first; empty where it names none. */
    static List<String> fonts(Element element) {
        Value value = value(element, SVGCSSEngine.FONT_FAMILY_INDEX);
        if (value.getCssText().equals(NO_FONT)) {
            return List.of();
        }
        if (value.getCssValueType() != CSSValue.CSS_VALUE_LIST) {
            return List.of(value.getStringValue());
        }
        List<String> fonts = new ArrayList<>();
        for (int i = 0; i < value.getLength(); i++) {
            fonts.add(value.item(i).getStringValue());
        }
        return fonts;
    }

    /** A property Batik's CSS does not know, from the attribute the cascade left; inherited. */
    static String inherited(Element element, String property, String initial) {
        for (Node at = element; at instanceof Element holder; at = SVGUtilities.getParentElement(holder)) {
            String value = holder.getAttributeNS(null, property).trim();
            if (!value.isEmpty() && !value.equals("inherit")) {
                return value;
            }
        }
        return initial;
    }

    static Value value(Element element, int property) {
        return CSSUtilities.getComputedStyle(element, property);
    }

    static String ident(Element element, int property) {
        return value(element, property).getStringValue();
    }

    private static double exact(float value) {
        return Double.parseDouble(Float.toString(value));
    }

    private static FillRule rule(Value value) {
        return value.getStringValue().equals(CSSConstants.CSS_EVENODD_VALUE) ? FillRule.EVENODD : FillRule.NONZERO;
    }
}
