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
    private final int[] rank;
    /** For each edge under the sweep line its node. */
    private final int[] nodeOf;
    /** Nodes from 1 on; a node is used again when its edge ends where just one other begins. */
    private int[] low = new int[256];

    private int[] high = new int[256];
    private int[] edgeOf = new int[256];
    private int root = NIL;
    private int nodes;
    private int kept;
    private int cut;

    /**
     * A sweep.
     *
     * @param rank for each vertex its place from left to right
     */
    private EdgeBelow(Borderlines lines, int[] rank) {
        this.lines = lines;
        this.rank = rank;
        this.nodeOf = new int[lines.size() / 2];
    }

    /**
     * Answers for each asked vertex. Each thread sweeps from one vertex on until before another, with the edges that are under the
     * sweep line there to begin with.
     *
     * @param asked vertices that edges only leave to the right, or straight up
     * @return for each vertex of the lines the half-edge that has it on its left, or -1 where not asked or nothing is below
     */
    static int[] of(Borderlines lines, boolean[] asked, Crew crew) {
        int[] below = new int[lines.vertexCount()];
        Arrays.fill(below, -1);
        int[] order = LeftToRight.order(lines);
        int[] rank = new int[order.length];
        for (int place = 0; place < order.length; place++) {
            rank[order[place]] = place;
        }
        // As few sweeps as there are threads: each looks at all edges before it begins.
        crew.share(crew.threads(), (first, end) -> {
            EdgeBelow sweep = new EdgeBelow(lines, rank);
            int from = (int) ((long) order.length * first / crew.threads());
            int until = (int) ((long) order.length * end / crew.threads());
            sweep.begin(from);
            for (int place = from; place < until; place++) {
                sweep.pass(order[place], asked[order[place]], below);
            }
            return until - from;
        });
        return below;
    }

    /** Takes the edges that begin before a place and do not end there yet, in the order in which they begin. */
    private void begin(int place) {
        Ints under = new Ints(64);
        for (int h = 0; h < lines.size() && place > 0; h++) {
            if (rank[lines.origin(h)] < place && rank[lines.origin(h ^ 1)] >= place) {
                under.add(h);
            }
        }
        long[] inOrder = new long[under.size()];
        for (int i = 0; i < inOrder.length; i++) {
            inOrder[i] = (long) rank[lines.origin(under.get(i))] << 32 | under.get(i);
        }
        Arrays.sort(inOrder);
        for (long half : inOrder) {
            insert((int) half);
        }
    }

    private void pass(int vertex, boolean asked, int[] below) {
        int one = lines.anyFrom(vertex);
        int other = lines.nextAround(one);
        if (one != other && lines.nextAround(other) == one && isRightward(one) != isRightward(other)) {
            int starting = isRightward(one) ? one : other;
            int ending = one + other - starting;
            int node = nodeOf[ending >> 1];
            edgeOf[node] = starting;
            nodeOf[starting >> 1] = node;
            return;
        }
        int half = one;
        do {
            if (!isRightward(half)) {
                root = withoutEnd(root, vertex);
            }
            half = lines.nextAround(half);
        } while (half != one);
        if (asked) {
            below[vertex] = nextBelow(vertex);
        }
        do {
            if (isRightward(half)) {
                insert(half);
            }
            half = lines.nextAround(half);
        } while (half != one);
    }

    /** Whether a half-edge goes right, or straight towards higher y; its left side is then the upper one. */
    private boolean isRightward(int half) {
        return rank[lines.origin(half)] < rank[lines.origin(half ^ 1)];
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
        if (node == low.length) {
            low = Arrays.copyOf(low, 2 * node);
            high = Arrays.copyOf(high, 2 * node);
            edgeOf = Arrays.copyOf(edgeOf, 2 * node);
        }
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
