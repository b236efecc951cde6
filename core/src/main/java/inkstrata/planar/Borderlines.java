package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.List;
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

    /** Ints for each edge that is picked. */
    private static final int PICKED = 3;

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
    static Borderlines of(EdgeTable table, int[] kindOfStack, Crew crew) {
        List<int[]> picked = crew.share(table.from().length, (first, end) -> pick(table, kindOfStack, first, end));
        int edges = picked.stream().mapToInt(part -> part.length / PICKED).sum();
        int[] start = new int[edges];
        int[] end = new int[edges];
        int[] kind = new int[2 * edges];
        int[] edge = new int[edges];
        int[] known = new int[table.x().length];
        Ints vertices = new Ints(edges);
        int at = 0;
        for (int[] part : picked) {
            for (int k = 0; k < part.length; k += PICKED) {
                edge[at] = part[k];
                kind[2 * at] = part[k + 1];
                kind[2 * at + 1] = part[k + 2];
                start[at] = number(table.from()[part[k]], known, vertices);
                end[at] = number(table.to()[part[k]], known, vertices);
                at++;
            }
        }
        int[] x = new int[vertices.size()];
        int[] y = new int[vertices.size()];
        for (int v = 0; v < x.length; v++) {
            x[v] = table.x()[vertices.get(v)];
            y[v] = table.y()[vertices.get(v)];
        }
        Borderlines lines = new Borderlines(x, y, new HalfEdges(x, y, start, end), kind, edge);
        lines.checkStacks();
        return lines;
    }

    /** Of the edges from one on until before another those that part two kinds: edge, kind on its left, kind on its right. */
    private static int[] pick(EdgeTable table, int[] kindOfStack, int first, int end) {
        Ints picked = new Ints(PICKED * (end - first) / 2);
        for (int e = first; e < end; e++) {
            int left = kind(table.left()[e], kindOfStack);
            int right = kind(table.right()[e], kindOfStack);
            if (left != right) {
                picked.add(e);
                picked.add(left);
                picked.add(right);
            }
        }
        return picked.toArray();
    }

    /**
     * Numbers vertices in the order in which they are met.
     *
     * @param known for each vertex of the table its number plus one, or 0
     */
    private static int number(int vertex, int[] known, Ints vertices) {
        if (known[vertex] == 0) {
            vertices.add(vertex);
            known[vertex] = vertices.size();
        }
        return known[vertex] - 1;
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

    /** A half-edge that starts at a vertex. */
    int anyFrom(int vertex) {
        return halves.anyFrom(vertex);
    }

    /** The next half-edge around the vertex at which a half-edge starts; in the end that one comes again. */
    int nextAround(int half) {
        return halves.next(half ^ 1);
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
