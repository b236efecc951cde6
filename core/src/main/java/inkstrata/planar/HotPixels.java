package inkstrata.planar;

import java.util.Arrays;

/**
 * The vertices of one tile, numbered in the order in which they are found.
 *
 * <p>They are found cell by cell, and a pixel lies in one cell alone, so each is looked for among those of its own cell only:
 * one by one where they are few, in a table where they are many.
 */
final class HotPixels {
    private static final int FEW = 16;

    private int[] xs;
    private int[] ys;
    private int size;
    private int firstOfCell;
    /** Those of a cell that has many, numbered from 0. */
    private PointTable many = new PointTable(0);

    HotPixels(int expected) {
        xs = new int[Math.max(8, expected)];
        ys = new int[xs.length];
    }

    /** Pixels of another cell come next. */
    void beginCell() {
        firstOfCell = size;
    }

    /** The number of a pixel of the cell; a new one is appended, so it is new if {@link #size()} grew. */
    int number(int x, int y) {
        if (size - firstOfCell > FEW) {
            return numberAmongMany(x, y);
        }
        for (int at = firstOfCell; at < size; at++) {
            if (xs[at] == x && ys[at] == y) {
                return at;
            }
        }
        return append(x, y);
    }

    private int numberAmongMany(int x, int y) {
        if (size - firstOfCell == FEW + 1) {
            many = new PointTable(4 * FEW);
            for (int at = firstOfCell; at < size; at++) {
                many.number(xs[at], ys[at]);
            }
        }
        int number = firstOfCell + many.number(x, y);
        return number < size ? number : append(x, y);
    }

    /** A new number for a pixel that has none yet. */
    int append(int x, int y) {
        if (size == xs.length) {
            xs = Arrays.copyOf(xs, size + (size >> 1) + 8);
            ys = Arrays.copyOf(ys, xs.length);
        }
        xs[size] = x;
        ys[size] = y;
        return size++;
    }

    int x(int number) {
        return xs[number];
    }

    int y(int number) {
        return ys[number];
    }

    int size() {
        return size;
    }

    int[] xs() {
        return Arrays.copyOf(xs, size);
    }

    int[] ys() {
        return Arrays.copyOf(ys, size);
    }
}
