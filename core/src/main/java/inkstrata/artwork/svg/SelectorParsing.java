package inkstrata.artwork.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.w3c.dom.Element;

/** Reads one complex selector of a style sheet, sign by sign. */
final class SelectorParsing {
    private final String text;
    private int at;
    private int specificity;

    private SelectorParsing(String text) {
        this.text = text;
    }

    /** The selectors of a list, or empty if any of them is not understood (the whole rule is then dropped, as CSS says). */
    static Optional<List<Selector>> list(String text) {
        List<Selector> selectors = new ArrayList<>();
        for (String one : CssText.split(text, ',')) {
            Optional<Selector> selector = new SelectorParsing(one).selector();
            if (selector.isEmpty()) {
                return Optional.empty();
            }
            selectors.add(selector.get());
        }
        return Optional.of(selectors);
    }

    private Optional<Selector> selector() {
        List<Predicate<Element>> compounds = new ArrayList<>();
        StringBuilder combinators = new StringBuilder();
        while (true) {
            Optional<Predicate<Element>> compound = compound();
            if (compound.isEmpty()) {
                return Optional.empty();
            }
            compounds.add(compound.get());
            if (at == text.length()) {
                return Optional.of(new Selector(List.copyOf(compounds), combinators.toString(), specificity));
            }
            combinators.append(combinator());
        }
    }

    private char combinator() {
        skipBlanks();
        if (at < text.length() && ">+~".indexOf(text.charAt(at)) >= 0) {
            char sign = text.charAt(at++);
            skipBlanks();
            return sign;
        }
        return ' ';
    }

    private Optional<Predicate<Element>> compound() {
        int start = at;
        Predicate<Element> all = element -> true;
        if (at < text.length() && (text.charAt(at) == '*' || text.charAt(at) == '|' || isName(text.charAt(at)))) {
            all = type();
        }
        while (at < text.length() && "#.[:".indexOf(text.charAt(at)) >= 0) {
            Optional<Predicate<Element>> simple = simple();
            if (simple.isEmpty()) {
                return Optional.empty();
            }
            all = all.and(simple.get());
        }
        return at == start ? Optional.empty() : Optional.of(all);
    }

    /** A type, with its namespace prefix left aside. */
    private Predicate<Element> type() {
        String name = nameOrStar();
        if (at < text.length() && text.charAt(at) == '|') {
            at++;
            name = nameOrStar();
        }
        if (name.equals("*")) {
            return element -> true;
        }
        specificity += 1;
        String local = name;
        return element -> local.equals(element.getLocalName());
    }

    private Optional<Predicate<Element>> simple() {
        char sign = text.charAt(at++);
        if (sign == '[') {
            int end = CssText.find(text, at, "]");
            String inside = text.substring(at, Math.min(end, text.length()));
            at = Math.min(text.length(), end + 1);
            specificity += 1000;
            return AttributeSelector.parse(inside);
        }
        if (sign == ':') {
            return pseudo();
        }
        String name = name();
        if (name.isEmpty()) {
            return Optional.empty();
        }
        if (sign == '#') {
            specificity += 1_000_000;
            return Optional.of(element -> name.equals(element.getAttributeNS(null, "id")));
        }
        specificity += 1000;
        return Optional.of(element -> AttributeSelector.hasWord(element.getAttributeNS(null, "class"), name));
    }

    private Optional<Predicate<Element>> pseudo() {
        if (at < text.length() && text.charAt(at) == ':') {
            at++;
            specificity += 1;
            String name = name();
            if (at < text.length() && text.charAt(at) == '(') {
                at = Math.min(text.length(), CssText.find(text, at + 1, ")") + 1);
            }
            return name.isEmpty() ? Optional.empty() : Optional.of(element -> false);
        }
        String name = name().toLowerCase(Locale.ROOT);
        String arguments = "";
        if (at < text.length() && text.charAt(at) == '(') {
            int end = CssText.find(text, at + 1, ")");
            if (end == text.length()) {
                return Optional.empty();
            }
            arguments = text.substring(at + 1, end).trim();
            at = end + 1;
        }
        Optional<PseudoClass> pseudo = PseudoClass.parse(name, arguments);
        pseudo.ifPresent(p -> specificity += p.specificity());
        return pseudo.map(PseudoClass::test);
    }

    private String nameOrStar() {
        if (at < text.length() && text.charAt(at) == '*') {
            at++;
            return "*";
        }
        return name();
    }

    private String name() {
        int start = at;
        while (at < text.length() && isName(text.charAt(at))) {
            if (text.charAt(at) == '\\') {
                at = afterEscape(at);
            } else {
                at++;
            }
        }
        return CssText.unescaped(text.substring(start, at));
    }

    private int afterEscape(int backslash) {
        int end = backslash + 1;
        while (end < text.length() && end < backslash + 7 && Character.digit(text.charAt(end), 16) >= 0) {
            end++;
        }
        if (end == backslash + 1) {
            return Math.min(text.length(), end + 1);
        }
        return end < text.length() && text.charAt(end) == ' ' ? end + 1 : end;
    }

    private static boolean isName(char c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '_' || c == '\\' || c >= 0x80;
    }

    private void skipBlanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }
}
