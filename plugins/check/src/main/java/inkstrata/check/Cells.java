package inkstrata.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/** Things sorted into the cells of a square grid over the sheet. */
final class Cells<T> {
    /** Spreads keys over the table (2 to the 64 divided by the golden ratio). */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private static final int FIRST_BITS = 6;

    private final double size;
    /** A hash table of the cells that hold something: for each place 0, or the cell's number plus one. */
    private int[] table = new int[1 << FIRST_BITS];

    private int bits = FIRST_BITS;
    private long[] keys = new long[1 << FIRST_BITS];
    private final List<List<T>> things = new ArrayList<>();

    /** @param size side of a cell, in grid steps */
    Cells(double size) {
        this.size = size;
    }

    double size() {
        return size;
    }

    void add(double x, double y, T thing) {
        add(key(column(y), column(x)), thing);
    }

    void add(long key, T thing) {
        int place = place(key);
        if (table[place] == 0) {
            if (2 * things.size() >= table.length) {
                widen();
                place = place(key);
            }
            keys[things.size()] = key;
            things.add(new ArrayList<>(4));
            table[place] = things.size();
        }
        things.get(table[place] - 1).add(thing);
    }

    /** Adds a thing to every cell that touches a rectangle. */
    void add(double left, double top, double right, double bottom, T thing) {
        for (int row = column(top); row <= column(bottom); row++) {
            for (int column = column(left); column <= column(right); column++) {
                add(key(row, column), thing);
            }
        }
    }

    /** The cells that hold something, row by row. */
    long[] cells() {
        long[] sorted = Arrays.copyOf(keys, things.size());
        Arrays.sort(sorted);
        return sorted;
    }

    /** What a cell holds, in the order in which it was added. */
    List<T> in(long key) {
        int number = table[place(key)];
        return number == 0 ? List.of() : things.get(number - 1);
    }

    /** Hands over all that lies in cells that touch a rectangle, row by row. */
    void near(double left, double top, double right, double bottom, Consumer<T> taker) {
        near(column(top), column(left), column(bottom), column(right), taker);
    }

    /** Likewise, for a cell and those around it. */
    void around(long key, Consumer<T> taker) {
        int row = (int) (key >> 32);
        int column = (int) (key ^ Integer.MIN_VALUE);
        near(row - 1, column - 1, row + 1, column + 1, taker);
    }

    private void near(int firstRow, int firstColumn, int lastRow, int lastColumn, Consumer<T> taker) {
        for (int row = firstRow; row <= lastRow; row++) {
            for (int column = firstColumn; column <= lastColumn; column++) {
                int number = table[place(key(row, column))];
                if (number != 0) {
                    for (T thing : things.get(number - 1)) {
                        taker.accept(thing);
                    }
                }
            }
        }
    }

    private int column(double coordinate) {
        return (int) Math.floor(coordinate / size);
    }

    /** In the order of rows, then columns, below 0 as well. */
    private static long key(int row, int column) {
        return ((long) row << 32) | ((column ^ Integer.MIN_VALUE) & 0xffffffffL);
    }

    /** Where a key is in the table, or the free place where it belongs. */
    private int place(long key) {
        int place = (int) ((key * SPREAD) >>> (64 - bits));
        while (table[place] != 0 && keys[table[place] - 1] != key) {
            place = (place + 1) & (table.length - 1);
        }
        return place;
    }

    private void widen() {
        bits++;
        keys = Arrays.copyOf(keys, 2 * keys.length);
        table = new int[2 * table.length];
        for (int number = 0; number < things.size(); number++) {
            table[place(keys[number])] = number + 1;
        }
    }
}
