package inkstrata.check;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * Things sorted into the cells of a square grid over the sheet, row by row.
 *
 * @param size side of a cell, in grid steps
 * @param things for each cell that holds any, by its key
 */
record Cells<T>(double size, NavigableMap<Long, List<T>> things) {
    Cells(double size) {
        this(size, new TreeMap<>());
    }

    void add(double x, double y, T thing) {
        things.computeIfAbsent(key(column(y), column(x)), key -> new ArrayList<>())
                .add(thing);
    }

    /** Hands over all that lies in cells that touch a rectangle. */
    void near(double left, double top, double right, double bottom, Consumer<T> taker) {
        for (int row = column(top); row <= column(bottom); row++) {
            things.subMap(key(row, column(left)), true, key(row, column(right)), true)
                    .values()
                    .forEach(cell -> cell.forEach(taker));
        }
    }

    /** Likewise, for a cell and those around it. */
    void around(long key, Consumer<T> taker) {
        int row = (int) (key >> 32);
        int column = (int) (key ^ Integer.MIN_VALUE);
        for (int r = row - 1; r <= row + 1; r++) {
            things.subMap(key(r, column - 1), true, key(r, column + 1), true)
                    .values()
                    .forEach(cell -> cell.forEach(taker));
        }
    }

    private int column(double coordinate) {
        return (int) Math.floor(coordinate / size);
    }

    /** In the order of rows, then columns, below 0 as well. */
    private static long key(int row, int column) {
        return ((long) row << 32) | ((column ^ Integer.MIN_VALUE) & 0xffffffffL);
    }
}
