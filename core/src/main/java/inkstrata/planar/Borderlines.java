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

    private Borderlines(EdgeTable table, HalfEdges halves, int[] kind) {
        this.x = table.x();
        this.y = table.y();
        this.halves = halves;
        this.kind = kind;
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
        int[] from = new int[count];
        int[] to = new int[count];
        int[] kind = new int[2 * count];
        int k = 0;
        for (int e = 0; e < table.from().length; e++) {
            int left = kind(table.left()[e], kindOfStack);
            int right = kind(table.right()[e], kindOfStack);
            if (left != right) {
                from[k] = table.from()[e];
                to[k] = table.to()[e];
                kind[2 * k] = left;
                kind[2 * k + 1] = right;
                k++;
            }
        }
        Borderlines lines = new Borderlines(table, new HalfEdges(table.x(), table.y(), from, to), kind);
        lines.checkStacks();
        return lines;
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
