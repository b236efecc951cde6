package inkstrata.planar;

import inkstrata.measure.Grid;

/** Sorts vertices by x, then by y: by their digits, last digit first, in time that grows with their number alone. */
final class LeftToRight {
    /** Four digits of this many bits hold x and y, 26 bits each. */
    private static final int BITS = 13;

    private LeftToRight() {}

    /** All vertices in order. */
    static int[] order(Borderlines lines) {
        int n = lines.vertexCount();
        int[] order = new int[n];
        for (int i = 0; i < n; i++) {
            order[i] = i;
        }
        int[] spare = new int[n];
        for (int digit = 0; digit < 4; digit++) {
            int[] starts = new int[(1 << BITS) + 1];
            for (int vertex = 0; vertex < n; vertex++) {
                starts[digit(lines, vertex, digit) + 1]++;
            }
            for (int i = 0; i < 1 << BITS; i++) {
                starts[i + 1] += starts[i];
            }
            for (int vertex : order) {
                spare[starts[digit(lines, vertex, digit)]++] = vertex;
            }
            int[] sorted = spare;
            spare = order;
            order = sorted;
        }
        return order;
    }

    private static int digit(Borderlines lines, int vertex, int digit) {
        int coordinate = (digit < 2 ? lines.y(vertex) : lines.x(vertex)) + Grid.LIMIT;
        return (coordinate >>> (BITS * (digit & 1))) & ((1 << BITS) - 1);
    }
}
