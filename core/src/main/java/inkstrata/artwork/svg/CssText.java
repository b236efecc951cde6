package inkstrata.artwork.svg;

import java.util.ArrayList;
import java.util.List;

/** Cuts CSS text where brackets, strings and escapes allow it (CSS Syntax 3), without saying what the pieces mean. */
final class CssText {
    private CssText() {}

    /** Without comments; each leaves a blank. */
    static String withoutComments(String css) {
        if (!css.contains("/*")) {
            return css;
        }
        StringBuilder kept = new StringBuilder(css.length());
        int at = 0;
        while (at < css.length()) {
            char c = css.charAt(at);
            if (css.startsWith("/*", at)) {
                int end = css.indexOf("*/", at + 2);
                kept.append(' ');
                at = end < 0 ? css.length() : end + 2;
            } else {
                int next = c == '"' || c == '\'' ? afterString(css, at) : at + 1;
                kept.append(css, at, next);
                at = next;
            }
        }
        return kept.toString();
    }

    /**
     * Where one of the given characters comes next, outside strings and brackets; the text's length if it does not.
     *
     * @param from where to begin, itself outside
     */
    static int find(String css, int from, String wanted) {
        int at = from;
        int depth = 0;
        while (at < css.length()) {
            char c = css.charAt(at);
            if (depth == 0 && wanted.indexOf(c) >= 0) {
                return at;
            }
            switch (c) {
                case '"', '\'' -> at = afterString(css, at);
                case '\\' -> at += 2;
                case '(', '[', '{' -> {
                    depth++;
                    at = isUrl(css, at) ? Math.max(at + 1, css.indexOf(')', at)) : at + 1;
                }
                case ')', ']', '}' -> {
                    depth = Math.max(0, depth - 1);
                    at++;
                }
                default -> at++;
            }
        }
        return css.length();
    }

    /** Cut at every one of the given character outside strings and brackets; pieces are trimmed. */
    static List<String> split(String css, char at) {
        List<String> pieces = new ArrayList<>();
        int from = 0;
        while (from <= css.length()) {
            int end = find(css, from, String.valueOf(at));
            pieces.add(css.substring(from, end).trim());
            from = end + 1;
        }
        return pieces;
    }

    /** Cut at blanks outside strings and brackets. */
    static List<String> words(String css) {
        List<String> words = new ArrayList<>();
        int from = 0;
        while (from < css.length()) {
            int end = find(css, from, " \t\r\n\f");
            if (end > from) {
                words.add(css.substring(from, end));
            }
            from = end + 1;
        }
        return words;
    }

    /** The text between a function's brackets if the whole text is one call of it; otherwise null. */
    static String argumentsOf(String function, String css) {
        String text = css.trim();
        boolean called = text.regionMatches(true, 0, function + "(", 0, function.length() + 1) && text.endsWith(")");
        if (!called || find(text, function.length() + 1, ")") != text.length() - 1) {
            return null;
        }
        return text.substring(function.length() + 1, text.length() - 1).trim();
    }

    /** Escapes replaced by what they stand for. */
    static String unescaped(String css) {
        if (css.indexOf('\\') < 0) {
            return css;
        }
        StringBuilder plain = new StringBuilder();
        int at = 0;
        while (at < css.length()) {
            char c = css.charAt(at++);
            if (c != '\\' || at == css.length()) {
                plain.append(c);
                continue;
            }
            int end = at;
            while (end < css.length() && end < at + 6 && Character.digit(css.charAt(end), 16) >= 0) {
                end++;
            }
            if (end == at) {
                plain.append(css.charAt(at++));
            } else {
                int point = Integer.parseInt(css.substring(at, end), 16);
                plain.appendCodePoint(Character.isValidCodePoint(point) && point != 0 ? point : 0xfffd);
                at = end < css.length() && Character.isWhitespace(css.charAt(end)) ? end + 1 : end;
            }
        }
        return plain.toString();
    }

    private static boolean isUrl(String css, int bracket) {
        if (bracket < 3 || !css.regionMatches(true, bracket - 3, "url", 0, 3)) {
            return false;
        }
        int inside = bracket + 1;
        while (inside < css.length() && Character.isWhitespace(css.charAt(inside))) {
            inside++;
        }
        return inside < css.length() && css.charAt(inside) != '"' && css.charAt(inside) != '\'';
    }

    private static int afterString(String css, int quote) {
        int at = quote + 1;
        while (at < css.length() && css.charAt(at) != css.charAt(quote)) {
            at += css.charAt(at) == '\\' ? 2 : 1;
        }
        return Math.min(css.length(), at + 1);
    }
}
