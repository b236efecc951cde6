package inkstrata.artwork.svg;

import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import java.util.Locale;
import java.util.Optional;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.Value;
import org.w3c.dom.Element;
import org.w3c.dom.css.CSSPrimitiveValue;
import org.w3c.dom.css.CSSValue;

/**
 * Finds the flat colour that {@code fill} and {@code stroke} come to (SVG 2, section 13.2).
 *
 * @param references to look up gradients
 * @param refusals for paints that are not flat
 * @param notes for gradients that are flat after all
 * @param contexts for paints that are those of another element
 */
record Paints(References references, Refusals refusals, Notes notes, ContextPaints contexts) {
    /** Empty for none, and where nothing can be seen of it. */
    Optional<FlatPaint> fill(Element element, Source source) {
        return paint(element, source, "fill", SVGCSSEngine.FILL_INDEX, SVGCSSEngine.FILL_OPACITY_INDEX);
    }

    /** Empty for none, and where nothing can be seen of it. */
    Optional<FlatPaint> stroke(Element element, Source source) {
        return paint(element, source, "stroke", SVGCSSEngine.STROKE_INDEX, SVGCSSEngine.STROKE_OPACITY_INDEX);
    }

    private Optional<FlatPaint> paint(Element element, Source source, String property, int paint, int opacity) {
        double share = Style.share(element, opacity) * ColourAlpha.of(element, property);
        if (share == 0) {
            return Optional.empty();
        }
        Value value = Style.value(element, paint);
        return switch (standIn(value)) {
            case ContextPaints.FILL -> ofContext(element, source, "fill", SVGCSSEngine.FILL_INDEX, share);
            case ContextPaints.STROKE -> ofContext(element, source, "stroke", SVGCSSEngine.STROKE_INDEX, share);
            default -> paint(value, source, property, share);
        };
    }

    private Optional<FlatPaint> ofContext(Element element, Source source, String property, int paint, double share) {
        return contexts.ask(element, context -> {
            double alpha = share * ColourAlpha.of(context, property);
            Value value = Style.value(context, paint);
            return switch (standIn(value)) {
                case ContextPaints.FILL -> ofContext(context, source, "fill", SVGCSSEngine.FILL_INDEX, alpha);
                case ContextPaints.STROKE -> ofContext(context, source, "stroke", SVGCSSEngine.STROKE_INDEX, alpha);
                default -> alpha == 0 ? Optional.empty() : paint(value, source, property, alpha);
            };
        });
    }

    /** The word for another element's paint that a value stands for, or empty. */
    private static String standIn(Value value) {
        boolean uri = value.getCssValueType() == CSSValue.CSS_PRIMITIVE_VALUE
                && value.getPrimitiveType() == CSSPrimitiveValue.CSS_URI;
        String name = uri ? Style.fragment(value.getStringValue()) : "";
        return name.startsWith(ContextPaints.STAND_IN) ? name.substring(ContextPaints.STAND_IN.length()) : "";
    }

    private Optional<FlatPaint> paint(Value value, Source source, String property, double share) {
        if (value.getCssValueType() == CSSValue.CSS_VALUE_LIST) {
            Value first = value.item(0);
            if (first.getPrimitiveType() == CSSPrimitiveValue.CSS_URI) {
                Optional<Element> server = references.find(Style.fragment(first.getStringValue()));
                return server.isPresent()
                        ? served(server.get(), source, property, share)
                        : paint(value.item(1), source, property, share);
            }
            return flat(first, share);
        }
        return switch (value.getPrimitiveType()) {
            case CSSPrimitiveValue.CSS_RGBCOLOR -> flat(value, share);
            case CSSPrimitiveValue.CSS_URI -> {
                String name = Style.fragment(value.getStringValue());
                Optional<Element> server = references.find(name);
                if (server.isEmpty()) {
                    notes.warning(source, property + " names #" + name + ", which does not exist; it counts as none");
                    yield Optional.empty();
                }
                yield served(server.get(), source, property, share);
            }
            default -> Optional.empty();
        };
    }

    private static Optional<FlatPaint> flat(Value colour, double share) {
        return Optional.of(new FlatPaint(rgb(colour), share));
    }

    private Optional<FlatPaint> served(Element server, Source source, String property, double share) {
        String kind = server.getLocalName();
        if (!Elements.isSvg(server) || !kind.endsWith("Gradient")) {
            throw refusals.refuse(
                    source,
                    property + " is a " + kind + " (#" + server.getAttributeNS(null, "id")
                            + "), which a single film cannot hold.",
                    "Give the shape one flat colour, or draw the " + kind + " as shapes.");
        }
        FlatPaint only = null;
        for (Element stop : references.stops(server)) {
            FlatPaint paint = new FlatPaint(
                    rgb(Style.value(stop, SVGCSSEngine.STOP_COLOR_INDEX)),
                    Style.share(stop, SVGCSSEngine.STOP_OPACITY_INDEX));
            if (only != null && !only.equals(paint)) {
                throw refusals.refuse(
                        source,
                        property + " is a gradient (#" + server.getAttributeNS(null, "id")
                                + "), which a single film cannot hold.",
                        "Give the shape one flat colour.");
            }
            only = paint;
        }
        if (only == null || only.opacity() == 0) {
            return Optional.empty();
        }
        notes.info(
                source,
                property + " is a gradient (#" + server.getAttributeNS(null, "id") + ") of one colour, read as flat "
                        + only.colour().hex());
        return Optional.of(new FlatPaint(only.colour(), only.opacity() * share));
    }

    static Rgb rgb(Value colour) {
        return new Rgb(channel(colour.getRed()), channel(colour.getGreen()), channel(colour.getBlue()));
    }

    private static int channel(Value value) {
        float number = value.getFloatValue();
        if (value.getPrimitiveType() == CSSPrimitiveValue.CSS_PERCENTAGE) {
            number = number * 255 / 100;
        }
        return Math.max(0, Math.min(255, Math.round(number)));
    }

    /** Says what becomes of what shines through; nothing about what is opaque. */
    void noteOpacity(String property, double opacity, Source source) {
        if (opacity < 1) {
            String percent = String.format(Locale.ROOT, "%.4g %%", opacity * 100);
            notes.info(
                    source,
                    property + " is " + percent
                            + ": wherever it shows, the flat colour that it makes there is printed");
        }
    }
}
