package inkstrata.artwork.svg;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;

/** Properties that change how text looks and that its layout here does not follow. */
final class TextProperties {
    private static final Set<String> TEXT_CONTENT = Set.of("text", "tspan", "textPath");
    private static final Set<String> NORMAL = Set.of("normal");

    /** With the values that change nothing: the initial one, and what comes to the same. */
    private static final Map<String, Set<String>> WITHOUT_EFFECT = Map.ofEntries(
            Map.entry("dominant-baseline", Set.of("auto", "alphabetic", "use-script", "no-change")),
            Map.entry("alignment-baseline", Set.of("auto", "baseline", "alphabetic")),
            Map.entry("text-transform", Set.of("none")),
            Map.entry("text-orientation", Set.of("mixed")),
            Map.entry("text-decoration-line", Set.of("none")),
            Map.entry("text-decoration-style", Set.of("solid")),
            Map.entry("text-decoration-color", Set.of("currentcolor")),
            Map.entry("inline-size", Set.of("auto", "0", "0px")),
            Map.entry("white-space", Set.of("normal", "nowrap")),
            Map.entry("font-size-adjust", Set.of("none")),
            Map.entry("font-variant", NORMAL),
            Map.entry("font-variant-ligatures", NORMAL),
            Map.entry("font-variant-position", NORMAL),
            Map.entry("font-variant-caps", NORMAL),
            Map.entry("font-variant-numeric", NORMAL),
            Map.entry("font-variant-alternates", NORMAL),
            Map.entry("font-variant-east-asian", NORMAL),
            Map.entry("font-feature-settings", NORMAL),
            Map.entry("font-variation-settings", NORMAL));

    private TextProperties() {}

    static boolean has(String property) {
        return WITHOUT_EFFECT.containsKey(property);
    }

    /** Whether leaving the property out can be seen: drawing programs write them on every shape. */
    static boolean shows(Element element, String property, String value) {
        String small = value.trim().toLowerCase(Locale.ROOT);
        boolean sets = !WITHOUT_EFFECT.get(property).contains(small)
                && !Set.of("inherit", "initial", "unset").contains(small);
        // xml:space, which is followed, keeps spaces as white-space: pre does.
        boolean kept = property.equals("white-space")
                && element.getAttributeNS(SVGConstants.XML_NAMESPACE_URI, "space")
                        .equals("preserve");
        return sets && !kept && hasText(element);
    }

    private static boolean hasText(Element element) {
        return TEXT_CONTENT.contains(element.getLocalName())
                || element.getElementsByTagNameNS(SVGConstants.SVG_NAMESPACE_URI, "text")
                                .item(0)
                        != null;
    }
}
