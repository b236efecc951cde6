package inkstrata.command;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Rows of text in straight columns: words to the left, numbers to the right. */
final class Table {
    private final List<List<String>> rows = new ArrayList<>();
    private final String sides;

    /**
     * Begins with the head.
     *
     * @param sides a letter for each column: {@code l} for words, {@code r} for numbers
     */
    Table(String sides, String... head) {
        this.sides = sides;
        row(head);
    }

    Table row(String... cells) {
        if (cells.length != sides.length()) {
            throw new IllegalArgumentException(cells.length + " cells for " + sides.length() + " columns");
        }
        rows.add(List.of(cells));
        return this;
    }

    /** One line for each row, each with two spaces before it, without line ends. */
    List<String> lines() {
        int[] widths = IntStream.range(0, sides.length())
                .map(column -> rows.stream()
                        .mapToInt(row -> row.get(column).length())
                        .max()
                        .orElse(0))
                .toArray();
        return rows.stream()
                .map(row -> IntStream.range(0, widths.length)
                        .mapToObj(column -> padded(row.get(column), widths[column], sides.charAt(column)))
                        .collect(Collectors.joining("  ", "  ", ""))
                        .stripTrailing())
                .toList();
    }

    private static String padded(String cell, int width, char side) {
        String space = " ".repeat(width - cell.length());
        return side == 'r' ? space + cell : cell + space;
    }
}
