package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.Arrays;
import java.util.Locale;

/**
 * The edges of a map that part two kinds of stacks, each as two half-edges, and the walks they form.
 *
 * <p>Half-edge 2e runs along edge e, 2e + 1 against it; each has its kind on its left, the side of positive cross products.
 * At a vertex a walk turns clockwise from the way it came to the next half-edge, so it stays at one interior and never
 * jumps to another one that only touches there.
 */
final class Borderlines {
    /** A kind that nobody asked for. */
    static final int NONE = -1;

    private final int[] x;
    private final int[] y;
    private final int[] origin;
    private final int[] kind;
    private final int[] next;

    private Borderlines(EdgeTable table, int[] origin, int[] kind) {
        this.x = table.x();
        this.y = table.y();
        this.origin = origin;
        this.kind = kind;
        this.next = new int[origin.length];
    }

    /**
     * Picks the edges and links them.
     *
     * @param kindOfStack for each stack its kind from 0, or {@link #NONE}
     * @throws IllegalStateException if the stacks around a vertex do not agree
     */
    static Borderlines of(EdgeTable table, int[] kindOfStack) {
        int count = 0;
        for (int e = 0; e < table.from().length; e++) {
            if (kind(table.left()[e], kindOfStack) != kind(table.right()[e], kindOfStack)) {
                count++;
            }
        }
        int[] origin = new int[2 * count];
        int[] kind = new int[2 * count];
        int h = 0;
        for (int e = 0; e < table.from().length; e++) {
            int left = kind(table.left()[e], kindOfStack);
            int right = kind(table.right()[e], kindOfStack);
            if (left != right) {
                origin[h] = table.from()[e];
                kind[h++] = left;
                origin[h] = table.to()[e];
                kind[h++] = right;
            }
        }
        Borderlines lines = new Borderlines(table, origin, kind);
        lines.link();
        return lines;
    }

    /** How many half-edges. */
    int size() {
        return origin.length;
    }

    int vertexCount() {
        return x.length;
    }

    int x(int vertex) {
        return x[vertex];
    }

    int y(int vertex) {
        return y[vertex];
    }

    /** The vertex at which a half-edge starts. */
    int origin(int half) {
        return origin[half];
    }

    /** What lies on the left of a half-edge. */
    int kind(int half) {
        return kind[half];
    }

    /** The next half-edge of the walk. */
    int next(int half) {
        return next[half];
    }

    private static int kind(int stack, int[] kindOfStack) {
        return stack == EdgeTable.OUTSIDE ? NONE : kindOfStack[stack];
    }

    private void link() {
        int[] first = new int[x.length + 1];
        for (int vertex : origin) {
            first[vertex + 1]++;
        }
        for (int v = 0; v < x.length; v++) {
            first[v + 1] += first[v];
        }
        int[] around = new int[origin.length];
        int[] at = Arrays.copyOf(first, x.length);
        for (int h = 0; h < origin.length; h++) {
            around[at[origin[h]]++] = h;
        }
        for (int v = 0; v < x.length; v++) {
            int end = first[v + 1];
            sort(around, first[v], end);
            for (int i = first[v]; i < end; i++) {
                int arriving = around[i] ^ 1;
                int clockwise = around[i > first[v] ? i - 1 : end - 1];
                if (kind[arriving] != kind[clockwise]) {
                    throw new IllegalStateException(String.format(
                            Locale.ROOT,
                            "the stacks around the vertex at %.5f, %.5f mm do not agree",
                            Grid.millimetres(x[v]),
                            Grid.millimetres(y[v])));
                }
                next[arriving] = clockwise;
            }
        }
    }

    private void sort(int[] around, int from, int to) {
        if (to - from > 32) {
            int middle = (from + to) >>> 1;
            sort(around, from, middle);
            sort(around, middle, to);
            merge(around, from, middle, to);
            return;
        }
        for (int i = from + 1; i < to; i++) {
            int h = around[i];
            int k = i;
            for (; k > from && isAfter(around[k - 1], h); k--) {
                around[k] = around[k - 1];
            }
            around[k] = h;
        }
    }

    private void merge(int[] around, int from, int middle, int to) {
        int[] low = Arrays.copyOfRange(around, from, middle);
        int high = middle;
        for (int i = 0, k = from; i < low.length; k++) {
            around[k] = high < to && isAfter(low[i], around[high]) ? around[high++] : low[i++];
        }
    }

    /** Whether g leaves after h when turning counter-clockwise (from positive x to positive y) from positive x. */
    private boolean isAfter(int g, int h) {
        int gx = x[origin[g ^ 1]] - x[origin[g]];
        int gy = y[origin[g ^ 1]] - y[origin[g]];
        int hx = x[origin[h ^ 1]] - x[origin[h]];
        int hy = y[origin[h ^ 1]] - y[origin[h]];
        boolean gLater = gy < 0 || (gy == 0 && gx < 0);
        boolean hLater = hy < 0 || (hy == 0 && hx < 0);
        return gLater == hLater ? (long) gx * hy - (long) gy * hx < 0 : gLater;
    }
}
