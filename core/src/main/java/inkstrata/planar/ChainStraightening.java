package inkstrata.planar;

import java.util.Arrays;

/** Decides which vertices of chains go, one chain after another, as {@link Straightening} tells; has scratch space of its own. */
final class ChainStraightening {
    /** In grid steps. Snapped pieces of one segment lie that near to the chord of their ends nearly always. */
    static final int MOST_DRIFT = 1;

    private static final int NONE = -1;

    private final EdgeTable table;
    private final Segments segments;
    private final StackChains chains;
    private final VertexGrid grid;
    private final JoinedEdges edges;
    /** Start and end of each run joined, in turn. */
    private final Ints joined = new Ints(256);

    /** Of the chain at hand: where it starts and how many edges it has, and the segment each follows. */
    private int start;

    private int size;
    private int[] follows = new int[64];
    /** Of its vertices, one more: where they are, and which of them stay. */
    private int[] x = new int[65];

    private int[] y = new int[65];
    private boolean[] stays = new boolean[65];
    private final Ints open = new Ints(64);

    ChainStraightening(EdgeTable table, Segments segments, StackChains chains, VertexGrid grid, JoinedEdges edges) {
        this.table = table;
        this.segments = segments;
        this.chains = chains;
        this.grid = grid;
        this.edges = edges;
    }

    /** Does those from one chain on until before another; gives start and end of each run joined, in turn. */
    int[] straighten(int first, int end) {
        for (int chain = first; chain < end; chain++) {
            start = chains.start(chain);
            size = chains.start(chain + 1) - start;
            if (size > 1) {
                straighten();
            }
        }
        return joined.toArray();
    }

    private void straighten() {
        prepare();
        for (int from = 0; from < size; ) {
            int to = from + 1;
            while (to < size && isSameLine(follows[from], follows[to])) {
                to++;
            }
            join(from, to);
            from = to;
        }
        goStraightOn();
        int from = 0;
        for (int to = 1; to <= size; to++) {
            if (stays[to]) {
                if (to - from > 1) {
                    edges.join(start + from, start + to, common(from, to));
                    joined.add(start + from);
                    joined.add(start + to);
                }
                from = to;
            }
        }
    }

    private void prepare() {
        if (follows.length < size) {
            follows = new int[size + (size >> 1)];
            x = new int[follows.length + 1];
            y = new int[follows.length + 1];
            stays = new boolean[follows.length + 1];
        }
        for (int i = 0; i < size; i++) {
            follows[i] = table.source()[chains.half(start + i) >> 1];
        }
        for (int i = 0; i <= size; i++) {
            int vertex = vertex(i);
            x[i] = table.x()[vertex];
            y[i] = table.y()[vertex];
            stays[i] = true;
        }
    }

    private boolean isSameLine(int one, int other) {
        return one != NONE && other != NONE && (one == other || segments.haveSameEnds(one, other));
    }

    private void join(int first, int last) {
        if (last - first < 2) {
            return;
        }
        open.clear();
        open.add(first);
        open.add(last);
        while (open.size() > 0) {
            int to = open.dropLast();
            int from = open.dropLast();
            if (to - from < 2) {
                continue;
            }
            int split = splitOf(from, to);
            if (split == NONE) {
                Arrays.fill(stays, from + 1, to, false);
            } else {
                open.add(from);
                open.add(split);
                open.add(split);
                open.add(to);
            }
        }
    }

    /** Where to part a run that may not be joined: at the vertex farthest off, of several the one next to the middle; or {@link #NONE}. */
    private int splitOf(int from, int to) {
        int ax = x[from];
        int ay = y[from];
        int bx = x[to];
        int by = y[to];
        Strip line = new Strip(ax, ay, bx, by, 0, 0);
        long least = 0;
        long most = 0;
        int before = 0;
        boolean grows = true;
        int farthest = NONE;
        for (int i = from + 1; i < to; i++) {
            int along = line.along(x[i], y[i]);
            grows &= along > before;
            before = along;
            long across = line.across(x[i], y[i]);
            least = Math.min(least, across);
            most = Math.max(most, across);
            farthest = farthest == NONE || isBetter(i, farthest, line, from, to) ? i : farthest;
        }
        grows &= line.along(bx, by) > before;
        boolean near = line.isNear(least, MOST_DRIFT) && line.isNear(most, MOST_DRIFT);
        if (!grows || !near) {
            return farthest;
        }
        if (least == 0 && most == 0) {
            return NONE;
        }
        Strip strip = new Strip(ax, ay, bx, by, least, most);
        return grid.anyIn(strip, MOST_DRIFT, vertex -> !isOfRun(vertex, from, to, strip)) ? farthest : NONE;
    }

    /** Whether a vertex belongs to a run whose vertices lie ever farther along a strip. */
    private boolean isOfRun(int vertex, int from, int to, Strip strip) {
        int along = strip.along(table.x()[vertex], table.y()[vertex]);
        int a = from;
        int b = to;
        while (a < b) {
            int middle = (a + b) >>> 1;
            if (strip.along(x[middle], y[middle]) < along) {
                a = middle + 1;
            } else {
                b = middle;
            }
        }
        return vertex(a) == vertex;
    }

    private boolean isBetter(int i, int than, Strip line, int from, int to) {
        long farther = Math.abs(line.across(x[i], y[i])) - Math.abs(line.across(x[than], y[than]));
        if (farther != 0) {
            return farther > 0;
        }
        int nearer = Math.abs(2 * than - from - to) - Math.abs(2 * i - from - to);
        if (nearer != 0) {
            return nearer > 0;
        }
        return x[i] != x[than] ? x[i] < x[than] : y[i] < y[than];
    }

    /** Takes out vertices in the middle of straight lines, but not where a curve goes on: its range would be lost. */
    private void goStraightOn() {
        int before = 0;
        for (int i = 1; i < size; i++) {
            if (!stays[i]) {
                continue;
            }
            int next = i + 1;
            while (!stays[next]) {
                next++;
            }
            if (isStraight(before, i, next) && !isOneCurve(follows[i - 1], follows[i])) {
                stays[i] = false;
            } else {
                before = i;
            }
        }
    }

    private boolean isStraight(int before, int at, int next) {
        if (Predicates.cross(x[before], y[before], x[next], y[next], x[at], y[at]) != 0) {
            return false;
        }
        Strip line = new Strip(x[before], y[before], x[next], y[next], 0, 0);
        int along = line.along(x[at], y[at]);
        return along > 0 && along < line.along(x[next], y[next]);
    }

    private boolean isOneCurve(int one, int other) {
        return one != other
                && one != NONE
                && other != NONE
                && segments.outline(one) == segments.outline(other)
                && segments.command(one) == segments.command(other);
    }

    /** The segment that all edges of a run follow, if it is one. */
    private int common(int from, int to) {
        for (int i = from + 1; i < to; i++) {
            if (!isSameLine(follows[from], follows[i])) {
                return NONE;
            }
        }
        return follows[from];
    }

    /** The vertices of a chain are numbered from 0 on; the last one is where its last edge ends. */
    private int vertex(int place) {
        return place < size
                ? chains.origin(chains.half(start + place))
                : chains.origin(chains.half(start + size - 1) ^ 1);
    }
}
