package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;

/**
 * Follows every reference between elements once, before anything is drawn: cuts those that close a ring and counts how
 * many elements would be drawn in all.
 *
 * <p>The count of an element is one, plus the counts of its children and of what it refers to; each is found once, so the
 * time grows with the size of the file, not with what it would unfold to.
 */
final class ReferenceGraph {
    private static final List<String> STYLE_REFERENCES =
            List.of("clip-path", "mask", "fill", "stroke", "marker-start", "marker-mid", "marker-end");

    private final String fileName;
    private final Notes notes;
    private final LocalReferences references;
    private final IdentityHashMap<Element, Long> drawn = new IdentityHashMap<>();
    private final IdentityHashMap<Element, Integer> height = new IdentityHashMap<>();
    private final Set<Element> open = Collections.newSetFromMap(new IdentityHashMap<>());

    private ReferenceGraph(String fileName, LocalReferences references, Notes notes) {
        this.fileName = fileName;
        this.references = references;
        this.notes = notes;
    }

    /**
     * Checks the drawing.
     *
     * @throws ArtworkException if following all references would draw more than {@link Limits#DRAWN_ELEMENTS} elements, or
     *     nest deeper than {@link Limits#DEPTH}
     */
    static void check(String fileName, SVGOMDocument document, LocalReferences references, Notes notes) {
        new ReferenceGraph(fileName, references, notes).visit(document.getDocumentElement(), 0);
    }

    private void visit(Element element, int depth) {
        if (depth > 2 * Limits.DEPTH) {
            throw tooDeep(element);
        }
        open.add(element);
        long count = 1;
        int below = 0;
        for (Element target : referredTo(element)) {
            if (open.contains(target)) {
                cut(element, target);
                continue;
            }
            follow(target, depth);
            count += drawn.get(target);
            below = Math.max(below, height.get(target));
        }
        for (Element child = Elements.firstChild(element); child != null; child = Elements.nextSibling(child)) {
            follow(child, depth);
            count += drawn.get(child);
            below = Math.max(below, height.get(child));
        }
        open.remove(element);
        if (count > Limits.DRAWN_ELEMENTS) {
            throw new ArtworkException(
                    fileName,
                    Elements.source(element),
                    "its copies and references unfold to more than " + Limits.DRAWN_ELEMENTS + " elements.",
                    "Use fewer copies inside copies, or merge the shapes that are copied.");
        }
        if (below + 1 > 2 * Limits.DEPTH) {
            throw tooDeep(element);
        }
        drawn.put(element, count);
        height.put(element, below + 1);
    }

    private void follow(Element target, int depth) {
        if (!drawn.containsKey(target)) {
            visit(target, depth + 1);
        }
    }

    private ArtworkException tooDeep(Element element) {
        return new ArtworkException(
                fileName,
                Elements.source(element),
                "elements refer to one another more than " + 2 * Limits.DEPTH + " deep.",
                "Replace copies of copies by plain shapes.");
    }

    private Set<Element> referredTo(Element element) {
        Set<Element> targets = new LinkedHashSet<>();
        String href = element.getAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "href");
        if (href.startsWith("#")) {
            addTo(targets, references.withId(href.substring(1)));
        }
        String style = element.getAttributeNS(null, "style");
        if (style.contains("url(")) {
            for (Declaration declaration : Declaration.list(style, fault -> {})) {
                if (STYLE_REFERENCES.contains(declaration.property())) {
                    addTo(targets, references.target(declaration.value()));
                }
            }
        }
        return targets;
    }

    private static void addTo(Set<Element> targets, Element target) {
        if (target != null) {
            targets.add(target);
        }
    }

    /** Takes out every reference from an element to one that it lies in. */
    private void cut(Element element, Element target) {
        String id = target.getAttributeNS(null, "id");
        notes.warning(
                Elements.source(element), "it refers to '#" + id + "', which leads back to it; that was left out");
        if (element.getAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "href").equals("#" + id)) {
            element.removeAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "href");
        }
        List<String> kept = new ArrayList<>();
        for (Declaration declaration : Declaration.list(element.getAttributeNS(null, "style"), fault -> {})) {
            boolean leadsBack = STYLE_REFERENCES.contains(declaration.property())
                    && references.target(declaration.value()) == target;
            kept.add(declaration.property() + ":" + (leadsBack ? "none" : declaration.value()));
        }
        if (!kept.isEmpty()) {
            element.setAttributeNS(null, "style", String.join(";", kept));
        }
    }
}
