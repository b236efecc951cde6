package inkstrata.planar;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** Vertices in square cells, to find those close to a straight line. */
final class VertexGrid {
    /** In cells with more vertices than this they are sorted by x. */
    private static final int CROWDED = 32;

    private final int[] x;
    private final int[] y;
    private final int left;
    private final int low;
    private final int columns;
    private final int rows;
    /** A cell is 2 to this power wide and high, in grid steps. */
    private final int shift;

    private final int[] starts;
    private final int[] listed;

    VertexGrid(int[] x, int[] y) {
        this.x = x;
        this.y = y;
        left = least(x);
        low = least(y);
        long width = (long) most(x) - left + 1;
        long height = (long) most(y) - low + 1;
        int bits = 0;
        while (((width >> bits) + 1) * ((height >> bits) + 1) > x.length + 4L) {
            bits++;
        }
        shift = bits;
        columns = (int) (width >> shift) + 1;
        rows = (int) (height >> shift) + 1;
        starts = new int[columns * rows + 1];
        listed = new int[x.length];
        fill();
    }

    private static int least(int[] values) {
        int least = Integer.MAX_VALUE;
        for (int value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    private static int most(int[] values) {
        int most = Integer.MIN_VALUE;
        for (int value : values) {
            most = Math.max(most, value);
        }
        return most;
    }

    private void fill() {
        for (int v = 0; v < x.length; v++) {
            starts[cell(v) + 1]++;
        }
        for (int c = 0; c < columns * rows; c++) {
            starts[c + 1] += starts[c];
        }
        int[] at = starts.clone();
        for (int v = 0; v < x.length; v++) {
            listed[at[cell(v)]++] = v;
        }
        for (int c = 0; c < columns * rows; c++) {
            if (starts[c + 1] - starts[c] > CROWDED) {
                sort(starts[c], starts[c + 1]);
            }
        }
    }

    private int cell(int v) {
        return ((y[v] - low) >> shift) * columns + ((x[v] - left) >> shift);
    }

    private void sort(int from, int to) {
        long[] keyed = new long[to - from];
        for (int i = from; i < to; i++) {
            keyed[i - from] = (long) x[listed[i]] << 32 | listed[i];
        }
        Arrays.sort(keyed);
        for (int i = from; i < to; i++) {
            listed[i] = (int) keyed[i - from];
        }
    }

    /**
     * Whether a vertex that counts lies in a strip.
     *
     * @param strip within {@code margin} steps of its chord across, and along
     * @param counts is asked about vertices that lie in the strip
     */
    boolean anyIn(Strip strip, int margin, IntPredicate counts) {
        int fromColumn = Math.max(0, (strip.minX() - margin - left) >> shift);
        int toColumn = Math.min(columns - 1, (strip.maxX() + margin - left) >> shift);
        for (int column = fromColumn; column <= toColumn; column++) {
            int from = left + (column << shift);
            int minX = Math.max(strip.minX() - margin, from);
            int maxX = Math.min(strip.maxX() + margin, from + (1 << shift) - 1);
            int fromRow = Math.max(0, (strip.lowest(minX, maxX, margin) - low) >> shift);
            int toRow = Math.min(rows - 1, (strip.highest(minX, maxX, margin) - low) >> shift);
            for (int row = fromRow; row <= toRow; row++) {
                if (anyIn(strip, row * columns + column, minX, maxX, counts)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean anyIn(Strip strip, int cell, int minX, int maxX, IntPredicate counts) {
        int end = starts[cell + 1];
        int at = end - starts[cell] > CROWDED ? firstFrom(minX, starts[cell], end) : starts[cell];
        boolean sorted = end - starts[cell] > CROWDED;
        for (; at < end; at++) {
            int v = listed[at];
            if (sorted && x[v] > maxX) {
                return false;
            }
            if (strip.holds(x[v], y[v]) && counts.test(v)) {
                return true;
            }
        }
        return false;
    }

    private int firstFrom(int minX, int from, int to) {
        int a = from;
        int b = to;
        while (a < b) {
            int middle = (a + b) >>> 1;
            if (x[listed[middle]] < minX) {
                a = middle + 1;
            } else {
                b = middle;
            }
        }
        return a;
    }
}
