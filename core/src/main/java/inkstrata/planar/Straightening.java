package inkstrata.planar;

import java.util.Arrays;

/**
 * Takes out vertices that only hidden outlines and tile cuts left behind, and those on straight lines.
 *
 * <p>Along a chain, successive edges of one source segment are joined to one edge, the chord, wherever that is safe; where
 * not, at the vertex farthest from the chord they become two parts, each tried on its own. Then vertices at which the way
 * goes straight on, exactly, go too. A vertex is at most {@link #MOST_DRIFT} from the chord that replaces it, across its longer
 * extent; as its ends are within a step of the source segment, so is the whole chord.
 *
 * <p><b>Why it is safe.</b> A run of edges p0, …, pn may become the edge p0 pn if
 * <ol>
 *   <li>two edges meet at each of p1, …, pn-1;
 *   <li>the way along (see {@link Strip}) grows at each step from p0 to pn;
 *   <li>their {@link Strip}, the narrowest around the run, holds no other vertex of the map;
 *   <li>no other edge joins p0 and pn, or will.
 * </ol>
 * Take out p1, p2, … in turn. Each time the triangle (p0, pi, pi+1) is part of the strip, which is convex; the vertices still
 * to come lie farther along than all of the triangle; so no vertex but its corners is in it. An edge that met p0 pi+1 in
 * another point than a common end would go on into the triangle, or along that side. It can leave neither by the other two sides,
 * which are edges, nor by p0 pi+1 again, being straight; so it would end in the triangle, at p0 or at pi+1, and would be
 * p0 pi+1 itself, which for i+1 &lt; n has no room at pi+1 and for i+1 = n is ruled out. So no edge meets the new one but at
 * vertices, and every face keeps its neighbours.
 *
 * <p>All runs are judged by the map as it was, whose vertices include those of every map on the way, so they may all be
 * joined at once and in any order.
 */
final class Straightening {
    /** In grid steps. Snapped pieces of one segment lie that near to the chord of their ends nearly always. */
    static final int MOST_DRIFT = 1;

    private static final int NONE = -1;

    private final EdgeTable table;
    private final Segments segments;
    private final StackChains chains;
    private final VertexGrid grid;
    private final int[] marks;
    private int mark;

    /** Of the chain at hand: the segment each edge follows, and which vertices stay. */
    private int[] follows = new int[64];

    private boolean[] stays = new boolean[65];
    private final Ints open = new Ints(64);
    private final JoinedEdges result;

    private Straightening(EdgeTable table, Segments segments) {
        this.table = table;
        this.segments = segments;
        this.chains = new StackChains(table);
        this.grid = new VertexGrid(table.x(), table.y());
        this.marks = new int[table.x().length];
        this.result = new JoinedEdges(table);
    }

    /**
     * The same map with fewer vertices; work grows as n log n.
     *
     * @param segments that the edges' sources name
     */
    static EdgeTable of(EdgeTable table, Segments segments) {
        Straightening straightening = new Straightening(table, segments);
        while (straightening.chains.next()) {
            straightening.chain();
        }
        return straightening.result.table();
    }

    private void chain() {
        int n = chains.size();
        if (n == 1) {
            result.add(chains, 0, 1, table.source()[chains.edge(0)]);
            return;
        }
        prepare(n);
        for (int from = 0; from < n; ) {
            int to = from + 1;
            while (to < n && isSameLine(follows[from], follows[to])) {
                to++;
            }
            join(from, to);
            from = to;
        }
        goStraightOn(n);
        int from = 0;
        for (int to = 1; to <= n; to++) {
            if (stays[to]) {
                result.add(chains, from, to, common(from, to));
                from = to;
            }
        }
    }

    private void prepare(int n) {
        if (follows.length < n) {
            follows = new int[n + (n >> 1)];
            stays = new boolean[follows.length + 1];
        }
        for (int i = 0; i < n; i++) {
            follows[i] = table.source()[chains.edge(i)];
        }
        Arrays.fill(stays, 0, n + 1, true);
    }

    private boolean isSameLine(int one, int other) {
        return one != NONE && other != NONE && (one == other || segments.haveSameEnds(one, other));
    }

    private void join(int first, int last) {
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
        int ax = x(from);
        int ay = y(from);
        int bx = x(to);
        int by = y(to);
        Strip line = new Strip(ax, ay, bx, by, 0, 0);
        long least = 0;
        long most = 0;
        int before = 0;
        boolean grows = true;
        int farthest = NONE;
        for (int i = from + 1; i < to; i++) {
            int along = line.along(x(i), y(i));
            grows &= along > before;
            before = along;
            long across = line.across(x(i), y(i));
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
        mark++;
        for (int i = from; i <= to; i++) {
            marks[chains.vertex(i)] = mark;
        }
        return grid.anyIn(new Strip(ax, ay, bx, by, least, most), MOST_DRIFT, marks, mark) ? farthest : NONE;
    }

    private boolean isBetter(int i, int than, Strip line, int from, int to) {
        long farther = Math.abs(line.across(x(i), y(i))) - Math.abs(line.across(x(than), y(than)));
        if (farther != 0) {
            return farther > 0;
        }
        int nearer = Math.abs(2 * than - from - to) - Math.abs(2 * i - from - to);
        if (nearer != 0) {
            return nearer > 0;
        }
        return x(i) != x(than) ? x(i) < x(than) : y(i) < y(than);
    }

    /** Takes out vertices in the middle of straight lines, but not where a curve goes on: its range would be lost. */
    private void goStraightOn(int n) {
        int before = 0;
        for (int i = 1; i < n; i++) {
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
        if (Predicates.cross(x(before), y(before), x(next), y(next), x(at), y(at)) != 0) {
            return false;
        }
        Strip line = new Strip(x(before), y(before), x(next), y(next), 0, 0);
        int along = line.along(x(at), y(at));
        return along > 0 && along < line.along(x(next), y(next));
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

    private int x(int place) {
        return table.x()[chains.vertex(place)];
    }

    private int y(int place) {
        return table.y()[chains.vertex(place)];
    }
}
