package inkstrata.planar;

import java.util.Arrays;

/** Collects the edges of a straightened map; of runs that would become the same edge none is joined. */
final class JoinedEdges {
    private final EdgeTable table;
    private final Ints from;
    private final Ints to;
    private final Ints left;
    private final Ints right;
    private final Ints source;
    /** For each joined edge: its number, how many edges it replaces, and which. */
    private final Ints replaced = new Ints(64);

    JoinedEdges(EdgeTable table) {
        this.table = table;
        int expected = table.from().length;
        from = new Ints(expected);
        to = new Ints(expected);
        left = new Ints(expected);
        right = new Ints(expected);
        source = new Ints(expected);
    }

    /** Adds the way along a chain between two of its vertices as one edge. */
    void add(StackChains chain, int start, int end, int segment) {
        if (end - start > 1) {
            replaced.add(from.size());
            replaced.add(end - start);
            for (int i = start; i < end; i++) {
                replaced.add(chain.edge(i));
            }
        }
        from.add(chain.vertex(start));
        to.add(chain.vertex(end));
        left.add(chain.left());
        right.add(chain.right());
        source.add(segment);
    }

    /** All edges, and the vertices that still have some, in their old order. */
    EdgeTable table() {
        if (replaced.size() == 0) {
            return table;
        }
        undoEqualOnes();
        int[] number = new int[table.x().length];
        for (int e = 0; e < from.size(); e++) {
            number[from.get(e)] = 1;
            number[to.get(e)] = 1;
        }
        int kept = 0;
        int[] x = new int[number.length];
        int[] y = new int[number.length];
        for (int v = 0; v < number.length; v++) {
            if (number[v] > 0) {
                x[kept] = table.x()[v];
                y[kept] = table.y()[v];
                number[v] = kept++;
            }
        }
        for (int e = 0; e < from.size(); e++) {
            from.set(e, number[from.get(e)]);
            to.set(e, number[to.get(e)]);
        }
        return new EdgeTable(
                Arrays.copyOf(x, kept),
                Arrays.copyOf(y, kept),
                from.toArray(),
                to.toArray(),
                left.toArray(),
                right.toArray(),
                source.toArray());
    }

    private void undoEqualOnes() {
        boolean[] isEnd = new boolean[table.x().length];
        for (int r = 0; r < replaced.size(); r += 2 + replaced.get(r + 1)) {
            isEnd[from.get(replaced.get(r))] = true;
            isEnd[to.get(replaced.get(r))] = true;
        }
        PointTable pairs = new PointTable(replaced.size() / 4);
        Ints equal = new Ints(4);
        for (int e = 0; e < from.size(); e++) {
            if (isEnd[from.get(e)] && isEnd[to.get(e)]) {
                int known = pairs.size();
                int pair = pair(pairs, e);
                if (pair < known) {
                    equal.add(pair);
                }
            }
        }
        if (equal.size() == 0) {
            return;
        }
        boolean[] isEqual = new boolean[pairs.size()];
        for (int i = 0; i < equal.size(); i++) {
            isEqual[equal.get(i)] = true;
        }
        for (int r = 0; r < replaced.size(); r += 2 + replaced.get(r + 1)) {
            if (isEqual[pair(pairs, replaced.get(r))]) {
                undo(r);
            }
        }
    }

    private int pair(PointTable pairs, int e) {
        return pairs.number(Math.min(from.get(e), to.get(e)), Math.max(from.get(e), to.get(e)));
    }

    /** Puts the first of the replaced edges back into the joined one's place and the others at the end. */
    private void undo(int r) {
        for (int i = 0; i < replaced.get(r + 1); i++) {
            int old = replaced.get(r + 2 + i);
            if (i == 0) {
                set(replaced.get(r), old);
            } else {
                from.add(table.from()[old]);
                to.add(table.to()[old]);
                left.add(table.left()[old]);
                right.add(table.right()[old]);
                source.add(table.source()[old]);
            }
        }
    }

    private void set(int e, int old) {
        from.set(e, table.from()[old]);
        to.set(e, table.to()[old]);
        left.set(e, table.left()[old]);
        right.set(e, table.right()[old]);
        source.set(e, table.source()[old]);
    }
}
