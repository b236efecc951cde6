package inkstrata.artwork.svg;

import java.util.List;
import java.util.function.Predicate;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * One selector of a style sheet (Selectors 4): compounds joined by combinators, the last of which is the element's own.
 *
 * @param compounds from left to right
 * @param combinators the sign before each compound but the first: blank, {@code >}, {@code +} or {@code ~}
 * @param specificity ids, classes, types: a million, a thousand and one each
 */
record Selector(List<Predicate<Element>> compounds, String combinators, int specificity) {
    boolean matches(Element element) {
        return compounds.get(compounds.size() - 1).test(element) && matchesLeftOf(element, compounds.size() - 1);
    }

    private boolean matchesLeftOf(Element element, int compound) {
        if (compound == 0) {
            return true;
        }
        Predicate<Element> left = compounds.get(compound - 1);
        char combinator = combinators.charAt(compound - 1);
        boolean manySteps = combinator == ' ' || combinator == '~';
        Element at = step(element, combinator);
        while (at != null) {
            if (left.test(at) && matchesLeftOf(at, compound - 1)) {
                return true;
            }
            at = manySteps ? step(at, combinator) : null;
        }
        return false;
    }

    private static Element step(Element from, char combinator) {
        if (combinator == ' ' || combinator == '>') {
            return from.getParentNode() instanceof Element parent ? parent : null;
        }
        Node at = from.getPreviousSibling();
        while (at != null && at.getNodeType() != Node.ELEMENT_NODE) {
            at = at.getPreviousSibling();
        }
        return (Element) at;
    }
}
