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

    private static final int NOT_ASKED = -2;

    /** Cells lie in blocks of 4 by 4, so that those side by side are found in one place. */
    private static final int BLOCK_BITS = 2;

    private static final int BLOCK_MASK = (1 << BLOCK_BITS) - 1;

    private static final int IN_BLOCK = 1 << (2 * BLOCK_BITS);

    private final double size;
    /** A hash table of the blocks that hold something: for each place 0, or the block's number plus one. */
    private int[] table = new int[1 << FIRST_BITS];

    private int bits = FIRST_BITS;
    private long[] blocks = new long[1 << FIRST_BITS];
    private int blockCount;
    /** For each cell of each block 0, or its number plus one. */
    private int[] numbers = new int[IN_BLOCK << FIRST_BITS];

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
        int at = IN_BLOCK * block(row(key), column(key)) + inBlock(row(key), column(key));
        if (numbers[at] == 0) {
            if (things.size() == keys.length) {
                keys = Arrays.copyOf(keys, 2 * keys.length);
            }
            keys[things.size()] = key;
            things.add(new ArrayList<>(4));
            numbers[at] = things.size();
        }
        things.get(numbers[at] - 1).add(thing);
    }

    /** Adds a thing to every cell that touches a rectangle. */
    void add(Box box, T thing) {
        for (int row = column(box.top()); row <= column(box.bottom()); row++) {
            for (int column = column(box.left()); column <= column(box.right()); column++) {
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
        int block = table[place(blockKey(row(key), column(key)))] - 1;
        int number = block < 0 ? 0 : numbers[IN_BLOCK * block + inBlock(row(key), column(key))];
        return number == 0 ? List.of() : things.get(number - 1);
    }

    /** Hands over all that lies in cells that touch a rectangle, row by row. */
    void near(Box box, Consumer<T> taker) {
        near(column(box.top()), column(box.left()), column(box.bottom()), column(box.right()), taker);
    }

    /** Likewise, for a cell and those around it. */
    void around(long key, Consumer<T> taker) {
        int row = row(key);
        int column = column(key);
        near(row - 1, column - 1, row + 1, column + 1, taker);
    }

    private void near(int firstRow, int firstColumn, int lastRow, int lastColumn, Consumer<T> taker) {
        for (int row = firstRow; row <= lastRow; row++) {
            int block = NOT_ASKED;
            for (int column = firstColumn; column <= lastColumn; column++) {
                if (block == NOT_ASKED || (column & BLOCK_MASK) == 0) {
                    block = table[place(blockKey(row, column))] - 1;
                }
                int number = block < 0 ? 0 : numbers[IN_BLOCK * block + inBlock(row, column)];
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

    private static int row(long key) {
        return (int) (key >> 32);
    }

    private static int column(long key) {
        return (int) (key ^ Integer.MIN_VALUE);
    }

    private static long blockKey(int row, int column) {
        return key(row >> BLOCK_BITS, column >> BLOCK_BITS);
    }

    private static int inBlock(int row, int column) {
        return ((row & BLOCK_MASK) << BLOCK_BITS) | (column & BLOCK_MASK);
    }

    /** The number of the block of a cell; a new one if there is none yet. */
    private int block(int row, int column) {
        long key = blockKey(row, column);
        int place = place(key);
        if (table[place] == 0) {
            if (2 * blockCount == table.length) {
                widen();
                place = place(key);
            }
            blocks[blockCount] = key;
            blockCount++;
            table[place] = blockCount;
        }
        return table[place] - 1;
    }

    /** Where a block is in the table, or the free place where it belongs. */
    private int place(long block) {
        int place = (int) ((block * SPREAD) >>> (64 - bits));
        while (table[place] != 0 && blocks[table[place] - 1] != block) {
            place = (place + 1) & (table.length - 1);
        }
        return place;
    }

    private void widen() {
        bits++;
        blocks = Arrays.copyOf(blocks, 2 * blocks.length);
        numbers = Arrays.copyOf(numbers, 2 * numbers.length);
        table = new int[2 * table.length];
        for (int number = 0; number < blockCount; number++) {
            table[place(blocks[number])] = number + 1;
        }
    }
}
