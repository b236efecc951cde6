package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Locale;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;

/**
 * Reads XML without ever reaching for anything outside the bytes at hand.
 *
 * <p>The JDK's own limits differ from version to version, so all that matter are set here; where this reader has a limit
 * of its own, the parser's is set just above, so that the message is ours.
 */
final class SafeXml {
    private static final String LIMIT = "http://www.oracle.com/xml/jaxp/properties/";
    private static final String XERCES = "http://apache.org/xml/features/";
    private static final String SAX = "http://xml.org/sax/features/";

    private SafeXml() {}

    /**
     * The document, every element carrying its line and number (see {@link Elements#put}).
     *
     * @throws ArtworkException if the bytes are not well-formed XML, not SVG, or ask for too much
     */
    static SVGOMDocument parse(String fileName, byte[] bytes, Notes notes) {
        DocumentBuilding building = new DocumentBuilding(fileName, notes);
        try {
            XMLReader reader = reader();
            reader.setContentHandler(building);
            reader.setErrorHandler(building);
            reader.setEntityResolver(building);
            reader.setDTDHandler(building);
            reader.setProperty("http://xml.org/sax/properties/lexical-handler", building);
            InputSource source = new InputSource(new ByteArrayInputStream(bytes));
            source.setSystemId(OpenSvgImplementation.MADE_UP_PLACE);
            reader.parse(source);
            return building.document();
        } catch (SAXParseException fault) {
            throw faulty(fileName, Math.max(0, fault.getLineNumber()), fault.getMessage());
        } catch (SAXException | IOException fault) {
            throw faulty(fileName, 0, fault.getMessage());
        }
    }

    private static ArtworkException faulty(String fileName, int line, String message) {
        String said = message == null
                ? "no reason given"
                : message.replaceAll("\\s+", " ").trim();
        Source place = new Source("", "", line, java.util.List.of());
        if (said.contains("JAXP00010001") || said.contains("JAXP00010003") || said.contains("JAXP00010004")) {
            return new ArtworkException(
                    fileName,
                    place,
                    String.format(
                            Locale.ROOT,
                            "the file's entities grow too large (more than %d calls or %d characters).",
                            Limits.ENTITY_CALLS,
                            Limits.ENTITY_CHARACTERS),
                    "Open it in a drawing program and save it as plain SVG.");
        }
        String sentence = said.endsWith(".") ? said : said + ".";
        return new ArtworkException(
                fileName,
                place,
                "the file is not well-formed XML: " + sentence,
                "Open it in a drawing program and save it again as SVG, or mend it in a text editor.");
    }

    private static XMLReader reader() throws SAXException {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            // Prefixes are resolved by DocumentBuilding, which can live with one that nobody declared.
            factory.setNamespaceAware(false);
            factory.setValidating(false);
            factory.setXIncludeAware(false);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature(SAX + "external-general-entities", false);
            factory.setFeature(SAX + "external-parameter-entities", false);
            factory.setFeature(XERCES + "nonvalidating/load-external-dtd", false);
            SAXParser parser = factory.newSAXParser();
            limit(parser, "entityExpansionLimit", Limits.ENTITY_CALLS);
            limit(parser, "totalEntitySizeLimit", Limits.ENTITY_CHARACTERS);
            limit(parser, "maxGeneralEntitySizeLimit", Limits.ENTITY_CHARACTERS);
            limit(parser, "maxParameterEntitySizeLimit", Limits.ENTITY_CHARACTERS);
            limit(parser, "entityReplacementLimit", Limits.ENTITY_CHARACTERS);
            limit(parser, "elementAttributeLimit", 2 * Limits.ATTRIBUTES);
            limit(parser, "maxElementDepth", 2 * Limits.DEPTH);
            limit(parser, "maxXMLNameLimit", 1000);
            return parser.getXMLReader();
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException("this Java has no XML parser that can be made safe", impossible);
        }
    }

    private static void limit(SAXParser parser, String name, int value) throws SAXException {
        parser.setProperty(LIMIT + name, Integer.toString(value));
    }
}
