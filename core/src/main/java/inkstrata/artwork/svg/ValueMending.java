package inkstrata.artwork.svg;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.css.engine.CSSContext;
import org.apache.batik.css.engine.CSSStylableElement;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.ValueManager;
import org.apache.batik.css.parser.Parser;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.DOMException;

/** Rewrites the values of properties so that Batik, which knows the CSS of 2001, takes them as CSS of today means them. */
final class ValueMending {
    /** Properties that Batik does not know and the walk over the drawing does; they become attributes. */
    static final Set<String> AS_ATTRIBUTES = Set.of(
            "paint-order",
            "vector-effect",
            "transform",
            "transform-origin",
            "transform-box",
            "mix-blend-mode",
            "mask-type",
            "isolation");

    private static final Set<String> OPACITIES =
            Set.of("opacity", "fill-opacity", "stroke-opacity", "stop-opacity", "flood-opacity");
    private static final Set<String> COLOURS = Set.of("color", "stop-color", "flood-color", "lighting-color");
    private static final Set<String> REFERENCES =
            Set.of("clip-path", "mask", "filter", "marker-start", "marker-mid", "marker-end", "marker");
    private static final Pattern NEGATIVE = Pattern.compile("(?:^|[\\s,])-\\s*[\\d.]*[1-9]");
    private static final Pattern COMPUTED = Pattern.compile("(?:^|[\\s,(])(?:calc|min|max|clamp|env|attr)\\(");
    private static final Pattern NEW_NUMBER = Pattern.compile(
            "(?<![\\w#.\"'])([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:e[-+]?\\d+)?)(rem\\b|q\\b|)", Pattern.CASE_INSENSITIVE);

    private final LocalReferences references;
    private final PaintMending fills;
    private final PaintMending strokes;
    private final SVGCSSEngine engine;
    private final CSSStylableElement asker;
    private final Map<String, Optional<Mended>> known = new HashMap<>();

    ValueMending(SVGOMDocument document, LocalReferences references) {
        this.references = references;
        this.asker = (CSSStylableElement) document.getDocumentElement();
        this.fills = new PaintMending("fill", references);
        this.strokes = new PaintMending("stroke", references);
        // Only asked whether a value is one; it never computes styles or follows an address.
        CSSContext asked = new BridgeContext(new UserAgentAdapter());
        this.engine =
                new SVGCSSEngine(document, new ParsedURL(OpenSvgImplementation.MADE_UP_PLACE), new Parser(), asked);
    }

    /** Whether Batik has that property, longhand or shorthand. */
    boolean isBatiks(String property) {
        return engine.getPropertyIndex(property) >= 0 || engine.getShorthandIndex(property) >= 0;
    }

    /** The value to write; empty if CSS would drop the declaration because its value means nothing. */
    Optional<Mended> mend(String property, String value) {
        return known.computeIfAbsent(property + ":" + value, key -> mendNew(property, value));
    }

    private Optional<Mended> mendNew(String property, String value) {
        String small = value.trim().toLowerCase(Locale.ROOT);
        Optional<Mended> wide = wideKeyword(property, small);
        if (wide.isPresent()) {
            return wide;
        }
        if (AS_ATTRIBUTES.contains(property)) {
            return Optional.of(Mended.plain(value.trim()));
        }
        if (COMPUTED.matcher(small).find()) {
            return Optional.empty();
        }
        Optional<Mended> mended = byProperty(property, value.trim(), small);
        return mended.filter(m -> m.value().isEmpty() || batikTakes(property, m.value()));
    }

    private Optional<Mended> byProperty(String property, String value, String small) {
        if (OPACITIES.contains(property)) {
            return opacity(small);
        }
        if (COLOURS.contains(property)) {
            return PaintMending.colour(value);
        }
        if (property.equals("fill") || property.equals("stroke")) {
            return (property.equals("fill") ? fills : strokes).paint(value);
        }
        if (REFERENCES.contains(property)) {
            return Optional.of(references.mend(property, value));
        }
        return switch (property) {
            case "display" -> Optional.of(Mended.plain(small.equals("none") ? small : "inline"));
            case "overflow" -> Optional.of(Mended.plain(small.equals("clip") ? "hidden" : small));
            case "stroke-linejoin" ->
                Optional.of(
                        small.equals("arcs") || small.equals("miter-clip")
                                ? Mended.plain("miter").saying("stroke-linejoin '" + small + "' was drawn as miter")
                                : Mended.plain(small));
            case "stroke-width", "stroke-dasharray", "font-size" ->
                NEGATIVE.matcher(small).find() ? Optional.empty() : Optional.of(Mended.plain(oldNumbers(value)));
            case "font-weight" -> Optional.of(Mended.plain(fontWeight(small)));
            case "writing-mode" ->
                Optional.of(Mended.plain(
                        switch (small) {
                            case "horizontal-tb" -> "lr-tb";
                            case "vertical-rl", "vertical-lr" -> "tb";
                            default -> small;
                        }));
            default -> Optional.of(Mended.plain(oldNumbers(value)));
        };
    }

    /** {@code inherit}, {@code initial}, {@code unset}, {@code revert} (CSS Cascade 4, section 7.3). */
    private Optional<Mended> wideKeyword(String property, String small) {
        boolean reset = List.of("initial", "unset", "revert", "revert-layer").contains(small);
        if (!reset && !small.equals("inherit")) {
            return Optional.empty();
        }
        int index = engine.getPropertyIndex(property);
        if (index < 0) {
            return Optional.of(Mended.plain(reset ? "" : "inherit"));
        }
        ValueManager manager = engine.getValueManagers()[index];
        if (!reset || (!small.equals("initial") && manager.isInheritedProperty())) {
            return Optional.of(new Mended("inherit", manager.isInheritedProperty() ? "" : "1", ""));
        }
        return Optional.of(Mended.colour(manager.getDefaultValue().getCssText(), 1));
    }

    private static Optional<Mended> opacity(String small) {
        try {
            boolean percent = small.endsWith("%");
            double number = Double.parseDouble(percent ? small.substring(0, small.length() - 1) : small);
            double opacity = Math.max(0, Math.min(1, percent ? number / 100 : number));
            return Double.isNaN(opacity) ? Optional.empty() : Optional.of(Mended.plain(plainNumber(opacity)));
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }

    private static String plainNumber(double number) {
        return new java.math.BigDecimal(number)
                .round(new java.math.MathContext(9))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Batik knows whole hundreds only. */
    private static String fontWeight(String small) {
        if (!small.matches("\\d{1,4}")) {
            return small;
        }
        int hundreds = (Integer.parseInt(small) + 50) / 100;
        return Integer.toString(Math.max(1, Math.min(9, hundreds)) * 100);
    }

    /**
     * Numbers without exponents, {@code rem} with the 16 px a root element has by default, and quarter millimetres, none
     * of which Batik knows.
     */
    private static String oldNumbers(String value) {
        return NEW_NUMBER.matcher(value).replaceAll(found -> {
            String number = found.group(1);
            if (Double.isInfinite(Double.parseDouble(number))) {
                return found.group();
            }
            return switch (found.group(2).toLowerCase(Locale.ROOT)) {
                case "rem" -> plainNumber(Double.parseDouble(number) * 16) + "px";
                case "q" -> plainNumber(Double.parseDouble(number) / 4) + "mm";
                default -> number.matches("(?i).*e.*") ? plainNumber(Double.parseDouble(number)) : number;
            };
        });
    }

    private boolean batikTakes(String property, String value) {
        try {
            if (engine.getPropertyIndex(property) < 0) {
                return true;
            }
            engine.parsePropertyValue(asker, property, value);
            return true;
        } catch (DOMException refused) {
            return false;
        }
    }
}
