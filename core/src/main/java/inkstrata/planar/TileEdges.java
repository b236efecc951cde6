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

    private static final int NONE = -1;

    private final TileSegments segments;
    private final HotPixels vertices;

    private int count;
    private int[] from;
    private int[] to;
    private int[] firstThread;
    /** For each vertex the last edge that starts at it, and for each edge the one before that starts at the same vertex. */
    private final int[] lastFrom;

    private int[] beforeFrom;

    private int threadCount;
    /** Twice the segment, and one more if it runs against the edge. */
    private final int[] threads;

    private final int[] nextThread;
    private boolean anyShared;

    private boolean[] onFrame = new boolean[0];
    private final int[][] side = new int[SIDES][];

    private TileEdges(TileSegments segments, TileNoding noding) {
        this.segments = segments;
        this.vertices = noding.vertices();
        int steps = noding.firstOfChain(segments.count) - segments.count;
        this.from = new int[steps];
        this.to = new int[steps];
        this.firstThread = new int[steps];
        this.beforeFrom = new int[steps];
        this.threads = new int[steps];
        this.nextThread = new int[steps];
        this.lastFrom = new int[vertices.size() + SIDES];
        Arrays.fill(lastFrom, NONE);
    }

    static TileEdges of(Box box, TileSegments segments, TileNoding noding) {
        TileEdges edges = new TileEdges(segments, noding);
        for (int s = 0; s < segments.count; s++) {
            int end = noding.firstOfChain(s + 1);
            for (int k = noding.firstOfChain(s) + 1; k < end; k++) {
                edges.thread(s, noding.chainVertex(k - 1), noding.chainVertex(k));
            }
        }
        if (edges.anyShared) {
            edges.dropDead();
        }
        edges.addFrame(box);
        return edges;
    }

    int count() {
        return count;
    }

    int from(int edge) {
        return from[edge];
    }

    int to(int edge) {
        return to[edge];
    }

    /** The smaller end of each edge; the array may be longer than needed. */
    int[] from() {
        return from;
    }

    /** The larger end of each edge; likewise. */
    int[] to() {
        return to;
    }

    HotPixels vertices() {
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
        return firstThread[edge];
    }

    int nextThread(int thread) {
        return nextThread[thread];
    }

    int threadSegment(int thread) {
        return threads[thread] >> 1;
    }

    /** 1 if the segment runs from the edge's {@link #from} to its {@link #to}, else -1. */
    int threadForward(int thread) {
        return (threads[thread] & 1) == 0 ? 1 : -1;
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
        threads[threadCount] = 2 * segment + (a < b ? 0 : 1);
        nextThread[threadCount] = firstThread[edge];
        anyShared |= firstThread[edge] != NONE;
        firstThread[edge] = threadCount++;
    }

    private int number(int a, int b) {
        int known = find(a, b);
        if (known != NONE) {
            return known;
        }
        if (count == from.length) {
            int capacity = count + (count >> 1) + 16;
            from = Arrays.copyOf(from, capacity);
            to = Arrays.copyOf(to, capacity);
            firstThread = Arrays.copyOf(firstThread, capacity);
            beforeFrom = Arrays.copyOf(beforeFrom, capacity);
        }
        from[count] = a;
        to[count] = b;
        firstThread[count] = NONE;
        beforeFrom[count] = lastFrom[a];
        lastFrom[a] = count;
        return count++;
    }

    private int find(int a, int b) {
        int edge = lastFrom[a];
        while (edge != NONE && to[edge] != b) {
            edge = beforeFrom[edge];
        }
        return edge;
    }

    /** Those that stay keep their order. */
    private void dropDead() {
        int all = count;
        count = 0;
        Arrays.fill(lastFrom, NONE);
        for (int e = 0; e < all; e++) {
            int first = firstThread[e];
            if (isLive(first)) {
                firstThread[number(from[e], to[e])] = first;
            }
        }
    }

    /** Whether what runs along an edge does not cancel; a single segment never does. */
    private boolean isLive(int first) {
        if (nextThread[first] == NONE) {
            return true;
        }
        int runs = 0;
        for (int t = first; t >= 0; t = nextThread[t]) {
            runs += segments.firstRun(threadSegment(t) + 1) - segments.firstRun(threadSegment(t));
        }
        long[] counted = new long[runs];
        int n = 0;
        for (int t = first; t >= 0; t = nextThread[t]) {
            int s = threadSegment(t);
            for (int run = segments.firstRun(s); run < segments.firstRun(s + 1); run++) {
                int count = threadForward(t) * segments.runCount(run);
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
        for (int e = 0; e < count; e++) {
            live[from[e]] = true;
            live[to[e]] = true;
        }
        live[corner(box.left(), box.low())] = true;
        live[corner(box.right(), box.low())] = true;
        live[corner(box.left(), box.high())] = true;
        live[corner(box.right(), box.high())] = true;
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
        onFrame = new boolean[count];
        for (int i = 0; i < frame.size(); i++) {
            onFrame[frame.get(i)] = true;
        }
    }

    private int corner(int x, int y) {
        for (int v = 0; v < vertices.size(); v++) {
            if (vertices.x(v) == x && vertices.y(v) == y) {
                return v;
            }
        }
        return vertices.append(x, y);
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
