package inkstrata.artwork.svg;

/** Takes numbers, flags and names off a text as SVG writes them: {@code 1-.5.5e3} is three numbers. */
final class NumberScanner {
    private final String text;
    private int at;

    NumberScanner(String text) {
        this.text = text;
    }

    int position() {
        return at;
    }

    boolean atEnd() {
        return at >= text.length();
    }

    /** The next character; 0 at the end. */
    char peek() {
        return atEnd() ? 0 : text.charAt(at);
    }

    void skip() {
        at++;
    }

    void skipSpace() {
        while (!atEnd() && isSpace(text.charAt(at))) {
            at++;
        }
    }

    /** Space, at most one comma, space. */
    void skipSeparator() {
        skipSpace();
        if (peek() == ',') {
            at++;
            skipSpace();
        }
    }

    /** Whether a number comes next, perhaps behind a comma; if so, goes to it. */
    boolean moreNumbers() {
        int before = at;
        skipSeparator();
        char c = peek();
        boolean more = c == '+' || c == '-' || c == '.' || isDigit(c) || (at > before && text.charAt(at - 1) == ',');
        if (!more) {
            skipSpace();
        }
        return more;
    }

    /** Letters, digits and hyphens. */
    String name() {
        int start = at;
        while (!atEnd() && (Character.isLetterOrDigit(peek()) || peek() == '-')) {
            at++;
        }
        return text.substring(start, at);
    }

    /** A unit behind a number: letters or %; empty if there is none. */
    String unit() {
        int start = at;
        while (!atEnd() && (Character.isLetter(peek()) || peek() == '%')) {
            at++;
        }
        return text.substring(start, at);
    }

    /** The flag of an arc: 0 or 1, which may stand right before the next number. */
    boolean flag() throws Mistake {
        skipSeparator();
        char c = peek();
        if (c != '0' && c != '1') {
            throw new Mistake("an arc's flag is 0 or 1");
        }
        at++;
        return c == '1';
    }

    /** A finite number, with the separator before it. */
    double number() throws Mistake {
        skipSeparator();
        int start = at;
        if (peek() == '+' || peek() == '-') {
            at++;
        }
        int digits = skipDigits();
        if (peek() == '.') {
            at++;
            digits += skipDigits();
        }
        if (digits == 0) {
            at = start;
            throw new Mistake("a number is missing");
        }
        skipExponent();
        double number = Double.parseDouble(text.substring(start, at));
        if (!Double.isFinite(number)) {
            throw new Mistake("the number is too large");
        }
        return number;
    }

    /** An e without digits behind it belongs to a unit such as em. */
    private void skipExponent() {
        if (peek() != 'e' && peek() != 'E') {
            return;
        }
        int before = at;
        at++;
        if (peek() == '+' || peek() == '-') {
            at++;
        }
        if (skipDigits() == 0) {
            at = before;
        }
    }

    private int skipDigits() {
        int start = at;
        while (isDigit(peek())) {
            at++;
        }
        return at - start;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
    }

    /** What is written is not what the grammar allows; says in a few words what is missing. */
    static final class Mistake extends Exception {
        private static final long serialVersionUID = 1L;

        Mistake(String what) {
            super(what);
        }
    }
}
