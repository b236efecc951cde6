package inkstrata.artwork.svg;

import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.dom.AbstractDocument;
import org.apache.batik.dom.GenericElementNS;
import org.apache.batik.dom.util.DOMUtilities;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Element;

/** Batik's SVG elements, plus plain ones for names of the SVG namespace that Batik would stop at. */
final class OpenSvgImplementation extends SVGDOMImplementation {
    /** Where the drawing claims to lie: a name that can lead nowhere (RFC 6761, section 6.4). */
    static final String MADE_UP_PLACE = "http://drawing.invalid/drawing.svg";

    private static final long serialVersionUID = 1L;

    /** An empty document, whose elements are made one by one while reading. */
    static SVGOMDocument emptyDocument() {
        SVGOMDocument document = new SVGOMDocument(null, new OpenSvgImplementation());
        document.setIsSVG12(false);
        document.setParsedURL(new ParsedURL(MADE_UP_PLACE));
        document.setDocumentURI(MADE_UP_PLACE);
        return document;
    }

    /** Whether SVG (as far as Batik knows) has an element of that name. */
    boolean knows(String localName) {
        return factories.containsKey(localName);
    }

    @Override
    public Element createElementNS(AbstractDocument document, String namespace, String qualifiedName) {
        if (SVG_NAMESPACE_URI.equals(namespace) && !knows(DOMUtilities.getLocalName(qualifiedName))) {
            return new GenericElementNS(namespace, qualifiedName, document);
        }
        return super.createElementNS(document, namespace, qualifiedName);
    }
}
