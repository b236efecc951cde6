package inkstrata.positive;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * Outlines of letters, so that a film's words look alike in every viewer: one open-licensed sans-serif
 * ({@code letters.txt}, {@code letters-license.txt}), for Latin, Greek and Cyrillic.
 */
final class Letters {
    /** Units to the size of the text. */
    static final int EM = 2_048;

    private static final int HEX = 16;
    private static final int UNKNOWN = 0xfffd;
    private static final Map<Integer, Letter> KNOWN = read();

    /**
     * One letter.
     *
     * @param advance to the next one, in units
     * @param path as SVG has it, in units: M, L and Q with absolute coordinates, and Z; y down from the baseline
     */
    private record Letter(int advance, String path) {}

    private Letters() {}

    private static Map<Integer, Letter> read() {
        try (InputStream in = Letters.class.getResourceAsStream("letters.txt");
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
            Map<Integer, Letter> letters = new HashMap<>();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] parts = line.split(" ", 3);
                letters.put(Integer.parseInt(parts[0], HEX), new Letter(Integer.parseInt(parts[1]), parts[2]));
            }
            return Map.copyOf(letters);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether there is an outline for a code point; else a mark stands for it. */
    static boolean has(int codePoint) {
        return KNOWN.containsKey(codePoint);
    }

    /** How wide words are, in sizes of the text. */
    static double width(String words) {
        return words.codePoints().mapToDouble(point -> letter(point).advance()).sum() / EM;
    }

    /**
     * Words as the data of one SVG path.
     *
     * @param left where they begin, in grid steps
     * @param baseline in grid steps
     * @param size of the text, in grid steps
     */
    static String path(String words, int left, int baseline, int size) {
        StringBuilder data = new StringBuilder();
        double scale = (double) size / EM;
        double x = left;
        for (int point : words.codePoints().toArray()) {
            Letter letter = letter(point);
            write(letter.path(), x, baseline, scale, data);
            x += letter.advance() * scale;
        }
        return data.toString();
    }

    private static Letter letter(int codePoint) {
        Letter letter = KNOWN.get(codePoint);
        return letter == null ? KNOWN.get(UNKNOWN) : letter;
    }

    /** Copies a path, its numbers, x and y in turn, moved and scaled. */
    private static void write(String path, double x, double y, double scale, StringBuilder data) {
        boolean isX = true;
        int at = 0;
        while (at < path.length()) {
            char c = path.charAt(at);
            if (c == '-' || Character.isDigit(c)) {
                int end = at + 1;
                while (end < path.length() && Character.isDigit(path.charAt(end))) {
                    end++;
                }
                double number = scale * Integer.parseInt(path.substring(at, end));
                data.append(GridText.of((int) Math.rint(number + (isX ? x : y))));
                isX = !isX;
                at = end;
            } else {
                data.append(c);
                at++;
            }
        }
    }
}
