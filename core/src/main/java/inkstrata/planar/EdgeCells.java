package inkstrata.planar;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Which edges of a map border the same stack and come near each other: for each stack that may be a strip's a grid of cells, each of
 * which lists the edges that have the stack at a side and come within half a reach of the cell. Two edges no farther apart than the reach
 * are both listed in the cell that holds the middle of the way between them. Cells are as wide as half a usual edge is long, or as the reach.
 *
 * <p>Only cells in which edges of two contours may face each other list anything; there are few where nothing was meant to meet. Cells
 * have no table of their own: they share buckets, so a bucket may list edges of several. Work grows with the edges' number and length.
 */
final class EdgeCells {
    /** No table has more buckets. */
    private static final int MOST_BUCKETS = 1 << 24;

    /** About how many rows an edge comes near in each column. */
    private static final int ROWS = 3;

    private static final int NOBODY = Integer.MIN_VALUE;
    private static final int SEVERAL = Integer.MIN_VALUE + 1;

    private final EdgeTable edges;
    private final int left;
    private final int low;
    private final int reach;
    private final int width;
    private final int mask;
    /** For each edge and side whether it lies in a cell that lists anything. */
    private final BitSet hasCompany;

    private final int[] start;
    private final int[] listed;

    /**
     * Lists edges.
     *
     * @param reach in grid steps, 2 or more
     */
    EdgeCells(EdgeTable edges, SeamEdges sides, Box frame, int reach) {
        this.edges = edges;
        this.reach = reach;
        this.left = frame.left() - 4 * reach;
        this.low = frame.low() - 4 * reach;
        int halves = 2 * edges.from().length;
        int facing = 0;
        double extent = 0;
        for (int half = 0; half < halves; half++) {
            if (sides.mayFace(half >> 1, isLeft(half))) {
                facing++;
                extent += extent(half >> 1);
            }
        }
        this.width = (int) Math.max(reach, extent / 2 / Math.max(1, facing));
        double named = 16 + ROWS * (facing + extent / width);
        this.mask = (named >= MOST_BUCKETS ? MOST_BUCKETS : 2 * Integer.highestOneBit((int) named)) - 1;
        int[] whose = new int[mask + 1];
        Arrays.fill(whose, NOBODY);
        Ints hashes = new Ints(64);
        for (int half = 0; half < halves; half++) {
            if (sides.mayFace(half >> 1, isLeft(half))) {
                int contour = sides.contour(half >> 1);
                cells(half, hashes);
                for (int i = 0; i < hashes.size(); i++) {
                    int bucket = hashes.get(i) & mask;
                    if (whose[bucket] != contour) {
                        whose[bucket] = whose[bucket] == NOBODY ? contour : SEVERAL;
                    }
                }
            }
        }
        hasCompany = new BitSet(halves);
        Ints entries = new Ints(1024);
        Ints buckets = new Ints(1024);
        for (int half = 0; half < halves; half++) {
            if (sides.mayBeStrip(half >> 1, isLeft(half))) {
                cells(half, hashes);
                for (int i = 0; i < hashes.size(); i++) {
                    int bucket = hashes.get(i) & mask;
                    if (whose[bucket] == SEVERAL) {
                        hasCompany.set(half);
                        entries.add(half);
                        buckets.add(bucket);
                    }
                }
            }
        }
        start = new int[mask + 2];
        for (int i = 0; i < buckets.size(); i++) {
            start[buckets.get(i) + 1]++;
        }
        for (int b = 0; b <= mask; b++) {
            start[b + 1] += start[b];
        }
        int[] at = Arrays.copyOf(start, mask + 1);
        listed = new int[entries.size()];
        for (int i = 0; i < entries.size(); i++) {
            listed[at[buckets.get(i)]++] = entries.get(i);
        }
    }

    /** The longer one of an edge's two. */
    private double extent(int e) {
        int from = edges.from()[e];
        int to = edges.to()[e];
        double dx = (double) edges.x()[to] - edges.x()[from];
        double dy = (double) edges.y()[to] - edges.y()[from];
        return Math.max(Math.abs(dx), Math.abs(dy));
    }

    /** What one thread needs to ask. */
    final class Asking {
        private final int[] asked = new int[2 * edges.from().length];
        private final Ints hashes = new Ints(64);

        /**
         * Finds other edges that may be within reach of one across the stack at one of its sides, each once, in no order; none where no edge
         * of another contour may face it.
         *
         * @param found becomes their numbers
         */
        void near(int edge, boolean isLeft, Ints found) {
            found.clear();
            int half = 2 * edge + (isLeft ? 0 : 1);
            if (!hasCompany.get(half)) {
                return;
            }
            cells(half, hashes);
            for (int i = 0; i < hashes.size(); i++) {
                int bucket = hashes.get(i) & mask;
                for (int k = start[bucket]; k < start[bucket + 1]; k++) {
                    int other = listed[k];
                    if (asked[other] != half + 1) {
                        asked[other] = half + 1;
                        if (other >> 1 != edge) {
                            found.add(other >> 1);
                        }
                    }
                }
            }
        }
    }

    private static boolean isLeft(int half) {
        return (half & 1) == 0;
    }

    /** The cells within half a reach of an edge, along its longer extent one column after another, as the stack at a side has them. */
    private void cells(int edgeAndSide, Ints result) {
        result.clear();
        int e = edgeAndSide >> 1;
        int stack = isLeft(edgeAndSide) ? edges.left()[e] : edges.right()[e];
        int half = (reach + 1) / 2;
        int from = edges.from()[e];
        int to = edges.to()[e];
        boolean flat =
                Math.abs((long) edges.x()[to] - edges.x()[from]) >= Math.abs((long) edges.y()[to] - edges.y()[from]);
        long u0 = flat ? edges.x()[from] - left : edges.y()[from] - low;
        long v0 = flat ? edges.y()[from] - low : edges.x()[from] - left;
        long u1 = flat ? edges.x()[to] - left : edges.y()[to] - low;
        long v1 = flat ? edges.y()[to] - low : edges.x()[to] - left;
        if (u0 > u1) {
            long u = u0;
            long v = v0;
            u0 = u1;
            v0 = v1;
            u1 = u;
            v1 = v;
        }
        double slope = u1 == u0 ? 0 : (v1 - v0) / (double) (u1 - u0);
        int last = cell(u1 + half);
        for (int column = cell(u0 - half); column <= last; column++) {
            double near = Math.max((double) u0, (double) column * width - half);
            double far = Math.min((double) u1, (double) (column + 1) * width + half);
            double a = v0 + slope * (near - u0);
            double b = v0 + slope * (far - u0);
            int lowest = cell((long) Math.floor(Math.min(a, b)) - half);
            int highest = cell((long) Math.ceil(Math.max(a, b)) + half);
            for (int row = lowest; row <= highest; row++) {
                result.add(flat ? hash(column, row, stack) : hash(row, column, stack));
            }
        }
    }

    private int cell(long v) {
        return (int) Math.floorDiv(v, (long) width);
    }

    private static int hash(int column, int row, int stack) {
        int h = column * 0x9E3779B1 + row * 0x85EBCA77 + stack * 0xC2B2AE3D;
        h ^= h >>> 15;
        h *= 0x2C1B3C6D;
        h ^= h >>> 12;
        h *= 0x297A2D39;
        return h ^ h >>> 15;
    }
}
