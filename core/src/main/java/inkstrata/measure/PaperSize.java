package inkstrata.measure;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sizes of sheets: by name, upright, or as width and height.
 *
 * <p>A and B series: ISO 216, each half of the one before, rounded down to whole millimetres. RA and SRA: ISO 217 (from
 * memory). ANSI A to E: ANSI/ASME Y14.1 (from memory).
 */
public final class PaperSize {
    private static final Pattern TWO_LENGTHS = Pattern.compile(
            "\\s*([0-9.eE+-]+)\\s*([A-Za-z]*)\\s*[x×]\\s*([0-9.eE+-]+)\\s*([A-Za-z]+)\\s*", Pattern.UNICODE_CASE);
    private static final Pattern NAME =
            Pattern.compile("\\s*((?:ANSI\\s+)?[A-Z]+[0-9]*)(\\s+landscape)?\\s*", Pattern.CASE_INSENSITIVE);
    private static final Map<String, Size> NAMED = named();

    private PaperSize() {}

    /**
     * Reads {@code 500 x 700 mm}, {@code 50 cm x 70 cm}, {@code A3} or {@code A3 landscape}.
     *
     * @throws IllegalArgumentException if it is none of these
     */
    public static Size parse(String text) {
        Matcher lengths = TWO_LENGTHS.matcher(text);
        if (lengths.matches()) {
            String unit = lengths.group(2).isEmpty() ? lengths.group(4) : lengths.group(2);
            double width = Length.parse(lengths.group(1) + unit).millimetres();
            double height = Length.parse(lengths.group(3) + lengths.group(4)).millimetres();
            if (!(width > 0 && height > 0)) {
                throw new IllegalArgumentException("'" + text + "' must be more than 0 both ways.");
            }
            return new Size(width, height);
        }
        Matcher name = NAME.matcher(text);
        Size size = name.matches()
                ? NAMED.get(name.group(1).toUpperCase(Locale.ROOT).replaceAll("\\s+", " "))
                : null;
        if (size == null) {
            throw new IllegalArgumentException(
                    "'" + text
                            + "' is not a size. Write width x height with a unit, for example 500 x 700 mm, or a paper size such as A3.");
        }
        return name.group(2) == null ? size : size.turned();
    }

    private static Map<String, Size> named() {
        Map<String, Size> named = new LinkedHashMap<>();
        halve(named, "A", 841, 1189, 10);
        halve(named, "B", 1000, 1414, 10);
        put(named, "RA", 860, 1220, 610, 860, 430, 610, 305, 430, 215, 305);
        put(named, "SRA", 900, 1280, 640, 900, 450, 640, 320, 450, 225, 320);
        double width = 8.5;
        double height = 11;
        for (char letter = 'A'; letter <= 'E'; letter++) {
            named.put("ANSI " + letter, new Size(width * 25.4, height * 25.4));
            double shorter = width;
            width = height;
            height = 2 * shorter;
        }
        return named;
    }

    private static void halve(Map<String, Size> named, String series, int width, int height, int last) {
        int w = width;
        int h = height;
        for (int i = 0; i <= last; i++) {
            named.put(series + i, new Size(w, h));
            int half = h / 2;
            h = w;
            w = half;
        }
    }

    private static void put(Map<String, Size> named, String series, int... sizes) {
        for (int i = 0; i < sizes.length; i += 2) {
            named.put(series + i / 2, new Size(sizes[i], sizes[i + 1]));
        }
    }
}
