package inkstrata.positive.page;

/** Strangers' words made safe for XML 1.0: markup escaped, characters it does not allow replaced by U+FFFD. */
public final class XmlText {
    private XmlText() {}

    public static String escaped(String words) {
        StringBuilder text = new StringBuilder();
        words.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                default -> text.appendCodePoint(allowed(c) ? c : 0xFFFD);
            }
        });
        return text.toString();
    }

    /** The production Char of XML 1.0, fifth edition, section 2.2. */
    private static boolean allowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
