package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/** Builds the document from the parser's events: counts, keeps lines, and leaves out what could reach or run anything. */
final class DocumentBuilding extends DefaultHandler2 {
    /** Elements of SVG whose own text draws nothing and is never asked for. */
    private static final Set<String> WITHOUT_TEXT =
            Set.of("svg", "g", "defs", "symbol", "clipPath", "mask", "marker", "pattern", "switch");

    private final String fileName;
    private final Notes notes;
    private final SVGOMDocument document = OpenSvgImplementation.emptyDocument();
    private final Namespaces namespaces = new Namespaces();
    private final StringBuilder text = new StringBuilder();
    private Node current = document;
    private Locator locator;
    private int entities;
    private int depth;
    private int elements;
    private final long memory;
    private long needed;
    /** Where the last event ended, which is where the next tag starts; the parser itself only tells where a tag ends. */
    private int line = 1;

    DocumentBuilding(String fileName, Notes notes) {
        this(fileName, notes, Runtime.getRuntime().maxMemory());
    }

    /**
     * Builds within so much memory.
     *
     * @param memory in bytes
     */
    DocumentBuilding(String fileName, Notes notes, long memory) {
        this.fileName = fileName;
        this.notes = notes;
        this.memory = memory;
    }

    SVGOMDocument document() {
        return document;
    }

    @Override
    public void setDocumentLocator(Locator where) {
        locator = where;
    }

    @Override
    public void startElement(String namespace, String localName, String name, Attributes attributes) {
        flushText(true);
        namespaces.enter(attributes);
        if (current == document) {
            welcomeRoot(name);
        }
        countUp(name, attributes);
        Element element = document.createElementNS(emptyToNull(namespaces.ofElement(name)), safe(name));
        for (int i = 0; i < attributes.getLength(); i++) {
            copy(element, attributes.getQName(i), attributes.getValue(i));
        }
        Elements.put(element, line, elements);
        current.appendChild(element);
        current = element;
        eventEnded();
    }

    private void copy(Element element, String name, String value) {
        if (name.equals("xmlns") || name.startsWith("xmlns:")) {
            return;
        }
        String namespace = namespaces.ofAttribute(name);
        String local = name.substring(name.indexOf(':') + 1);
        if (local.equals(Elements.LABEL)) {
            element.setAttributeNS(Elements.OWN, "inkstrata:" + Elements.LABEL, value);
        }
        if (namespace.isEmpty() && local.toLowerCase(Locale.ROOT).startsWith("on")) {
            notes.info(place(element), "the script in " + name + " does not run");
        } else if (namespace.equals(javax.xml.XMLConstants.XML_NS_URI) && local.equals("base")) {
            notes.info(place(element), "xml:base is not followed; nothing outside the file is read");
        } else if (namespace.isEmpty()) {
            element.setAttributeNS(null, local, value);
        } else {
            String prefix = namespace.equals(SVGConstants.XLINK_NAMESPACE_URI) ? "xlink:" : "";
            element.setAttributeNS(namespace, prefix.isEmpty() ? safe(name) : prefix + local, value);
        }
    }

    private void welcomeRoot(String name) {
        String local = name.substring(name.indexOf(':') + 1);
        Source here = new Source(local, "", line, List.of());
        if (!local.equals("svg")) {
            throw new ArtworkException(
                    fileName,
                    here,
                    "the file is not a drawing: it starts with this element, not with <svg>.",
                    "Choose an SVG file.");
        }
        String namespace = namespaces.ofElement(name);
        if (namespace.isEmpty()) {
            notes.info(here, "the file does not say that it is SVG (no xmlns); it was read as SVG");
            namespaces.assumeSvg();
        } else if (!namespace.equals(SVGConstants.SVG_NAMESPACE_URI)) {
            throw new ArtworkException(
                    fileName,
                    here,
                    "the file's namespace is '" + namespace + "', which is not SVG's.",
                    "Write xmlns=\"" + SVGConstants.SVG_NAMESPACE_URI + "\" on <svg>.");
        }
    }

    private void countUp(String name, Attributes attributes) {
        Source here = new Source(name.substring(name.indexOf(':') + 1), "", line, List.of());
        if (++depth > Limits.DEPTH) {
            throw new ArtworkException(
                    fileName,
                    here,
                    "elements are nested more than " + Limits.DEPTH + " deep.",
                    "Ungroup the drawing and save it again.");
        }
        if (++elements > Limits.ELEMENTS) {
            throw new ArtworkException(
                    fileName,
                    here,
                    "the drawing has more than " + Limits.ELEMENTS + " elements.",
                    "Merge shapes of one colour, or split the drawing.");
        }
        needed += OpenSvgImplementation.isLean(here.element()) ? Limits.SHAPE_BYTES : Limits.ELEMENT_BYTES;
        for (int i = 0; i < attributes.getLength(); i++) {
            needed += Limits.CHARACTER_BYTES * attributes.getValue(i).length();
        }
        if (needed > memory) {
            throw new ArtworkException(
                    fileName,
                    here,
                    String.format(
                            Locale.ROOT,
                            "up to here the drawing has %d elements, more than fit into the %d MiB of memory that the program"
                                    + " may use.",
                            elements,
                            memory >> 20),
                    "Merge shapes of one colour, split the drawing, or give the program more memory:"
                            + " JDK_JAVA_OPTIONS=-Xmx8g.");
        }
        if (attributes.getLength() > Limits.ATTRIBUTES) {
            throw new ArtworkException(
                    fileName,
                    here,
                    "this element has " + attributes.getLength() + " attributes; " + Limits.ATTRIBUTES
                            + " are the limit.",
                    "Open the file in a drawing program and save it as plain SVG.");
        }
    }

    @Override
    public void endElement(String namespace, String localName, String name) {
        flushText(false);
        current = current.getParentNode();
        depth--;
        namespaces.leave();
        eventEnded();
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        text.append(characters, start, length);
        eventEnded();
    }

    @Override
    public void ignorableWhitespace(char[] characters, int start, int length) {
        characters(characters, start, length);
    }

    @Override
    public void comment(char[] characters, int start, int length) {
        eventEnded();
    }

    @Override
    public void startCDATA() {
        eventEnded();
    }

    @Override
    public void endCDATA() {
        eventEnded();
    }

    @Override
    public void endDTD() {
        eventEnded();
    }

    @Override
    public void startEntity(String name) {
        if (!name.startsWith("[")) {
            eventEnded();
            entities++;
        }
    }

    @Override
    public void endEntity(String name) {
        if (!name.startsWith("[")) {
            entities--;
            eventEnded();
        }
    }

    @Override
    public void processingInstruction(String target, String data) {
        if (target.equals("xml-stylesheet")) {
            notes.warning(
                    new Source("", "", Math.max(0, locator.getLineNumber()), List.of()),
                    "the style sheet outside the file is not read; copy its rules into a <style> element");
        }
        eventEnded();
    }

    @Override
    public void skippedEntity(String name) {
        if (!name.startsWith("[") && !name.startsWith("%")) {
            notes.warning(place(null), "the entity &" + name + "; lies outside the file and is left out");
        }
        eventEnded();
    }

    @Override
    public InputSource resolveEntity(String name, String publicId, String baseUri, String systemId) {
        return new InputSource(new StringReader(""));
    }

    @Override
    public void fatalError(SAXParseException fault) throws SAXException {
        throw fault;
    }

    /** Blanks between elements that hold no text are not kept, but where an element would be empty without them. */
    private void flushText(boolean beforeElement) {
        boolean between = beforeElement || current.getLastChild() instanceof Element;
        boolean means = text.length() > 0 && current != document;
        if (means && !(between && isWithoutText(current) && text.chars().allMatch(c -> c <= ' '))) {
            current.appendChild(document.createTextNode(text.toString()));
        }
        text.setLength(0);
    }

    private static boolean isWithoutText(Node node) {
        return Elements.isSvg(node) && WITHOUT_TEXT.contains(node.getLocalName());
    }

    private void eventEnded() {
        if (entities == 0 && locator != null && locator.getLineNumber() > 0) {
            line = locator.getLineNumber();
        }
    }

    private Source place(Element element) {
        return element == null
                ? new Source("", "", line, List.of())
                : new Source(element.getLocalName(), element.getAttributeNS(null, "id"), line, List.of());
    }

    private static String emptyToNull(String namespace) {
        return namespace.isEmpty() ? null : namespace;
    }

    /** A name that the document accepts with any namespace; the prefix itself means nothing any more. */
    private static String safe(String name) {
        String local = name.substring(name.lastIndexOf(':') + 1);
        return local.isEmpty() ? "unnamed" : local;
    }
}
