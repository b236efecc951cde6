package inkstrata.artwork.svg;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Function;
import org.apache.batik.css.engine.CSSEngine;
import org.apache.batik.css.engine.CSSStylableElement;
import org.w3c.dom.Element;

/** Whose fill and stroke {@code context-fill} and {@code context-stroke} mean (SVG 2, section 13.2). */
final class ContextPaints {
    /** Ids of the stand-ins by which Batik's styles carry and inherit these words; the word itself follows. */
    static final String STAND_IN = "inkstrata-";

    static final String FILL = "context-fill";
    static final String STROKE = "context-stroke";

    private final Deque<Element> marked = new ArrayDeque<>();

    /** Draws the markers of a shape. */
    void onMarkersOf(Element shape, Runnable drawing) {
        marked.push(shape);
        try {
            drawing.run();
        } finally {
            marked.pop();
        }
    }

    /**
     * Asks something about the context element of an element: the {@code use} it is a copy of, or the shape it marks.
     *
     * @return empty without a context element; nothing is painted then
     */
    <T> Optional<T> ask(Element element, Function<Element, Optional<T>> question) {
        if (element instanceof CSSStylableElement stylable) {
            CSSStylableElement at = CSSEngine.getParentCSSStylableElement(stylable);
            while (at != null) {
                if (Elements.isSvg(at, "use")) {
                    return question.apply(at);
                }
                at = CSSEngine.getParentCSSStylableElement(at);
            }
        }
        if (marked.isEmpty()) {
            return Optional.empty();
        }
        // The shape's own context, if it needs one, is what lies around it.
        Element shape = marked.pop();
        try {
            return question.apply(shape);
        } finally {
            marked.push(shape);
        }
    }
}
