package inkstrata.artwork.svg;

import inkstrata.artwork.Layer;
import inkstrata.artwork.Source;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Small questions about elements of the drawing. */
final class Elements {
    /** Namespace of what the reader writes onto elements for itself. */
    static final String OWN = "urn:inkstrata";

    /** In {@link #OWN}: the line of the file on which the element starts, and its number, from 1. */
    private static final String PLACE = "place";

    private static final int PLACE_LINE = 0;
    private static final int PLACE_NUMBER = 1;

    /** In {@link #OWN}: what an attribute called {@code label} of any namespace says. */
    static final String LABEL = "label";

    private Elements() {}

    static boolean isSvg(Node node) {
        return node.getNodeType() == Node.ELEMENT_NODE && SVGConstants.SVG_NAMESPACE_URI.equals(node.getNamespaceURI());
    }

    static boolean isSvg(Node node, String localName) {
        return isSvg(node) && localName.equals(node.getLocalName());
    }

    /** The first element inside, or null. */
    static Element firstChild(Node parent) {
        return elementFrom(parent.getFirstChild());
    }

    static Element nextSibling(Element element) {
        return elementFrom(element.getNextSibling());
    }

    private static Element elementFrom(Node node) {
        Node at = node;
        while (at != null && at.getNodeType() != Node.ELEMENT_NODE) {
            at = at.getNextSibling();
        }
        return (Element) at;
    }

    static List<Element> children(Element parent) {
        List<Element> children = new ArrayList<>();
        for (Element child = firstChild(parent); child != null; child = nextSibling(child)) {
            children.add(child);
        }
        return children;
    }

    /** What a link of this element names, or empty; {@code href} wins over {@code xlink:href} (SVG 2, section 4.3). */
    static String href(Element element) {
        if (element.hasAttributeNS(null, "href")) {
            return element.getAttributeNS(null, "href").trim();
        }
        return element.getAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "href").trim();
    }

    /** The element and where it stands in the document, references not followed. */
    static Source source(Element element) {
        List<Layer> layers = new ArrayList<>();
        for (Node at = element; at instanceof Element around; at = at.getParentNode()) {
            layer(around).ifPresent(layers::add);
        }
        Collections.reverse(layers);
        return source(element, layers);
    }

    static Source source(Element element, List<Layer> layers) {
        return new Source(
                element.getLocalName(), element.getAttributeNS(null, "id"), place(element, PLACE_LINE), layers);
    }

    /**
     * The element as one that a job can ask for by name; empty if it has none. Names are its id, what any program's {@code label}
     * attribute says, {@code data-name}, and its title (SVG 2, section 5.8). Of the drawing as a whole only the id counts.
     */
    static Optional<Layer> layer(Element element) {
        String id = element.getAttributeNS(null, "id");
        Set<String> names = new LinkedHashSet<>();
        if (element != element.getOwnerDocument().getDocumentElement()) {
            names.add(Layer.plain(element.getAttributeNS(OWN, LABEL)));
            names.add(Layer.plain(element.getAttributeNS(null, "data-name")));
            names.add(title(element));
            names.remove("");
        }
        return id.isEmpty() && names.isEmpty()
                ? Optional.empty()
                : Optional.of(new Layer(
                        element.getLocalName(),
                        id,
                        List.copyOf(names),
                        place(element, PLACE_LINE),
                        place(element, PLACE_NUMBER)));
    }

    private static String title(Element element) {
        for (Element child = firstChild(element); child != null; child = nextSibling(child)) {
            if (isSvg(child, "title")) {
                return Layer.plain(child.getTextContent());
            }
        }
        return "";
    }

    /** Writes onto an element where it stands in the file. */
    static void put(Element element, int line, int number) {
        if (element instanceof LeanElement lean) {
            lean.put(line, number);
            return;
        }
        element.setAttributeNS(OWN, "inkstrata:" + PLACE, line + " " + number);
    }

    private static int place(Element element, int part) {
        if (element instanceof LeanElement lean) {
            return part == PLACE_LINE ? lean.line() : lean.number();
        }
        String place = element.getAttributeNS(OWN, PLACE);
        return place.isEmpty() ? 0 : Integer.parseInt(place.split(" ", -1)[part]);
    }
}
