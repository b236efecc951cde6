package inkstrata.planar;

import inkstrata.measure.Grid;
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
    private final HalfEdges halves;
    private final int[] kind;
    private final int[] edge;

    private Borderlines(int[] x, int[] y, HalfEdges halves, int[] kind, int[] edge) {
        this.x = x;
        this.y = y;
        this.halves = halves;
        this.kind = kind;
        this.edge = edge;
    }

    /**
     * Picks the edges and links them. Their vertices get numbers of their own, so that work grows with what is picked.
     *
     * @param kindOfStack for each stack its kind from 0, or {@link #NONE}
     * @throws IllegalStateException if the stacks around a vertex do not agree
     */
    static Borderlines of(EdgeTable table, int[] kindOfStack) {
        Ints from = new Ints(64);
        Ints to = new Ints(64);
        Ints kind = new Ints(128);
        Ints edge = new Ints(64);
        for (int e = 0; e < table.from().length; e++) {
            int left = kind(table.left()[e], kindOfStack);
            int right = kind(table.right()[e], kindOfStack);
            if (left != right) {
                from.add(table.from()[e]);
                to.add(table.to()[e]);
                kind.add(left);
                kind.add(right);
                edge.add(e);
            }
        }
        int[] known = new int[table.x().length];
        Ints x = new Ints(64);
        Ints y = new Ints(64);
        int[] starts = renumbered(from, table, known, x, y);
        int[] ends = renumbered(to, table, known, x, y);
        int[] xs = x.toArray();
        int[] ys = y.toArray();
        Borderlines lines =
                new Borderlines(xs, ys, new HalfEdges(xs, ys, starts, ends), kind.toArray(), edge.toArray());
        lines.checkStacks();
        return lines;
    }

    /**
     * Numbers vertices in the order in which they are met.
     *
     * @param known for each vertex of the table its number plus one, or 0
     */
    private static int[] renumbered(Ints vertices, EdgeTable table, int[] known, Ints x, Ints y) {
        int[] numbers = new int[vertices.size()];
        for (int i = 0; i < numbers.length; i++) {
            int vertex = vertices.get(i);
            if (known[vertex] == 0) {
                x.add(table.x()[vertex]);
                y.add(table.y()[vertex]);
                known[vertex] = x.size();
            }
            numbers[i] = known[vertex] - 1;
        }
        return numbers;
    }

    /** How many half-edges. */
    int size() {
        return kind.length;
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
        return halves.origin(half);
    }

    /** What lies on the left of a half-edge. */
    int kind(int half) {
        return kind[half];
    }

    /** The next half-edge of the walk. */
    int next(int half) {
        return halves.next(half);
    }

    /** The edge of the table that a half-edge runs along; forwards if the half-edge's number is even. */
    int edge(int half) {
        return edge[half >> 1];
    }

    /** How many walks. */
    int walkCount() {
        return halves.cycleCount();
    }

    int walkOf(int half) {
        return halves.cycleOf(half);
    }

    int firstOfWalk(int walk) {
        return halves.firstHalf(walk);
    }

    /** Twice the area that lies to the left of a walk, in square grid steps; negative for one around a hole. */
    long doubledArea(int walk) {
        return halves.doubledArea(walk);
    }

    private static int kind(int stack, int[] kindOfStack) {
        return stack == EdgeTable.OUTSIDE ? NONE : kindOfStack[stack];
    }

    private void checkStacks() {
        for (int h = 0; h < size(); h++) {
            if (kind[h] != kind[next(h)]) {
                int vertex = origin(next(h));
                throw new IllegalStateException(String.format(
                        Locale.ROOT,
                        "the stacks around the vertex at %.5f, %.5f mm do not agree",
                        Grid.millimetres(x[vertex]),
                        Grid.millimetres(y[vertex])));
            }
        }
    }
}
