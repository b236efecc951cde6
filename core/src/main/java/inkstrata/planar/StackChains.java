package inkstrata.planar;

/**
 * The edges of a map in chains: ways that pass vertices at which just two edges meet, with the same two stacks beside them.
 *
 * <p>Every edge belongs to one chain. A chain ends where it meets others; one that comes back to itself without meeting any
 * starts and ends at its leftmost vertex (of several the one with the lowest y), which is a corner. Chains are ways of
 * half-edges: 2e along edge e of the table, 2e + 1 against it.
 */
final class StackChains {
    private static final int MANY = 3;

    private final EdgeTable table;
    /** For each vertex how many edges meet there, counted up to {@link #MANY}, and their numbers by exclusive or. */
    private final byte[] degree;

    private final int[] met;
    private final boolean[] passed;

    private final int[] halves;
    private int size;
    private final Ints starts = new Ints(1024);

    private StackChains(EdgeTable table) {
        this.table = table;
        int vertices = table.x().length;
        degree = new byte[vertices];
        met = new int[vertices];
        passed = new boolean[vertices];
        halves = new int[table.from().length];
    }

    static StackChains of(EdgeTable table, Crew crew) {
        StackChains chains = new StackChains(table);
        for (int e = 0; e < table.from().length; e++) {
            chains.meet(table.from()[e], e);
            chains.meet(table.to()[e], e);
        }
        crew.share(table.from().length, chains::pass);
        chains.collect();
        return chains;
    }

    int count() {
        return starts.size() - 1;
    }

    /** The place of a chain's first half-edge; its last one comes before the next chain's first. */
    int start(int chain) {
        return starts.get(chain);
    }

    int half(int place) {
        return halves[place];
    }

    /** The vertex at which a half-edge starts. */
    int origin(int half) {
        return (half & 1) == 0 ? table.from()[half >> 1] : table.to()[half >> 1];
    }

    /** The stack on a half-edge's left, the side of positive cross products. */
    int left(int half) {
        return (half & 1) == 0 ? table.left()[half >> 1] : table.right()[half >> 1];
    }

    private void meet(int vertex, int e) {
        met[vertex] ^= e;
        if (degree[vertex] < MANY) {
            degree[vertex]++;
        }
    }

    /** Finds which ends of edges chains pass; of the two edges that meet there the one with the smaller number is asked. */
    private int pass(int first, int end) {
        for (int e = first; e < end; e++) {
            passAt(table.from()[e], e);
            passAt(table.to()[e], e);
        }
        return end - first;
    }

    private void passAt(int vertex, int e) {
        int other = met[vertex] ^ e;
        if (degree[vertex] == 2 && e < other) {
            boolean sameWay = (table.to()[e] == vertex) == (table.from()[other] == vertex);
            int left = sameWay ? table.left()[other] : table.right()[other];
            int right = sameWay ? table.right()[other] : table.left()[other];
            passed[vertex] = table.left()[e] == left && table.right()[e] == right;
        }
    }

    private void collect() {
        boolean[] done = new boolean[table.from().length];
        Ints back = new Ints(64);
        starts.add(0);
        for (int e = 0; e < done.length; e++) {
            if (!done[e]) {
                collect(e, back, done);
                starts.add(size);
            }
        }
    }

    /** Goes back from an edge to where its chain begins, and from there on. */
    private void collect(int e, Ints back, boolean[] done) {
        int start = size;
        back.clear();
        done[e] = true;
        int at = 2 * e;
        while (passed[origin(at)]) {
            at = before(at);
            if (done[at >> 1]) {
                break; // All around.
            }
            done[at >> 1] = true;
            back.add(at);
        }
        while (back.size() > 0) {
            halves[size++] = back.dropLast();
        }
        halves[size++] = 2 * e;
        at = 2 * e;
        while (passed[origin(at ^ 1)]) {
            at = before(at ^ 1) ^ 1;
            if (done[at >> 1]) {
                break;
            }
            done[at >> 1] = true;
            halves[size++] = at;
        }
        if (passed[origin(halves[start])]) {
            startAtLeftmost(start);
        }
    }

    /** The half-edge that ends where another one starts, at a vertex that chains pass. */
    private int before(int half) {
        int vertex = origin(half);
        int e = met[vertex] ^ (half >> 1);
        return table.to()[e] == vertex ? 2 * e : 2 * e + 1;
    }

    private void startAtLeftmost(int start) {
        int leftmost = start;
        for (int i = start + 1; i < size; i++) {
            leftmost = isLeftOf(origin(halves[i]), origin(halves[leftmost])) ? i : leftmost;
        }
        int[] turned = new int[size - start];
        System.arraycopy(halves, leftmost, turned, 0, size - leftmost);
        System.arraycopy(halves, start, turned, size - leftmost, leftmost - start);
        System.arraycopy(turned, 0, halves, start, turned.length);
    }

    private boolean isLeftOf(int one, int other) {
        int[] x = table.x();
        return x[one] < x[other] || (x[one] == x[other] && table.y()[one] < table.y()[other]);
    }
}
