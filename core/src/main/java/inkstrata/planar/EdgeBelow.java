package inkstrata.planar;

import java.util.Arrays;

/**
 * Finds the edge next below chosen vertices: the nearest one on the way towards lower y.
 *
 * <p>A sweep over all vertices from left to right, on one x from low y to high, with the edges under the sweep line in a
 * balanced tree (M. I. Shamos and D. Hoey, Geometric intersection problems, 1976, without the crossings; the tree is the
 * treap of R. Seidel and C. R. Aragon, Randomized search trees, 1996, with fixed priorities). Exact; (n log n) for n edges.
 */
final class EdgeBelow {
    private static final int NIL = 0;

    private final Borderlines lines;
    /** Nodes from 1 on; a node is used again when its edge ends where just one other begins. */
    private final int[] low;

    private final int[] high;
    private final int[] edgeOf;
    private final int[] nodeOf;
    private int root = NIL;
    private int nodes;
    private int kept;
    private int cut;

    private EdgeBelow(Borderlines lines) {
        this.lines = lines;
        int edges = lines.size() / 2;
        low = new int[edges + 1];
        high = new int[edges + 1];
        edgeOf = new int[edges + 1];
        nodeOf = new int[edges];
    }

    /**
     * Answers for each asked vertex.
     *
     * @param asked vertices that edges only leave to the right, or straight up
     * @return for each vertex of the lines the half-edge that has it on its left, or -1 where not asked or nothing is below
     */
    static int[] of(Borderlines lines, boolean[] asked) {
        EdgeBelow sweep = new EdgeBelow(lines);
        int[] below = new int[lines.vertexCount()];
        Arrays.fill(below, -1);
        int[] starts = new int[lines.vertexCount() + 1];
        int[] halves = sweep.halvesByVertex(starts);
        for (int vertex : LeftToRight.order(lines)) {
            sweep.pass(vertex, halves, starts[vertex], starts[vertex + 1], asked[vertex], below);
        }
        return below;
    }

    private int[] halvesByVertex(int[] starts) {
        for (int h = 0; h < lines.size(); h++) {
            starts[lines.origin(h) + 1]++;
        }
        for (int v = 0; v < lines.vertexCount(); v++) {
            starts[v + 1] += starts[v];
        }
        int[] at = starts.clone();
        int[] halves = new int[lines.size()];
        for (int h = 0; h < lines.size(); h++) {
            halves[at[lines.origin(h)]++] = h;
        }
        return halves;
    }

    private void pass(int vertex, int[] halves, int from, int to, boolean asked, int[] below) {
        if (to - from == 2 && isRightward(halves[from]) != isRightward(halves[from + 1])) {
            int starting = isRightward(halves[from]) ? halves[from] : halves[from + 1];
            int ending = halves[from] + halves[from + 1] - starting;
            int node = nodeOf[ending >> 1];
            edgeOf[node] = starting;
            nodeOf[starting >> 1] = node;
            return;
        }
        for (int i = from; i < to; i++) {
            if (!isRightward(halves[i])) {
                root = withoutEnd(root, vertex);
            }
        }
        if (asked) {
            below[vertex] = nextBelow(vertex);
        }
        for (int i = from; i < to; i++) {
            if (isRightward(halves[i])) {
                insert(halves[i]);
            }
        }
    }

    /** Whether a half-edge goes right, or straight towards higher y; its left side is then the upper one. */
    private boolean isRightward(int half) {
        int a = lines.origin(half);
        int b = lines.origin(half ^ 1);
        return lines.x(a) < lines.x(b) || (lines.x(a) == lines.x(b) && lines.y(a) < lines.y(b));
    }

    private long side(int half, int vertex) {
        int a = lines.origin(half);
        int b = lines.origin(half ^ 1);
        return (long) (lines.x(b) - lines.x(a)) * (lines.y(vertex) - lines.y(a))
                - (long) (lines.y(b) - lines.y(a)) * (lines.x(vertex) - lines.x(a));
    }

    /** Whether a half-edge that starts at the sweep line lies below another one. */
    private boolean isBelow(int starting, int half) {
        long side = side(half, lines.origin(starting));
        return side != 0 ? side < 0 : side(half, lines.origin(starting ^ 1)) < 0;
    }

    private int nextBelow(int vertex) {
        int found = -1;
        for (int node = root; node != NIL; ) {
            if (side(edgeOf[node], vertex) > 0) {
                found = edgeOf[node];
                node = high[node];
            } else {
                node = low[node];
            }
        }
        return found;
    }

    private void insert(int half) {
        int node = ++nodes;
        edgeOf[node] = half;
        nodeOf[half >> 1] = node;
        root = inserted(root, node);
    }

    private int inserted(int tree, int node) {
        if (tree == NIL) {
            return node;
        }
        if (priority(node) > priority(tree)) {
            split(tree, edgeOf[node]);
            low[node] = kept;
            high[node] = cut;
            return node;
        }
        if (isBelow(edgeOf[node], edgeOf[tree])) {
            low[tree] = inserted(low[tree], node);
        } else {
            high[tree] = inserted(high[tree], node);
        }
        return tree;
    }

    /** Leaves the edges below in {@link #kept} and those above in {@link #cut}. */
    private void split(int tree, int half) {
        if (tree == NIL) {
            kept = NIL;
            cut = NIL;
        } else if (isBelow(half, edgeOf[tree])) {
            split(low[tree], half);
            low[tree] = cut;
            cut = tree;
        } else {
            split(high[tree], half);
            high[tree] = kept;
            kept = tree;
        }
    }

    /** Takes out one edge that ends at that vertex: the only ones that have it on neither side. */
    private int withoutEnd(int tree, int vertex) {
        if (tree == NIL) {
            throw new IllegalStateException("an edge that ends at the vertex " + lines.x(vertex) + ", "
                    + lines.y(vertex) + " (grid steps) is not where it should be: edges cross");
        }
        long side = side(edgeOf[tree], vertex);
        if (side == 0) {
            return merged(low[tree], high[tree]);
        }
        if (side < 0) {
            low[tree] = withoutEnd(low[tree], vertex);
        } else {
            high[tree] = withoutEnd(high[tree], vertex);
        }
        return tree;
    }

    private int merged(int below, int above) {
        if (below == NIL || above == NIL) {
            return below == NIL ? above : below;
        }
        if (priority(below) > priority(above)) {
            high[below] = merged(high[below], above);
            return below;
        }
        low[above] = merged(below, low[above]);
        return above;
    }

    /** Well mixed and always the same (the finalizer of MurmurHash3, public domain). */
    private static int priority(int node) {
        int h = node;
        h = (h ^ (h >>> 16)) * 0x85ebca6b;
        h = (h ^ (h >>> 13)) * 0xc2b2ae35;
        return h ^ (h >>> 16);
    }
}
