package inkstrata.artwork.svg;

import java.util.Set;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.anim.dom.SVGOMPathElement;
import org.apache.batik.css.engine.CSSContext;
import org.apache.batik.css.engine.CSSEngine;
import org.apache.batik.css.engine.value.ShorthandManager;
import org.apache.batik.css.engine.value.ValueManager;
import org.apache.batik.css.parser.ExtendedParser;
import org.apache.batik.dom.AbstractDocument;
import org.apache.batik.dom.AbstractStylableDocument;
import org.apache.batik.dom.GenericElementNS;
import org.apache.batik.dom.util.DOMUtilities;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Batik's SVG elements, plus plain ones for names of the SVG namespace that Batik would stop at. */
final class OpenSvgImplementation extends SVGDOMImplementation {
    /** Where the drawing claims to lie: a name that can lead nowhere (RFC 6761, section 6.4). */
    static final String MADE_UP_PLACE = "http://drawing.invalid/drawing.svg";

    private static final long serialVersionUID = 1L;

    /** Elements that Batik itself is asked nothing about but their style; what text follows is made by {@link #guide}. */
    private static final Set<String> LEAN =
            Set.of("rect", "circle", "ellipse", "line", "polyline", "polygon", "path", "g");

    /** SVG 2, section 6.7; Batik looks for its own copy beside this class and, when there is none, goes without a word. */
    private static final String USER_AGENT_SHEET = "svg, symbol, marker, pattern { overflow: hidden }";

    /** An empty document, whose elements are made one by one while reading. */
    static SVGOMDocument emptyDocument() {
        SVGOMDocument document = new LeanDocument(new OpenSvgImplementation());
        document.setIsSVG12(false);
        document.setParsedURL(new ParsedURL(MADE_UP_PLACE));
        document.setDocumentURI(MADE_UP_PLACE);
        return document;
    }

    /** Whether elements of that name take less memory than others. */
    static boolean isLean(String localName) {
        return LEAN.contains(localName);
    }

    /** A path that Batik can lay text along. */
    static Element guide(Document document) {
        return new SVGOMPathElement("", (AbstractDocument) document);
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
        return SVG_NAMESPACE_URI.equals(namespace) && LEAN.contains(qualifiedName)
                ? new LeanElement(qualifiedName, document)
                : super.createElementNS(document, namespace, qualifiedName);
    }

    /** Attributes without a namespace hold nothing but their value. */
    private static final class LeanDocument extends SVGOMDocument {
        private static final long serialVersionUID = 1L;

        LeanDocument(OpenSvgImplementation implementation) {
            super(null, implementation);
        }

        @Override
        public Attr createAttributeNS(String namespace, String qualifiedName) {
            return namespace == null
                    ? new LeanAttribute(qualifiedName, this)
                    : super.createAttributeNS(namespace, qualifiedName);
        }
    }

    @Override
    public CSSEngine createCSSEngine(
            AbstractStylableDocument document,
            CSSContext context,
            ExtendedParser parser,
            ValueManager[] values,
            ShorthandManager[] shorthands) {
        CSSEngine engine = super.createCSSEngine(document, context, parser, values, shorthands);
        engine.setUserAgentStyleSheet(engine.parseStyleSheet(USER_AGENT_SHEET, new ParsedURL(MADE_UP_PLACE), "all"));
        return engine;
    }
}
