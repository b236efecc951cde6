package inkstrata.planar;

import java.util.Arrays;

/**
 * The edges of one noded tile: each part of a chain once, however many segments were bent onto it, and the frame.
 *
 * <p>Edge {@code e} joins two vertices, {@link #from} the smaller number. Its <em>threads</em> are the segments bent onto
 * it; an edge whose threads' runs cancel is dead and left out, unless it belongs to the frame.
 */
final class TileEdges {
    private static final int LEFT = 0;
    private static final int LOW = 1;
    private static final int RIGHT = 2;
    private static final int HIGH = 3;
    private static final int SIDES = 4;

    private final TileSegments segments;
    private final PointTable vertices;
    private final Ints from = new Ints(64);
    private final Ints to = new Ints(64);
    private final Ints firstThread = new Ints(64);
    private final Ints threadSegment = new Ints(64);
    private final Ints threadForward = new Ints(64);
    private final Ints nextThread = new Ints(64);
    private int[] slots;
    private boolean[] onFrame = new boolean[0];
    private final int[][] side = new int[SIDES][];

    private TileEdges(TileSegments segments, PointTable vertices) {
        this.segments = segments;
        this.vertices = vertices;
        this.slots = new int[Integer.highestOneBit(Math.max(16, segments.count)) * 8];
    }

    static TileEdges of(Box box, TileSegments segments, TileNoding noding) {
        TileEdges edges = new TileEdges(segments, noding.vertices());
        for (int s = 0; s < segments.count; s++) {
            int end = noding.firstOfChain(s + 1);
            for (int k = noding.firstOfChain(s) + 1; k < end; k++) {
                edges.thread(s, noding.chainVertex(k - 1), noding.chainVertex(k));
            }
        }
        edges.dropDead();
        edges.addFrame(box);
        return edges;
    }

    int count() {
        return from.size();
    }

    int from(int edge) {
        return from.get(edge);
    }

    int to(int edge) {
        return to.get(edge);
    }

    PointTable vertices() {
        return vertices;
    }

    boolean onFrame(int edge) {
        return onFrame[edge];
    }

    /** Vertices along the left side, from low to high. */
    int[] leftSide() {
        return side[LEFT];
    }

    /** Vertices along the low side, from left to right. */
    int[] lowSide() {
        return side[LOW];
    }

    /** Vertices along the right side, from low to high. */
    int[] rightSide() {
        return side[RIGHT];
    }

    /** Vertices along the high side, from left to right. */
    int[] highSide() {
        return side[HIGH];
    }

    /** The edge between two vertices, which must exist. */
    int between(int a, int b) {
        return find(Math.min(a, b), Math.max(a, b));
    }

    /** First segment bent onto an edge, or -1. */
    int firstThread(int edge) {
        return firstThread.get(edge);
    }

    int nextThread(int thread) {
        return nextThread.get(thread);
    }

    int threadSegment(int thread) {
        return threadSegment.get(thread);
    }

    /** 1 if the segment runs from the edge's {@link #from} to its {@link #to}, else -1. */
    int threadForward(int thread) {
        return threadForward.get(thread);
    }

    /** A source segment of the topmost outline along an edge, or -1. */
    int source(int edge) {
        int topmost = Integer.MAX_VALUE;
        int source = -1;
        for (int t = firstThread(edge); t >= 0; t = nextThread(t)) {
            int run = segments.firstRun(threadSegment(t));
            if (segments.runOutline(run) < topmost) {
                topmost = segments.runOutline(run);
                source = segments.runSource(run);
            }
        }
        return source;
    }

    private void thread(int segment, int a, int b) {
        int edge = number(Math.min(a, b), Math.max(a, b));
        threadSegment.add(segment);
        threadForward.add(a < b ? 1 : -1);
        nextThread.add(firstThread.get(edge));
        firstThread.set(edge, nextThread.size() - 1);
    }

    private int number(int a, int b) {
        int edge = find(a, b);
        if (edge < 0) {
            edge = from.size();
            slots[-1 - slotOf(a, b)] = edge + 1;
            from.add(a);
            to.add(b);
            firstThread.add(-1);
            if (4 * from.size() > slots.length) {
                rehash();
            }
        }
        return edge;
    }

    private int find(int a, int b) {
        int at = slotOf(a, b);
        return at < 0 ? -1 : slots[at] - 1;
    }

    /** The slot that holds the edge, or -1 less the free slot where it belongs. */
    private int slotOf(int a, int b) {
        int mask = slots.length - 1;
        int h = a * 0x9E3779B1 + b * 0x85EBCA77;
        h ^= h >>> 15;
        int slot = h & mask;
        while (slots[slot] != 0) {
            int e = slots[slot] - 1;
            if (from.get(e) == a && to.get(e) == b) {
                return slot;
            }
            slot = (slot + 1) & mask;
        }
        return -1 - slot;
    }

    private void rehash() {
        slots = new int[slots.length * 2];
        for (int e = 0; e < from.size(); e++) {
            slots[-1 - slotOf(from.get(e), to.get(e))] = e + 1;
        }
    }

    private void dropDead() {
        int[] oldFrom = from.toArray();
        int[] oldTo = to.toArray();
        int[] oldFirst = firstThread.toArray();
        from.clear();
        to.clear();
        firstThread.clear();
        Arrays.fill(slots, 0);
        for (int e = 0; e < oldFrom.length; e++) {
            if (isLive(oldFirst[e])) {
                firstThread.set(number(oldFrom[e], oldTo[e]), oldFirst[e]);
            }
        }
    }

    /** Whether what runs along an edge does not cancel; a single segment never does. */
    private boolean isLive(int first) {
        if (nextThread.get(first) < 0) {
            return true;
        }
        int runs = 0;
        for (int t = first; t >= 0; t = nextThread.get(t)) {
            runs += segments.firstRun(threadSegment.get(t) + 1) - segments.firstRun(threadSegment.get(t));
        }
        long[] counted = new long[runs];
        int n = 0;
        for (int t = first; t >= 0; t = nextThread.get(t)) {
            int s = threadSegment.get(t);
            for (int run = segments.firstRun(s); run < segments.firstRun(s + 1); run++) {
                int count = threadForward.get(t) * segments.runCount(run);
                counted[n++] = (long) segments.runOutline(run) << 32 | (count + 0x40000000L);
            }
        }
        Arrays.sort(counted);
        for (int i = 0; i < n; ) {
            long outline = counted[i] >> 32;
            long sum = 0;
            for (; i < n && counted[i] >> 32 == outline; i++) {
                sum += (counted[i] & 0xffffffffL) - 0x40000000L;
            }
            if (sum != 0) {
                return true;
            }
        }
        return false;
    }

    /** Splits each side of the tile at the ends of live edges on it. */
    private void addFrame(Box box) {
        boolean[] live = new boolean[vertices.size() + SIDES];
        for (int e = 0; e < from.size(); e++) {
            live[from.get(e)] = true;
            live[to.get(e)] = true;
        }
        live[vertices.number(box.left(), box.low())] = true;
        live[vertices.number(box.right(), box.low())] = true;
        live[vertices.number(box.left(), box.high())] = true;
        live[vertices.number(box.right(), box.high())] = true;
        Ints[] on = {new Ints(8), new Ints(8), new Ints(8), new Ints(8)};
        for (int v = 0; v < vertices.size(); v++) {
            if (live[v]) {
                int x = vertices.x(v);
                int y = vertices.y(v);
                addIf(x == box.left(), v, on[LEFT]);
                addIf(y == box.low(), v, on[LOW]);
                addIf(x == box.right(), v, on[RIGHT]);
                addIf(y == box.high(), v, on[HIGH]);
            }
        }
        Ints frame = new Ints(32);
        for (int s = 0; s < SIDES; s++) {
            side[s] = sorted(on[s], s == LEFT || s == RIGHT);
            for (int k = 1; k < side[s].length; k++) {
                int a = side[s][k - 1];
                int b = side[s][k];
                frame.add(number(Math.min(a, b), Math.max(a, b)));
            }
        }
        onFrame = new boolean[from.size()];
        for (int i = 0; i < frame.size(); i++) {
            onFrame[frame.get(i)] = true;
        }
    }

    private static void addIf(boolean yes, int vertex, Ints list) {
        if (yes) {
            list.add(vertex);
        }
    }

    private int[] sorted(Ints list, boolean byY) {
        long[] keyed = new long[list.size()];
        for (int i = 0; i < keyed.length; i++) {
            int v = list.get(i);
            keyed[i] = (long) (byY ? vertices.y(v) : vertices.x(v)) << 32 | v;
        }
        Arrays.sort(keyed);
        int[] result = new int[keyed.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = (int) keyed[i];
        }
        return result;
    }
}
