package inkstrata.planar;

import java.util.Arrays;

/** A growing list of grid points. */
final class Points {
    private int[] xs;
    private int[] ys;
    private int size;

    Points(int expected) {
        xs = new int[Math.max(8, expected)];
        ys = new int[xs.length];
    }

    /** The number of the new point. */
    int append(int x, int y) {
        if (size == xs.length) {
            xs = Arrays.copyOf(xs, size + (size >> 1) + 8);
            ys = Arrays.copyOf(ys, xs.length);
        }
        xs[size] = x;
        ys[size] = y;
        return size++;
    }

    boolean isAt(int number, int x, int y) {
        return xs[number] == x && ys[number] == y;
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
