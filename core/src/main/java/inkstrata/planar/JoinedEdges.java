package inkstrata.planar;

import java.util.List;

/**
 * The edges of a map while runs of them become one each: a joined edge takes the place of its run's first one. Of runs that
 * would become the same edge none is joined.
 */
final class JoinedEdges {
    private final EdgeTable table;
    private final StackChains chains;
    private final int[] from;
    private final int[] to;
    private final int[] left;
    private final int[] right;
    private final int[] source;
    /** Edges that others stand for now, and vertices that lie between them. */
    private final boolean[] goneEdge;

    private final boolean[] goneVertex;

    JoinedEdges(EdgeTable table, StackChains chains) {
        this.table = table;
        this.chains = chains;
        from = table.from().clone();
        to = table.to().clone();
        left = table.left().clone();
        right = table.right().clone();
        source = table.source().clone();
        goneEdge = new boolean[from.length];
        goneVertex = new boolean[table.x().length];
    }

    /** Joins a run of a chain, from one place until before another; threads may do so with chains of their own. */
    void join(int start, int end, int segment) {
        int first = chains.half(start);
        int e = first >> 1;
        from[e] = chains.origin(first);
        to[e] = chains.origin(chains.half(end - 1) ^ 1);
        left[e] = chains.left(first);
        right[e] = chains.left(first ^ 1);
        source[e] = segment;
        setGone(start, end, true);
    }

    private void setGone(int start, int end, boolean gone) {
        for (int place = start + 1; place < end; place++) {
            goneEdge[chains.half(place) >> 1] = gone;
            goneVertex[chains.origin(chains.half(place))] = gone;
        }
    }

    /**
     * All edges, and the vertices that still have some, in their old order.
     *
     * @param joined start and end of all runs that were joined, in turn
     */
    EdgeTable table(List<int[]> joined, Crew crew) {
        undoEqualOnes(joined);
        int[] number = new int[goneVertex.length];
        int vertices = 0;
        for (int v = 0; v < number.length; v++) {
            number[v] = vertices;
            vertices += goneVertex[v] ? 0 : 1;
        }
        int[] x = new int[vertices];
        int[] y = new int[vertices];
        crew.share(number.length, (first, end) -> {
            for (int v = first; v < end; v++) {
                if (!goneVertex[v]) {
                    x[number[v]] = table.x()[v];
                    y[number[v]] = table.y()[v];
                }
            }
            return end - first;
        });
        return withoutGone(number, x, y);
    }

    private EdgeTable withoutGone(int[] number, int[] x, int[] y) {
        int edges = 0;
        for (boolean gone : goneEdge) {
            edges += gone ? 0 : 1;
        }
        EdgeTable kept =
                new EdgeTable(x, y, new int[edges], new int[edges], new int[edges], new int[edges], new int[edges]);
        int at = 0;
        for (int e = 0; e < goneEdge.length; e++) {
            if (!goneEdge[e]) {
                kept.from()[at] = number[from[e]];
                kept.to()[at] = number[to[e]];
                kept.left()[at] = left[e];
                kept.right()[at] = right[e];
                kept.source()[at++] = source[e];
            }
        }
        return kept;
    }

    private void undoEqualOnes(List<int[]> joined) {
        JoinedRuns runs = new JoinedRuns(joined);
        int[] lastAt = new int[goneVertex.length];
        int[] before = new int[runs.count()];
        for (int r = 0; r < before.length; r++) {
            int e = chains.half(runs.start(r)) >> 1;
            int vertex = Math.min(from[e], to[e]);
            before[r] = lastAt[vertex] - 1;
            lastAt[vertex] = r + 1;
        }
        boolean[] isEqual = new boolean[before.length];
        for (int e = 0; e < goneEdge.length; e++) {
            for (int r = lastAt[Math.min(from[e], to[e])] - 1; r >= 0; r = before[r]) {
                int other = chains.half(runs.start(r)) >> 1;
                isEqual[r] |=
                        other != e && !goneEdge[e] && Math.max(from[e], to[e]) == Math.max(from[other], to[other]);
            }
        }
        for (int r = 0; r < isEqual.length; r++) {
            if (isEqual[r]) {
                undo(runs.start(r), runs.end(r));
            }
        }
    }

    private void undo(int start, int end) {
        int e = chains.half(start) >> 1;
        from[e] = table.from()[e];
        to[e] = table.to()[e];
        left[e] = table.left()[e];
        right[e] = table.right()[e];
        source[e] = table.source()[e];
        setGone(start, end, false);
    }
}
