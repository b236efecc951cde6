package inkstrata.positive;

import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Outlines of letters, so that a film's words look alike in every viewer: one open-licensed sans-serif
 * ({@code letters.txt}, {@code letters-license.txt}), for Latin, Greek and Cyrillic.
 */
final class Letters {
    /** Units to the size of the text. */
    static final int EM = 2_048;

    private static final int HEX = 16;
    private static final int UNKNOWN = 0xfffd;
    private static final Pattern COMMAND = Pattern.compile("([MLQ])([^A-Z]*)");
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
     * Words as outlines.
     *
     * @param left where they begin, in grid steps
     * @param baseline in grid steps
     * @param size of the text, in grid steps
     */
    static Outline outline(String words, int left, int baseline, int size) {
        Outline.Builder outline = Outline.builder();
        double scale = Grid.millimetres(size) / EM;
        double x = Grid.millimetres(left);
        for (int point : words.codePoints().toArray()) {
            Letter letter = letter(point);
            draw(letter.path(), x, Grid.millimetres(baseline), scale, outline);
            x += letter.advance() * scale;
        }
        return outline.build();
    }

    private static Letter letter(int codePoint) {
        Letter letter = KNOWN.get(codePoint);
        return letter == null ? KNOWN.get(UNKNOWN) : letter;
    }

    /** Draws a path moved and scaled. */
    private static void draw(String path, double x, double y, double scale, Outline.Builder outline) {
        Matcher command = COMMAND.matcher(path);
        while (command.find()) {
            double[] c = Arrays.stream(command.group(2).trim().split("[ ,]+|(?=-)", -1))
                    .filter(number -> !number.isEmpty())
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            for (int i = 0; i < c.length; i++) {
                c[i] = c[i] * scale + (i % 2 == 0 ? x : y);
            }
            switch (command.group(1)) {
                case "M" -> outline.moveTo(c[0], c[1]);
                case "L" -> {
                    for (int i = 0; i < c.length; i += 2) {
                        outline.lineTo(c[i], c[i + 1]);
                    }
                }
                default -> {
                    for (int i = 0; i < c.length; i += 4) {
                        outline.quadTo(c[i], c[i + 1], c[i + 2], c[i + 3]);
                    }
                }
            }
        }
    }
}
