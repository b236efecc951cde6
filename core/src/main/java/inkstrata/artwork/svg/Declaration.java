package inkstrata.artwork.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * {@code property: value !important}.
 *
 * @param property in small letters, unless it is a custom one ({@code --name})
 */
record Declaration(String property, String value, boolean important) {
    private static final Pattern IMPORTANT =
            Pattern.compile("(.*)!\\s*important", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    /**
     * The declarations between two braces, or of a {@code style} attribute.
     *
     * @param fault told what is no declaration
     */
    static List<Declaration> list(String css, Consumer<String> fault) {
        List<Declaration> declarations = new ArrayList<>();
        for (String text : CssText.split(CssText.withoutComments(css), ';')) {
            int colon = text.indexOf(':');
            if (text.isEmpty()) {
                continue;
            }
            if (colon <= 0 || text.indexOf('{') >= 0) {
                fault.accept("'" + shortened(text) + "' is not a style declaration and was left out");
                continue;
            }
            String name = CssText.unescaped(text.substring(0, colon).trim());
            Matcher matcher = IMPORTANT.matcher(text.substring(colon + 1));
            boolean important = matcher.matches();
            String value = important ? matcher.group(1) : text.substring(colon + 1);
            declarations.add(new Declaration(
                    name.startsWith("--") ? name : name.toLowerCase(Locale.ROOT), value.trim(), important));
        }
        return declarations;
    }

    static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ").trim();
        return line.length() <= 60 ? line : line.substring(0, 57) + "...";
    }
}
