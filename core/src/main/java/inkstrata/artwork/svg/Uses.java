package inkstrata.artwork.svg;

import java.util.Optional;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.anim.dom.SVGOMUseElement;
import org.apache.batik.dom.svg.SVGOMUseShadowRoot;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Puts copies of what {@code use} elements refer to below them, where styles are inherited from the {@code use} (SVG 2,
 * section 5.6.2).
 *
 * @param references to look up what is used
 * @param notes for references that lead nowhere
 */
record Uses(References references, Notes notes) {
    /** The copy below a use element, made if it is not there yet; a symbol has become an svg. */
    Optional<Element> open(Element element) {
        SVGOMUseElement use = (SVGOMUseElement) element;
        Node root = use.getCSSFirstChild();
        if (root != null && root.getFirstChild() instanceof Element copy) {
            return Optional.of(copy);
        }
        String link = Elements.href(use);
        Optional<Element> used = references.find(Style.fragment(link));
        if (used.isEmpty() || !Elements.isSvg(used.get())) {
            notes.warning(
                    Elements.source(use),
                    link.isEmpty()
                            ? "refers to nothing and draws nothing"
                            : link + " does not exist; nothing is drawn");
            return Optional.empty();
        }
        SVGOMDocument document = (SVGOMDocument) use.getOwnerDocument();
        Element clone = (Element) used.get().cloneNode(true);
        Element copy = Elements.isSvg(clone, SVGConstants.SVG_SYMBOL_TAG) ? asSvg(clone, document) : clone;
        if (Elements.isSvg(copy, SVGConstants.SVG_SVG_TAG)) {
            takeOver(use, copy, SVGConstants.SVG_WIDTH_ATTRIBUTE);
            takeOver(use, copy, SVGConstants.SVG_HEIGHT_ATTRIBUTE);
        }
        SVGOMUseShadowRoot shadow = new SVGOMUseShadowRoot(document, use, true);
        shadow.appendChild(copy);
        use.setUseShadowTree(shadow);
        return Optional.of(copy);
    }

    /** Lets the copy go. */
    void close(Element use) {
        ((SVGOMUseElement) use).setUseShadowTree(null);
    }

    private static Element asSvg(Element symbol, SVGOMDocument document) {
        Element svg = document.createElementNS(SVGConstants.SVG_NAMESPACE_URI, SVGConstants.SVG_SVG_TAG);
        NamedNodeMap attributes = symbol.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            svg.setAttributeNS(attribute.getNamespaceURI(), attribute.getName(), attribute.getValue());
        }
        for (Node child = symbol.getFirstChild(); child != null; child = symbol.getFirstChild()) {
            svg.appendChild(child);
        }
        return svg;
    }

    private static void takeOver(Element use, Element svg, String attribute) {
        String value = use.getAttributeNS(null, attribute);
        if (!value.isBlank() && !value.trim().equals("auto")) {
            svg.setAttributeNS(null, attribute, value);
        }
    }
}
