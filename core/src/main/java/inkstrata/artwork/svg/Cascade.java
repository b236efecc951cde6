package inkstrata.artwork.svg;

import inkstrata.artwork.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.css.engine.CSSStylableElement;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/**
 * Decides for every element which declarations hold (CSS Cascade 4, section 6; SVG 2, section 6.6 for presentation
 * attributes). {@link StyleWriting} writes them down; inheriting is left to Batik.
 */
final class Cascade {
    /** The one stays an attribute; the other is a shorthand, and those are none (SVG 2, section 6.6). */
    private static final Set<String> NO_ATTRIBUTES = Set.of("transform", "marker");

    private static final String CSS = "text/css";

    /** Properties that cannot change what is printed. */
    private static final Set<String> NOT_ON_PAPER = Set.of(
            "cursor",
            "pointer-events",
            "enable-background",
            "color-rendering",
            "shape-rendering",
            "text-rendering",
            "image-rendering",
            "color-interpolation",
            "color-interpolation-filters",
            "color-profile",
            "will-change",
            "user-select",
            "outline",
            "transition",
            "solid-color",
            "solid-opacity",
            "buffered-rendering",
            "touch-action",
            "viewport-fill",
            "viewport-fill-opacity",
            "audio-level",
            "display-align",
            "line-height",
            "text-indent",
            "text-align",
            "block-progression",
            "shape-margin",
            "shape-padding");

    private final Notes notes;
    private final ValueMending values;
    private final RulesByWeight rules;
    private final List<Styled> results = new ArrayList<>();

    private Cascade(Notes notes, ValueMending values, RulesByWeight rules) {
        this.notes = notes;
        this.values = values;
        this.rules = rules;
    }

    /** Applies all style sheets of the drawing and takes them out. */
    static void apply(String fileName, SVGOMDocument document, LocalReferences references, Notes notes) {
        Element root = document.getDocumentElement();
        StyleSheet sheet = new StyleSheet(fileName, notes);
        List<Element> styleElements = new ArrayList<>();
        gather(root, styleElements);
        for (Element style : styleElements) {
            String type = style.getAttributeNS(null, "type").trim();
            Source source = Elements.source(style);
            if (!type.isEmpty() && !type.equalsIgnoreCase(CSS)) {
                notes.warning(source, "a style sheet of type '" + type + "' is not read");
            } else if (sheet.mediaMatches(style.getAttributeNS(null, "media"), source)) {
                sheet.add(style.getTextContent(), source);
            }
        }
        Cascade cascade = new Cascade(notes, new ValueMending(document, references), new RulesByWeight(sheet.rules()));
        cascade.decide(root, CustomProperties.NONE);
        new StyleWriting(notes).write(root, cascade.results);
        styleElements.forEach(style -> style.getParentNode().removeChild(style));
    }

    private static void gather(Element element, List<Element> styleElements) {
        if (Elements.isSvg(element, "style")) {
            styleElements.add(element);
        }
        for (Element child = Elements.firstChild(element); child != null; child = Elements.nextSibling(child)) {
            gather(child, styleElements);
        }
    }

    private void decide(Element element, CustomProperties inherited) {
        CustomProperties custom = inherited;
        if (Elements.isSvg(element) && element instanceof CSSStylableElement) {
            List<Declaration> declarations = byWeight(element);
            custom = inherited.with(customOf(declarations));
            Map<String, Mended> decided = presentationAttributes(element);
            for (Declaration declaration : declarations) {
                put(decided, element, declaration, custom);
            }
            if (!decided.isEmpty() || element.hasAttributeNS(null, "style")) {
                results.add(new Styled(element, decided));
            }
        }
        for (Element child = Elements.firstChild(element); child != null; child = Elements.nextSibling(child)) {
            decide(child, custom);
        }
    }

    /** Declarations of sheets and of the element itself, weakest first. */
    private List<Declaration> byWeight(Element element) {
        List<Declaration> ofSheets = rules.declarationsFor(element);
        String style = element.getAttributeNS(null, "style");
        List<Declaration> own = style.isBlank()
                ? List.of()
                : Declaration.list(style, fault -> notes.warning(Elements.source(element), fault));
        List<Declaration> ordered = new ArrayList<>();
        for (boolean important : new boolean[] {false, true}) {
            ofSheets.stream().filter(d -> d.important() == important).forEach(ordered::add);
            own.stream().filter(d -> d.important() == important).forEach(ordered::add);
        }
        return ordered;
    }

    private static Map<String, String> customOf(List<Declaration> declarations) {
        Map<String, String> custom = new LinkedHashMap<>();
        for (Declaration declaration : declarations) {
            if (declaration.property().startsWith("--")) {
                custom.put(declaration.property(), declaration.value());
            }
        }
        return custom;
    }

    private Map<String, Mended> presentationAttributes(Element element) {
        Map<String, Mended> decided = new LinkedHashMap<>();
        NamedNodeMap attributes = element.getAttributes();
        List<String> taken = new ArrayList<>();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            String name = attribute.getName();
            boolean plain = attribute.getNamespaceURI() == null && !NO_ATTRIBUTES.contains(name);
            boolean property =
                    ValueMending.AS_ATTRIBUTES.contains(name) || TextProperties.has(name) || values.isBatiks(name);
            if (plain && property) {
                taken.add(name);
            }
        }
        taken.sort(null);
        element.removeAttributeNS(null, "marker");
        for (String name : taken) {
            Declaration declaration = new Declaration(name, element.getAttributeNS(null, name), false);
            put(decided, element, declaration, CustomProperties.NONE);
            element.removeAttributeNS(null, name);
        }
        return decided;
    }

    private void put(Map<String, Mended> decided, Element element, Declaration declaration, CustomProperties custom) {
        String property = declaration.property();
        if (property.startsWith("-") || NOT_ON_PAPER.contains(property)) {
            return;
        }
        if (TextProperties.has(property)) {
            if (TextProperties.shows(element, property, declaration.value())) {
                String given = Declaration.shortened(declaration.value());
                notes.warning(Elements.source(element), "text is drawn without its " + property + " '" + given + "'");
            }
            return;
        }
        if (GeometryProperties.has(property)) {
            custom.resolved(declaration.value())
                    .flatMap(value -> GeometryProperties.attribute(element, property, value))
                    .ifPresent(value -> decided.put(property, Mended.plain(value)));
            return;
        }
        if (!ValueMending.AS_ATTRIBUTES.contains(property) && !values.isBatiks(property)) {
            notes.warning(Elements.source(element), "the property " + property + " is not followed here");
            return;
        }
        Optional<String> value = CustomProperties.hasVar(declaration.value())
                ? custom.resolved(declaration.value())
                : Optional.of(declaration.value());
        Optional<Mended> mended = value.flatMap(text -> values.mend(property, text));
        if (mended.isEmpty()) {
            String given = Declaration.shortened(declaration.value());
            notes.warning(Elements.source(element), property + " '" + given + "' is not understood and was left out");
            if (value.isEmpty()) {
                decided.remove(property);
            }
            return;
        }
        for (String longhand : longhands(property)) {
            decided.remove(longhand);
            decided.put(longhand, mended.get());
        }
    }

    private static List<String> longhands(String property) {
        return property.equals("marker") ? List.of("marker-start", "marker-mid", "marker-end") : List.of(property);
    }
}
