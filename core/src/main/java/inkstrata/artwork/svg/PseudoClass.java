package inkstrata.artwork.svg;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A pseudo-class of a selector, as far as a drawing on paper can have it; what needs a pointer or a visitor never holds.
 *
 * @param specificity as in {@link Selector}
 */
record PseudoClass(Predicate<Element> test, int specificity) {
    private static final int CLASS = 1000;
    private static final Set<String> OF_SCREENS = Set.of(
            "hover",
            "active",
            "focus",
            "focus-within",
            "focus-visible",
            "visited",
            "target",
            "checked",
            "enabled",
            "disabled",
            "fullscreen");
    private static final Pattern NTH = Pattern.compile("([+-]?\\d*)n\\s*(?:([+-])\\s*(\\d+))?|([+-]?\\d+)");

    /** Empty if the name or its arguments are not understood. */
    static Optional<PseudoClass> parse(String name, String arguments) {
        if (OF_SCREENS.contains(name)) {
            return Optional.of(new PseudoClass(element -> false, CLASS));
        }
        return switch (name) {
            case "root" -> simple(element -> !(element.getParentNode() instanceof Element));
            case "empty" -> simple(PseudoClass::isEmpty);
            case "link", "any-link" ->
                simple(element ->
                        Elements.isSvg(element, "a") && !Elements.href(element).isEmpty());
            case "first-child" -> simple(element -> position(element, false, false) == 1);
            case "last-child" -> simple(element -> position(element, true, false) == 1);
            case "only-child" ->
                simple(element -> position(element, false, false) == 1 && position(element, true, false) == 1);
            case "first-of-type" -> simple(element -> position(element, false, true) == 1);
            case "last-of-type" -> simple(element -> position(element, true, true) == 1);
            case "only-of-type" ->
                simple(element -> position(element, false, true) == 1 && position(element, true, true) == 1);
            case "nth-child" -> nth(arguments, false, false);
            case "nth-last-child" -> nth(arguments, true, false);
            case "nth-of-type" -> nth(arguments, false, true);
            case "nth-last-of-type" -> nth(arguments, true, true);
            case "not" -> ofList(arguments, false, true);
            case "is", "matches" -> ofList(arguments, true, true);
            case "where" -> ofList(arguments, true, false);
            default -> Optional.empty();
        };
    }

    private static Optional<PseudoClass> simple(Predicate<Element> test) {
        return Optional.of(new PseudoClass(test, CLASS));
    }

    private static Optional<PseudoClass> ofList(String arguments, boolean wanted, boolean counts) {
        return SelectorParsing.list(arguments)
                .map(selectors -> new PseudoClass(
                        element -> selectors.stream().anyMatch(selector -> selector.matches(element)) == wanted,
                        counts ? mostSpecific(selectors) : 0));
    }

    private static int mostSpecific(List<Selector> selectors) {
        return selectors.stream().mapToInt(Selector::specificity).max().orElse(0);
    }

    /** {@code an+b} (CSS Syntax 3, section 6). */
    private static Optional<PseudoClass> nth(String arguments, boolean fromEnd, boolean ofType) {
        String formula = switch (arguments) {
            case "odd" -> "2n+1";
            case "even" -> "2n";
            default -> arguments;
        };
        Matcher matcher = NTH.matcher(formula);
        if (!matcher.matches() || formula.length() > 12) {
            return Optional.empty();
        }
        int step = 0;
        int first;
        if (matcher.group(4) != null) {
            first = Integer.parseInt(matcher.group(4));
        } else {
            String sign = matcher.group(1);
            step = sign.isEmpty() || sign.equals("+") ? 1 : sign.equals("-") ? -1 : Integer.parseInt(sign);
            first = matcher.group(3) == null ? 0 : Integer.parseInt(matcher.group(2) + matcher.group(3));
        }
        int by = step;
        int start = first;
        return simple(element -> isMember(position(element, fromEnd, ofType), by, start));
    }

    private static boolean isMember(int position, int step, int first) {
        int beyond = position - first;
        return step == 0 ? beyond == 0 : beyond % step == 0 && beyond / step >= 0;
    }

    private static int position(Element element, boolean fromEnd, boolean ofType) {
        int position = 1;
        Node at = fromEnd ? element.getNextSibling() : element.getPreviousSibling();
        while (at != null) {
            boolean counts = at.getNodeType() == Node.ELEMENT_NODE
                    && (!ofType || element.getLocalName().equals(at.getLocalName()));
            position += counts ? 1 : 0;
            at = fromEnd ? at.getNextSibling() : at.getPreviousSibling();
        }
        return position;
    }

    private static boolean isEmpty(Element element) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeType() == Node.ELEMENT_NODE
                    || (child.getNodeType() == Node.TEXT_NODE
                            && !child.getNodeValue().isEmpty())) {
                return false;
            }
        }
        return true;
    }
}
