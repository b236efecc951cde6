package inkstrata.planar;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Which edges of a map come near each other: a grid of cells, each of which lists the edges that come within half a reach of it. Two
 * edges no farther apart than the reach are both listed in the cell that holds the middle of the way between them.
 *
 * <p>Cells have no table of their own: they share buckets, so a bucket may list edges of several. Work grows with the edges' number
 * and length.
 */
final class EdgeCells {
    private final EdgeTable edges;
    private final int left;
    private final int low;
    private final int reach;
    private final int mask;
    private final int[] start;
    private final int[] listed;

    /**
     * Lists edges.
     *
     * @param reach in grid steps, 2 or more; also the width of a cell
     * @param takesPart which edges are listed
     */
    EdgeCells(EdgeTable edges, Box frame, int reach, IntPredicate takesPart) {
        this.edges = edges;
        this.left = frame.left() - 4 * reach;
        this.low = frame.low() - 4 * reach;
        this.reach = reach;
        Ints entries = new Ints(1024);
        Ints buckets = new Ints(1024);
        for (int e = 0; e < edges.from().length; e++) {
            if (takesPart.test(e)) {
                int before = buckets.size();
                hashes(e, buckets);
                for (int i = before; i < buckets.size(); i++) {
                    entries.add(e);
                }
            }
        }
        mask = Integer.highestOneBit(Math.max(16, entries.size())) - 1;
        start = new int[mask + 2];
        for (int i = 0; i < buckets.size(); i++) {
            start[(buckets.get(i) & mask) + 1]++;
        }
        for (int b = 0; b <= mask; b++) {
            start[b + 1] += start[b];
        }
        int[] at = Arrays.copyOf(start, mask + 1);
        listed = new int[entries.size()];
        for (int i = 0; i < entries.size(); i++) {
            listed[at[buckets.get(i) & mask]++] = entries.get(i);
        }
    }

    /** What one thread needs to ask. */
    final class Asking {
        private final int[] asked = new int[edges.from().length];
        private final Ints hashes = new Ints(64);

        /** Adds the other edges that may be within reach of one, each once, in rising order. */
        int[] near(int edge, Ints scratch) {
            scratch.clear();
            hashes.clear();
            hashes(edge, hashes);
            for (int i = 0; i < hashes.size(); i++) {
                int bucket = hashes.get(i) & mask;
                for (int k = start[bucket]; k < start[bucket + 1]; k++) {
                    int other = listed[k];
                    if (other != edge && asked[other] != edge + 1) {
                        asked[other] = edge + 1;
                        scratch.add(other);
                    }
                }
            }
            int[] found = scratch.toArray();
            Arrays.sort(found);
            return found;
        }
    }

    /** The cells within half a reach of an edge, along its longer extent one column after another. */
    private void hashes(int e, Ints result) {
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
            double near = Math.max((double) u0, (double) column * reach - half);
            double far = Math.min((double) u1, (double) (column + 1) * reach + half);
            double a = v0 + slope * (near - u0);
            double b = v0 + slope * (far - u0);
            int lowest = cell((long) Math.floor(Math.min(a, b)) - half);
            int highest = cell((long) Math.ceil(Math.max(a, b)) + half);
            for (int row = lowest; row <= highest; row++) {
                result.add(flat ? hash(column, row) : hash(row, column));
            }
        }
    }

    private int cell(long v) {
        return (int) Math.floorDiv(v, (long) reach);
    }

    private static int hash(int column, int row) {
        int h = column * 0x9E3779B1 + row * 0x85EBCA77;
        h ^= h >>> 15;
        h *= 0x2C1B3C6D;
        return h ^ h >>> 13;
    }
}
