package inkstrata.artwork.svg;

import inkstrata.artwork.Source;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Small questions about elements of the drawing. */
final class Elements {
    /** Namespace of what the reader writes onto elements for itself. */
    static final String OWN = "urn:inkstrata";

    /** In {@link #OWN}: the line of the file on which the element starts. */
    static final String LINE = "line";

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

    static Source source(Element element) {
        List<String> groups = new ArrayList<>();
        for (Node at = element.getParentNode(); at instanceof Element around; at = at.getParentNode()) {
            String id = around.getAttributeNS(null, "id");
            if (!id.isEmpty() && around.getParentNode() instanceof Element) {
                groups.add(id);
            }
        }
        Collections.reverse(groups);
        return new Source(
                element.getLocalName(),
                element.getAttributeNS(null, "id"),
                line(element),
                Collections.unmodifiableList(groups));
    }

    private static int line(Element element) {
        String line = element.getAttributeNS(OWN, LINE);
        return line.isEmpty() ? 0 : Integer.parseInt(line);
    }
}
