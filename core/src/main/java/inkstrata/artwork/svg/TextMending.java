package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Makes what stands inside text plain, so that laying it out follows no link but that of a {@code textPath}: {@code tref}
 * becomes the words it refers to (SVG 1.1, section 10.6), {@code altGlyph} its own words (SVG 1.1, section 10.14, where
 * the glyph cannot be had), and a {@code textPath} without its path is not drawn (SVG 2, section 11.8.1).
 */
final class TextMending {
    private final String fileName;
    private final LocalReferences references;
    private final Notes notes;
    private int words;

    TextMending(String fileName, LocalReferences references, Notes notes) {
        this.fileName = fileName;
        this.references = references;
        this.notes = notes;
    }

    /**
     * What takes the place of a child of text, or null if nothing does.
     *
     * @param child its link has been mended
     * @throws ArtworkException if all {@code tref} together repeat more than {@link Limits#ENTITY_CHARACTERS} characters
     */
    Element mend(Element child) {
        String link = child.getAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "href");
        Element target = link.startsWith("#") ? references.withId(link.substring(1)) : null;
        return switch (child.getLocalName()) {
            case "tref" -> target == null ? null : wordsOf(target, child);
            case "altGlyph" -> plain(child);
            case "textPath" -> target != null && BasicShapes.isShape(target) ? child : unguided(child, target);
            default -> child;
        };
    }

    private Element wordsOf(Element target, Element tref) {
        String text = target.getTextContent();
        words += text.length();
        if (words > Limits.ENTITY_CHARACTERS) {
            throw new ArtworkException(
                    fileName,
                    Elements.source(tref),
                    "tref elements repeat more than " + Limits.ENTITY_CHARACTERS + " characters.",
                    "Write the words where they are shown.");
        }
        Element span = span(tref);
        span.appendChild(tref.getOwnerDocument().createTextNode(text));
        return span;
    }

    private Element plain(Element altGlyph) {
        notes.info(Elements.source(altGlyph), "its words are drawn with the usual glyphs of the font");
        Element span = span(altGlyph);
        for (Node node = altGlyph.getFirstChild(); node != null; node = altGlyph.getFirstChild()) {
            span.appendChild(node);
        }
        return span;
    }

    private Element unguided(Element textPath, Element target) {
        String why = target == null ? "it has no path to follow" : "it follows something that is no shape";
        notes.warning(Elements.source(textPath), why + "; its words are left out");
        return null;
    }

    private static Element span(Element like) {
        Element span = like.getOwnerDocument().createElementNS(SVGConstants.SVG_NAMESPACE_URI, "tspan");
        NamedNodeMap attributes = like.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            if (!SVGConstants.XLINK_NAMESPACE_URI.equals(attribute.getNamespaceURI())) {
                span.setAttributeNS(attribute.getNamespaceURI(), attribute.getName(), attribute.getValue());
            }
        }
        return span;
    }
}
