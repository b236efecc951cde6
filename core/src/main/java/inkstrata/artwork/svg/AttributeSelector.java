package inkstrata.artwork.svg;

import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/** What stands between square brackets in a selector (Selectors 4, section 6). */
final class AttributeSelector {
    private static final Pattern INSIDE = Pattern.compile("\\s*(?:(?:[\\w-]*|\\*)\\|)?([\\w-]+)\\s*"
            + "(?:([~|^$*]?=)\\s*(\"(?:[^\"\\\\]|\\\\.)*\"|'(?:[^'\\\\]|\\\\.)*'|[^\\s\"']+)\\s*([iIsS]?)\\s*)?");

    private AttributeSelector() {}

    static Optional<Predicate<Element>> parse(String inside) {
        Matcher matcher = INSIDE.matcher(inside);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String name = matcher.group(1);
        if (matcher.group(2) == null) {
            return Optional.of(element -> value(element, name) != null);
        }
        String quoted = matcher.group(3);
        boolean quotes = quoted.charAt(0) == '"' || quoted.charAt(0) == '\'';
        String wanted = CssText.unescaped(quotes ? quoted.substring(1, quoted.length() - 1) : quoted);
        boolean anyCase = matcher.group(4).equalsIgnoreCase("i");
        BiPredicate<String, String> comparison = comparison(matcher.group(2));
        String folded = anyCase ? wanted.toLowerCase(Locale.ROOT) : wanted;
        return Optional.of(element -> {
            String value = value(element, name);
            return value != null && comparison.test(anyCase ? value.toLowerCase(Locale.ROOT) : value, folded);
        });
    }

    private static BiPredicate<String, String> comparison(String sign) {
        return switch (sign) {
            case "~=" -> AttributeSelector::hasWord;
            case "|=" -> (value, wanted) -> value.equals(wanted) || value.startsWith(wanted + "-");
            case "^=" -> (value, wanted) -> !wanted.isEmpty() && value.startsWith(wanted);
            case "$=" -> (value, wanted) -> !wanted.isEmpty() && value.endsWith(wanted);
            case "*=" -> (value, wanted) -> !wanted.isEmpty() && value.contains(wanted);
            default -> String::equals;
        };
    }

    /** Whether one of the words between blanks is this one. */
    static boolean hasWord(String words, String wanted) {
        int from = words.indexOf(wanted);
        while (from >= 0 && !wanted.isEmpty()) {
            int end = from + wanted.length();
            boolean starts = from == 0 || Character.isWhitespace(words.charAt(from - 1));
            boolean ends = end == words.length() || Character.isWhitespace(words.charAt(end));
            if (starts && ends) {
                return true;
            }
            from = words.indexOf(wanted, from + 1);
        }
        return false;
    }

    /** Of the attribute without a prefix, else of the first with any prefix; null if there is none. */
    private static String value(Element element, String name) {
        if (element.hasAttributeNS(null, name)) {
            return element.getAttributeNS(null, name);
        }
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            if (name.equals(attribute.getLocalName()) && !Elements.OWN.equals(attribute.getNamespaceURI())) {
                return attribute.getValue();
            }
        }
        return null;
    }
}
