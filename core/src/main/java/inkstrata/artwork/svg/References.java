package inkstrata.artwork.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Elements by their id, as they stood in the file; copies that {@code use} makes are not among them. */
final class References {
    private final Map<String, Element> byId = new HashMap<>();

    References(Document document) {
        add(document.getDocumentElement());
    }

    private void add(Element element) {
        String id = element.getAttributeNS(null, "id");
        if (!id.isEmpty()) {
            byId.putIfAbsent(id, element);
        }
        for (Element child = Elements.firstChild(element); child != null; child = Elements.nextSibling(child)) {
            add(child);
        }
    }

    /** The first element of that id. */
    Optional<Element> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The first element of that id, if it is of that kind. */
    Optional<Element> find(String id, String localName) {
        return find(id).filter(element -> Elements.isSvg(element, localName));
    }

    /** A gradient's stops, its own or those of the gradient it refers to (SVG 2, section 14.2.3). */
    List<Element> stops(Element gradient) {
        Set<Element> seen = new HashSet<>();
        Element at = gradient;
        while (at != null && seen.add(at)) {
            List<Element> stops = new ArrayList<>();
            for (Element child : Elements.children(at)) {
                if (Elements.isSvg(child, "stop")) {
                    stops.add(child);
                }
            }
            if (!stops.isEmpty()) {
                return stops;
            }
            at = find(Style.fragment(Elements.href(at))).orElse(null);
        }
        return List.of();
    }
}
