package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the style sheets of a drawing, one after the other, into rules; what it cannot use it says. */
final class StyleSheet {
    private final String fileName;
    private final Notes notes;
    private final List<StyleRule> rules = new ArrayList<>();

    StyleSheet(String fileName, Notes notes) {
        this.fileName = fileName;
        this.notes = notes;
    }

    /** All rules so far, in order. */
    List<StyleRule> rules() {
        return rules;
    }

    /**
     * Adds the rules of one sheet.
     *
     * @param source the {@code style} element
     */
    void add(String sheet, Source source) {
        String css = CssText.withoutComments(sheet).replace("<!--", " ").replace("-->", " ");
        int at = 0;
        while (at < css.length()) {
            char c = css.charAt(at);
            if (Character.isWhitespace(c) || c == '}' || c == ';') {
                at++;
                continue;
            }
            int open = CssText.find(css, at, c == '@' ? "{;" : "{");
            boolean block = open < css.length() && css.charAt(open) == '{';
            int end = block ? CssText.find(css, open + 1, "}") : open;
            String head = css.substring(at, open).trim();
            String body = block ? css.substring(open + 1, end) : "";
            if (c == '@') {
                atRule(head, body, source);
            } else if (block) {
                rule(head, body, source);
            } else {
                notes.warning(source, "'" + Declaration.shortened(head) + "' is not a style rule and was left out");
            }
            at = end + 1;
        }
    }

    private void rule(String head, String body, Source source) {
        Optional<List<Selector>> selectors = SelectorParsing.list(head);
        if (selectors.isEmpty()) {
            notes.warning(
                    source,
                    "the selector '" + Declaration.shortened(head) + "' is not understood; its rule was left out");
            return;
        }
        List<Declaration> declarations = Declaration.list(body, fault -> notes.warning(source, fault));
        for (Selector selector : selectors.get()) {
            if (rules.size() == Limits.STYLE_RULES) {
                throw new ArtworkException(
                        fileName,
                        source,
                        "the style sheets have more than " + Limits.STYLE_RULES + " rules.",
                        "Save the drawing with styles as attributes.");
            }
            rules.add(new StyleRule(selector, declarations, rules.size()));
        }
    }

    private void atRule(String head, String body, Source source) {
        String[] words = head.split("\\s+", 2);
        String condition = words.length > 1 ? words[1].trim() : "";
        switch (words[0].toLowerCase(Locale.ROOT)) {
            case "@media" -> {
                if (mediaMatches(condition, source)) {
                    add(body, source);
                }
            }
            case "@import" ->
                notes.warning(
                        source, "the style sheet outside the file is not read; copy its rules into a <style> element");
            case "@font-face" ->
                notes.warning(
                        source,
                        "fonts in or outside the file are not loaded; turn text into outlines to keep its look");
            case "@charset", "@namespace", "@page" -> {
                // nothing that a drawing on a sheet shows
            }
            default -> notes.warning(source, words[0] + " is not followed; its rules were left out");
        }
    }

    /** The sheet is looked at as on a screen by daylight: what the artist saw. */
    boolean mediaMatches(String query, Source source) {
        if (query.isBlank()) {
            return true;
        }
        boolean any = false;
        for (String one : CssText.split(query.toLowerCase(Locale.ROOT), ',')) {
            if (one.equals("all") || one.equals("screen") || one.equals("only screen")) {
                any = true;
            } else if (!one.equals("print") && !one.contains("prefers-color-scheme: dark")) {
                notes.warning(
                        source, "the media query '" + Declaration.shortened(one) + "' was taken as not fulfilled");
            }
        }
        return any;
    }
}
