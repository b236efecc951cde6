package inkstrata.artwork.svg;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Which elements of the drawing {@code url()} may lead to; everything else is cut off before Batik sees it. */
final class LocalReferences {
    private static final Pattern URL = Pattern.compile("(?is)url\\(\\s*(?:\"([^\"]*)\"|'([^']*)'|([^)]*?))\\s*\\)");
    private static final Set<String> PAINT_SERVERS =
            Set.of("linearGradient", "radialGradient", "pattern", "meshgradient", "hatch");

    /** What CSS writes in place of a reference and no film can hold; the walk meets a stand-in and refuses it. */
    private static final Map<String, Pattern> WITHOUT_REFERENCE = Map.of(
            "filter", Pattern.compile("(?s).+"),
            "clip-path",
                    Pattern.compile("(?is).*\\w\\(.*|.*\\b(border|padding|content|margin|fill|stroke|view)-box\\b.*"),
            "mask", Pattern.compile("(?is).*(gradient|image|image-set|cross-fade|element|paint)\\(.*"));

    private static final String STAND_IN = "inkstrata-";

    private final Document document;
    private final Map<String, Element> byId = new HashMap<>();

    LocalReferences(Document document) {
        this.document = document;
        collect(document.getDocumentElement());
    }

    private void collect(Element element) {
        String id = element.getAttributeNS(null, "id");
        if (!id.isEmpty()) {
            byId.putIfAbsent(id, element);
        }
        for (Element child = Elements.firstChild(element); child != null; child = Elements.nextSibling(child)) {
            collect(child);
        }
    }

    /** The first element with that id, or null. */
    Element withId(String id) {
        return byId.get(id);
    }

    /** The element that {@code url(#id)} in a value leads to, or null. */
    Element target(String value) {
        Matcher matcher = URL.matcher(value);
        String address = matcher.find() ? address(matcher) : "";
        return address.startsWith("#") ? byId.get(address.substring(1)) : null;
    }

    /** What is wrong with the first {@code url()} in a value, or null: it leads out of the file, nowhere, or to another kind. */
    String fault(String property, String value) {
        Matcher matcher = URL.matcher(value);
        if (!matcher.find()) {
            return null;
        }
        String address = address(matcher);
        if (!address.startsWith("#")) {
            return property + " '" + Declaration.shortened(address) + "' lies outside the file and is not read";
        }
        Element target = byId.get(address.substring(1));
        if (target == null) {
            return property + " leads to '" + address + "', which is not in the file";
        }
        return isRightKind(property, target)
                ? null
                : property + " leads to '" + address + "', which is another kind of element";
    }

    /** A value of a property that refers to elements; {@code none} where the reference leads nowhere. */
    Mended mend(String property, String value) {
        if (value.equalsIgnoreCase("none")) {
            return Mended.plain("none");
        }
        Matcher matcher = URL.matcher(value);
        if (!matcher.find()) {
            Pattern written = WITHOUT_REFERENCE.get(property);
            if (written == null || !written.matcher(value).matches()) {
                return Mended.plain(value);
            }
            String element = property.equals("clip-path") ? "clipPath" : property;
            return Mended.plain("url(#" + standIn(element, STAND_IN + property) + ")");
        }
        String fault = fault(property, value);
        if (fault != null) {
            return Mended.plain("none").saying(fault + "; the shape was drawn without");
        }
        return Mended.plain("url(" + address(matcher) + ")");
    }

    /** An element of the reader's own that stands for something Batik has no word for; the same id each time. */
    String standIn(String element, String id) {
        if (!byId.containsKey(id)) {
            Element standIn = document.createElementNS("http://www.w3.org/2000/svg", element);
            standIn.setAttributeNS(null, "id", id);
            document.getDocumentElement().appendChild(standIn);
            byId.put(id, standIn);
        }
        return id;
    }

    /** Whether an id is that of something that CSS writes without a reference. */
    static boolean isStandIn(String property, String id) {
        return id.equals(STAND_IN + property);
    }

    private static String address(Matcher matcher) {
        for (int group = 1; group <= 3; group++) {
            if (matcher.group(group) != null) {
                return matcher.group(group).trim();
            }
        }
        return "";
    }

    private static boolean isRightKind(String property, Element target) {
        String kind = target.getLocalName();
        return switch (property) {
            case "clip-path" -> kind.equals("clipPath");
            case "mask", "filter" -> kind.equals(property);
            case "fill", "stroke" -> PAINT_SERVERS.contains(kind);
            default -> kind.equals("marker");
        };
    }
}
