package inkstrata.artwork.svg;

import inkstrata.artwork.Source;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;

/** Takes out of the drawing what does not draw, chooses within {@code switch}, and keeps links inside the file. */
final class DocumentMending {
    private static final Set<String> ANIMATIONS =
            Set.of("animate", "animateColor", "animateMotion", "animateTransform", "set", "discard");
    /** SVG 2 has no fonts of its own any more (appendix K), and today's programs do not draw with them. */
    private static final Set<String> FONTS = Set.of("font", "font-face", "altGlyphDef");

    private static final Set<String> SCRIPTS = Set.of("script", "handler", "listener");

    /** The language the drawing is read in, whatever the machine speaks, so that the films are always the same. */
    private static final String LANGUAGE = "en";

    private final Notes notes;
    private final LocalReferences references;
    private final TextMending texts;

    private DocumentMending(String fileName, LocalReferences references, Notes notes) {
        this.notes = notes;
        this.references = references;
        this.texts = new TextMending(fileName, references, notes);
    }

    static void apply(String fileName, SVGOMDocument document, LocalReferences references, Notes notes) {
        new DocumentMending(fileName, references, notes).mend(document.getDocumentElement());
    }

    private void mend(Element element) {
        if (Elements.isSvg(element)) {
            mendLink(element);
        }
        boolean choose = Elements.isSvg(element, "switch");
        boolean chosen = false;
        for (Element child : Elements.children(element)) {
            boolean stays = !isInert(child) && (!Elements.isSvg(child) || passes(child)) && !(choose && chosen);
            if (!stays) {
                element.removeChild(child);
                continue;
            }
            chosen |= Elements.isSvg(child);
            mend(child);
            if (Elements.isSvg(child)) {
                put(texts.mend(child), child);
            }
        }
    }

    private static void put(Element mended, Element child) {
        if (mended == null) {
            child.getParentNode().removeChild(child);
        } else if (mended != child) {
            child.getParentNode().replaceChild(mended, child);
        }
    }

    private boolean isInert(Element element) {
        if (!Elements.isSvg(element)) {
            return false;
        }
        String name = element.getLocalName();
        if (SCRIPTS.contains(name)) {
            notes.info(Elements.source(element), "the script does not run");
        } else if (ANIMATIONS.contains(name)) {
            notes.info(Elements.source(element), "the animation stands still; the drawing is read as written");
        } else if (FONTS.contains(name)) {
            notes.info(Elements.source(element), "the file's own font is not used; turn text into outlines to keep it");
        } else {
            return false;
        }
        return true;
    }

    /** Whether an element's conditions hold (SVG 1.1, section 5.8); those who fail are left out with a note. */
    private boolean passes(Element element) {
        boolean passes = !element.hasAttributeNS(null, "requiredExtensions");
        passes &= !element.hasAttributeNS(null, "systemLanguage")
                || speaks(element.getAttributeNS(null, "systemLanguage"));
        if (!passes && !isInSwitch(element)) {
            Source source = Elements.source(element);
            notes.info(source, "its requiredExtensions or systemLanguage do not hold here; it is left out");
        }
        element.removeAttributeNS(null, "requiredFeatures");
        return passes;
    }

    private static boolean isInSwitch(Element element) {
        return Elements.isSvg(element.getParentNode(), "switch");
    }

    private static boolean speaks(String languages) {
        return List.of(languages.toLowerCase(Locale.ROOT).split("[\\s,]+", -1)).stream()
                .anyMatch(language -> language.equals(LANGUAGE) || language.startsWith(LANGUAGE + "-"));
    }

    /** Batik reads {@code xlink:href} only; what leads out of the file is cut off. */
    private void mendLink(Element element) {
        String href = Elements.href(element);
        element.removeAttributeNS(null, "href");
        if (href.isEmpty()) {
            return;
        }
        if (Elements.isSvg(element, "a")) {
            element.removeAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "href");
            return;
        }
        boolean embedded = href.toLowerCase(Locale.ROOT).startsWith("data:");
        if (href.startsWith("#") ? references.withId(href.substring(1)) != null : embedded) {
            element.setAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "xlink:href", href);
            return;
        }
        element.removeAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "href");
        String shown = Declaration.shortened(href);
        notes.warning(
                Elements.source(element),
                href.startsWith("#")
                        ? "it refers to '" + shown + "', which is not in the file"
                        : "it refers to '" + shown + "', which lies outside the file and is not read");
    }
}
