package inkstrata.positive;

import inkstrata.artwork.Area;
import inkstrata.artwork.FillRule;
import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.plan.Pull;
import inkstrata.positive.page.Page.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a film says about itself, in words, outside the picture. */
final class Label {
    /** From the top of the label's row to the first baseline. */
    static final int FIRST_BASELINE = 2_400 * Grid.STEPS_PER_MM / 1000;

    private static final int TEXT_SIZE = 2_800 * Grid.STEPS_PER_MM / 1000;
    private static final int LEADING = 4 * Grid.STEPS_PER_MM;

    /** Longer titles are cut on the label; the file's own title has all of it. */
    private static final int LONGEST_TITLE = 100;

    /** What every film and every tile says. */
    static final String TRUE_SIZE = "print at 100 %";

    static final String BETWEEN = " \u00b7 ";

    private Label() {}

    /** What a label of that many lines takes, from top to bottom. */
    static int height(int lines) {
        return lines * LEADING + Grid.STEPS_PER_MM;
    }

    /**
     * The lines of one film's label.
     *
     * @param number of the pull, from 1
     * @param side which way up it lies
     * @param date as the job gives it; may be empty
     * @param width it may take, in grid steps
     */
    static List<String> lines(String title, int number, int pulls, Pull pull, String side, String date, int width) {
        String what = shortened(title) + BETWEEN + "pull " + number + " of " + pulls + BETWEEN
                + shortened(pull.ink().name());
        String how = side
                + mesh(pull.ink()).map(mesh -> BETWEEN + mesh).orElse("")
                + BETWEEN
                + TRUE_SIZE
                + (date.isBlank() ? "" : BETWEEN + shortened(date));
        List<String> lines = new ArrayList<>(wrapped(what, width));
        lines.addAll(wrapped(how, width));
        return lines;
    }

    /** Which way up a film lies on the screen. */
    static String side(boolean mirrored) {
        return "emulsion side up, " + (mirrored ? "mirrored for the back of the sheet" : "reads right");
    }

    /** Of a plate for the back, on one page with all others. */
    static String sideOfBackPlate() {
        return "seen from the front, mirror for the back";
    }

    /** What the job says about the screen, if it does. */
    static Optional<String> mesh(Ink ink) {
        return ink.mesh().map(mesh -> "mesh " + mesh);
    }

    /** Lines beneath each other, centred at {@code first}, the middle of the first baseline. */
    static List<Item> at(List<String> lines, Spot first) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            items.add(line(new Spot(first.x(), first.y() + i * LEADING), lines.get(i)));
        }
        return items;
    }

    /** Words in outlines, with the middle of their baseline there. */
    static Item line(Spot middle, String words) {
        int half = (int) Math.rint(Letters.width(words) * TEXT_SIZE / 2);
        return from(new Spot(middle.x() - half, middle.y()), words);
    }

    /** Words in outlines, whose baseline begins there. */
    static Item from(Spot left, String words) {
        return new Item(words, new Area(Letters.outline(words, left.x(), left.y(), TEXT_SIZE), FillRule.NONZERO));
    }

    /** As many letters as fit into a width, in grid steps. */
    static String fitted(String words, int width) {
        String plain = shortened(words);
        String cut = plain;
        while (widthOf(cut) > width && cut.length() > 1) {
            plain = plain.substring(0, plain.offsetByCodePoints(plain.length(), -1));
            cut = plain + "\u2026";
        }
        return cut;
    }

    private static String shortened(String words) {
        String plain = words.strip().replaceAll("\\s+", " ");
        if (plain.codePointCount(0, plain.length()) <= LONGEST_TITLE) {
            return plain;
        }
        return plain.substring(0, plain.offsetByCodePoints(0, LONGEST_TITLE - 1)) + "\u2026";
    }

    /** Broken between words, or within a word that is longer than a line. */
    static List<String> wrapped(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            String rest = word;
            if (!line.isEmpty() && widthOf(line + " " + rest) <= width) {
                line.append(' ').append(rest);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (widthOf(rest) > width) {
                int fits = fitting(rest, width);
                lines.add(rest.substring(0, fits));
                rest = rest.substring(fits);
            }
            line.append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int fitting(String word, int width) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length() && widthOf(word.substring(0, word.offsetByCodePoints(end, 1))) <= width) {
            end = word.offsetByCodePoints(end, 1);
        }
        return end;
    }

    private static double widthOf(String words) {
        return Letters.width(words) * TEXT_SIZE;
    }
}
