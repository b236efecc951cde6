package inkstrata.planar;

import java.util.Arrays;

/**
 * The two directions of each edge, sorted around their vertices, and the cycles they form.
 *
 * <p>Half-edge 2e runs along edge e, 2e + 1 against it. A cycle keeps its face on the left, the side of positive cross products;
 * the cycle around the inside of a face has positive area, the outer contour of a component does not.
 */
final class HalfEdges {
    private final int[] x;
    private final int[] y;
    private final int[] origin;
    private final int[] next;
    private final int[] cycleOf;
    /** For each vertex a half-edge that starts there. */
    private final int[] anyFrom;

    private int cycles;
    private long[] areaOf = new long[16];
    private int[] startOf = new int[16];

    /**
     * Builds them.
     *
     * @param x of the vertices, relative to some point near them
     * @param y likewise
     */
    HalfEdges(int[] x, int[] y, int[] from, int[] to) {
        this(x, y, from, to, from.length);
    }

    static HalfEdges of(TileEdges edges) {
        return new HalfEdges(edges.vertices().xs(), edges.vertices().ys(), edges.from(), edges.to(), edges.count());
    }

    private HalfEdges(int[] x, int[] y, int[] from, int[] to, int n) {
        this.x = x;
        this.y = y;
        origin = new int[2 * n];
        for (int e = 0; e < n; e++) {
            origin[2 * e] = from[e];
            origin[2 * e + 1] = to[e];
        }
        next = new int[2 * n];
        cycleOf = new int[2 * n];
        anyFrom = new int[x.length];
        link();
        trace();
    }

    int size() {
        return next.length;
    }

    int origin(int half) {
        return origin[half];
    }

    /** The half-edge after this one with the same face on its left. */
    int next(int half) {
        return next[half];
    }

    /** A half-edge that starts at a vertex that has any. */
    int anyFrom(int vertex) {
        return anyFrom[vertex];
    }

    int cycleOf(int half) {
        return cycleOf[half];
    }

    int cycleCount() {
        return cycles;
    }

    /** Twice the area within the cycle. */
    long doubledArea(int cycle) {
        return areaOf[cycle];
    }

    int firstHalf(int cycle) {
        return startOf[cycle];
    }

    private void link() {
        int vertices = x.length;
        int[] first = new int[vertices + 1];
        for (int h : origin) {
            first[h + 1]++;
        }
        for (int v = 0; v < vertices; v++) {
            first[v + 1] += first[v];
        }
        int[] around = new int[origin.length];
        int[] at = first.clone();
        for (int h = 0; h < origin.length; h++) {
            around[at[origin[h]]++] = h;
        }
        for (int v = 0; v < vertices; v++) {
            sort(around, first[v], first[v + 1]);
            anyFrom[v] = first[v] < first[v + 1] ? around[first[v]] : -1;
            for (int i = first[v]; i < first[v + 1]; i++) {
                // Arriving against around[i], the next one keeping left is its neighbour clockwise.
                int clockwise = i > first[v] ? around[i - 1] : around[first[v + 1] - 1];
                next[around[i] ^ 1] = clockwise;
            }
        }
    }

    private void sort(int[] around, int from, int to) {
        if (to - from <= 2) {
            return; // Around a circle two are in order anyway.
        }
        if (to - from > 32) {
            mergeSort(around, from, to);
            return;
        }
        for (int i = from + 1; i < to; i++) {
            int h = around[i];
            int k = i - 1;
            while (k >= from && after(around[k], h)) {
                around[k + 1] = around[k];
                k--;
            }
            around[k + 1] = h;
        }
    }

    private void mergeSort(int[] around, int from, int to) {
        int middle = (from + to) >>> 1;
        sort(around, from, middle);
        sort(around, middle, to);
        int[] low = Arrays.copyOfRange(around, from, middle);
        int j = middle;
        int k = from;
        for (int i = 0; i < low.length; ) {
            around[k++] = j < to && after(low[i], around[j]) ? around[j++] : low[i++];
        }
    }

    /** Whether g comes after h, counter-clockwise from the direction of positive x (in the plane of cross products). */
    private boolean after(int g, int h) {
        int gx = x[origin[g ^ 1]] - x[origin[g]];
        int gy = y[origin[g ^ 1]] - y[origin[g]];
        int hx = x[origin[h ^ 1]] - x[origin[h]];
        int hy = y[origin[h ^ 1]] - y[origin[h]];
        boolean gLower = gy < 0 || (gy == 0 && gx < 0);
        boolean hLower = hy < 0 || (hy == 0 && hx < 0);
        if (gLower != hLower) {
            return gLower;
        }
        return (long) gx * hy - (long) gy * hx < 0;
    }

    private void trace() {
        Arrays.fill(cycleOf, -1);
        for (int h = 0; h < next.length; h++) {
            if (cycleOf[h] >= 0) {
                continue;
            }
            if (cycles == areaOf.length) {
                areaOf = Arrays.copyOf(areaOf, 2 * cycles);
                startOf = Arrays.copyOf(startOf, 2 * cycles);
            }
            long doubled = 0;
            int g = h;
            do {
                cycleOf[g] = cycles;
                int a = origin[g];
                int b = origin[g ^ 1];
                doubled += (long) x[a] * y[b] - (long) x[b] * y[a];
                g = next[g];
            } while (g != h);
            areaOf[cycles] = doubled;
            startOf[cycles++] = h;
        }
    }
}
