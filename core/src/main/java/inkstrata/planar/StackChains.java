package inkstrata.planar;

import java.util.Arrays;

/**
 * The edges of a map in chains: ways that pass vertices at which just two edges meet, with the same two stacks beside them.
 *
 * <p>Every edge belongs to one chain. A chain ends where it meets others; one that comes back to itself without meeting any
 * starts and ends at its leftmost vertex (of several the one with the lowest y), which is a corner.
 */
final class StackChains {
    private static final int NONE = -1;
    private static final int MANY = -2;

    private final EdgeTable table;
    private final int[] first;
    /** For each vertex that chains pass the other of its two edges; else less than 0. */
    private final int[] second;

    private final boolean[] done;
    private int edge;

    private final Ints vertices = new Ints(64);
    private final Ints edges = new Ints(64);
    private int left;
    private int right;

    StackChains(EdgeTable table) {
        this.table = table;
        int n = table.x().length;
        first = new int[n];
        second = new int[n];
        Arrays.fill(first, NONE);
        Arrays.fill(second, NONE);
        for (int e = 0; e < table.from().length; e++) {
            note(table.from()[e], e);
            note(table.to()[e], e);
        }
        for (int v = 0; v < n; v++) {
            if (second[v] >= 0 && !goesOn(v)) {
                second[v] = MANY;
            }
        }
        done = new boolean[table.from().length];
    }

    private void note(int vertex, int e) {
        if (first[vertex] == NONE) {
            first[vertex] = e;
        } else {
            second[vertex] = second[vertex] == NONE ? e : MANY;
        }
    }

    /** Goes on to the next chain; false if there is none. */
    boolean next() {
        while (edge < done.length && done[edge]) {
            edge++;
        }
        if (edge == done.length) {
            return false;
        }
        collect(start(edge));
        return true;
    }

    /** How many edges the chain has; it has one vertex more. */
    int size() {
        return edges.size();
    }

    int vertex(int place) {
        return vertices.get(place);
    }

    /** The edge after a vertex; it may run against the chain. */
    int edge(int place) {
        return edges.get(place);
    }

    /** The stack on the chain's left, the side of positive cross products. */
    int left() {
        return left;
    }

    int right() {
        return right;
    }

    /** A directed edge, 2e along edge e or 2e + 1 against it, with which the chain of an edge begins. */
    private int start(int e) {
        int half = 2 * e;
        int leftmost = half;
        int at = half;
        do {
            int vertex = origin(at);
            if (!passes(vertex)) {
                return at;
            }
            leftmost = isLeftOf(vertex, origin(leftmost)) ? at : leftmost;
            at = through(vertex, at ^ 1) ^ 1;
        } while (at != half);
        return leftmost;
    }

    private void collect(int start) {
        vertices.clear();
        edges.clear();
        left = (start & 1) == 0 ? table.left()[start >> 1] : table.right()[start >> 1];
        right = (start & 1) == 0 ? table.right()[start >> 1] : table.left()[start >> 1];
        int at = start;
        vertices.add(origin(at));
        while (true) {
            edges.add(at >> 1);
            done[at >> 1] = true;
            int vertex = origin(at ^ 1);
            vertices.add(vertex);
            if (!passes(vertex) || vertex == origin(start)) {
                return;
            }
            at = through(vertex, at ^ 1);
        }
    }

    private int origin(int half) {
        return (half & 1) == 0 ? table.from()[half >> 1] : table.to()[half >> 1];
    }

    /** The other directed edge that starts at a vertex which a chain passes. */
    private int through(int vertex, int half) {
        int e = first[vertex] == half >> 1 ? second[vertex] : first[vertex];
        return table.from()[e] == vertex ? 2 * e : 2 * e + 1;
    }

    private boolean passes(int vertex) {
        return second[vertex] >= 0;
    }

    /** Whether the two edges of a vertex have the same stacks beside them. */
    private boolean goesOn(int vertex) {
        int one = first[vertex];
        int other = second[vertex];
        boolean sameWay = (table.to()[one] == vertex) == (table.from()[other] == vertex);
        return sameWay
                ? table.left()[one] == table.left()[other] && table.right()[one] == table.right()[other]
                : table.left()[one] == table.right()[other] && table.right()[one] == table.left()[other];
    }

    private boolean isLeftOf(int one, int other) {
        int[] x = table.x();
        return x[one] < x[other] || (x[one] == x[other] && table.y()[one] < table.y()[other]);
    }
}
