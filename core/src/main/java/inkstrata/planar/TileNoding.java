package inkstrata.planar;

import java.util.Arrays;

/**
 * Snap-rounds the segments of one tile: ends and rounded crossings are hot pixels, and each segment gets a vertex at every hot
 * pixel it passes.
 *
 * <p>All pairs of a cell are tested, but a crossing or an end is acted on only in the cell that holds its rounded place:
 * nothing is found twice, and all who pass that pixel are listed there. So one pass is enough. With all ends and all
 * rounded crossings hot, bent segments meet only at vertices (Hobby 1999).
 */
final class TileNoding {
    private final TileSegments segments;
    private final TileCells cells;
    private final HotPixels vertices;

    /** For each segment that passes a hot pixel the two together: the segment in the upper half of the bits. */
    private long[] hits;

    private int hitCount;

    private int[] ax = new int[32];
    private int[] ay = new int[32];
    private int[] bx = new int[32];
    private int[] by = new int[32];
    private int[] id = new int[32];

    private int[] firstOfChain;
    private int[] chain;

    private TileNoding(Box box, TileSegments segments) {
        this.segments = segments;
        this.cells = new TileCells(box, segments);
        this.vertices = new HotPixels(segments.count * 2);
        this.hits = new long[segments.count * 3 + 16];
    }

    static TileNoding of(Box box, TileSegments segments) {
        TileNoding noding = new TileNoding(box, segments);
        for (int cell = 0; cell < noding.cells.count(); cell++) {
            noding.node(cell);
        }
        noding.makeChains();
        return noding;
    }

    /** All hot pixels. */
    HotPixels vertices() {
        return vertices;
    }

    /** Where a segment's chain begins in {@link #chainVertex}; it ends where the next one's begins. */
    int firstOfChain(int segment) {
        return firstOfChain[segment];
    }

    /** The vertices of all segments, from the smaller end to the larger. */
    int chainVertex(int at) {
        return chain[at];
    }

    private void node(int cell) {
        int from = cells.firstListed(cell);
        int n = cells.endListed(cell) - from;
        if (n == 0) {
            return;
        }
        copy(from, n);
        vertices.beginCell();
        for (int i = 0; i < n; i++) {
            if (cells.cellOf(ax[i], ay[i]) == cell) {
                heat(ax[i], ay[i], n);
            }
            if (cells.cellOf(bx[i], by[i]) == cell) {
                heat(bx[i], by[i], n);
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                cross(i, j, cell, n);
            }
        }
    }

    private void copy(int from, int n) {
        if (n > id.length) {
            int capacity = n + (n >> 1);
            ax = new int[capacity];
            ay = new int[capacity];
            bx = new int[capacity];
            by = new int[capacity];
            id = new int[capacity];
        }
        for (int i = 0; i < n; i++) {
            int s = cells.segment(from + i);
            id[i] = s;
            ax[i] = segments.ax[s];
            ay[i] = segments.ay[s];
            bx[i] = segments.bx[s];
            by[i] = segments.by[s];
        }
    }

    private void cross(int i, int j, int cell, int n) {
        long fromI = Predicates.cross(ax[i], ay[i], bx[i], by[i], ax[j], ay[j]);
        long toI = Predicates.cross(ax[i], ay[i], bx[i], by[i], bx[j], by[j]);
        if ((fromI ^ toI) >= 0) {
            return;
        }
        long fromJ = Predicates.cross(ax[j], ay[j], bx[j], by[j], ax[i], ay[i]);
        long toJ = Predicates.cross(ax[j], ay[j], bx[j], by[j], bx[i], by[i]);
        if ((fromJ ^ toJ) >= 0 || fromI == 0 || toI == 0 || fromJ == 0 || toJ == 0) {
            return;
        }
        // On i the crossing lies at the share fromJ / (fromJ - toJ) of its length.
        int x = Predicates.crossing(ax[i], (long) bx[i] - ax[i], fromJ, fromJ - toJ);
        int y = Predicates.crossing(ay[i], (long) by[i] - ay[i], fromJ, fromJ - toJ);
        if (cells.cellOf(x, y) == cell) {
            heat(x, y, n);
        }
    }

    /** Makes a pixel hot, once, and gives a vertex to all who pass it. */
    private void heat(int x, int y, int n) {
        int known = vertices.size();
        int vertex = vertices.number(x, y);
        if (vertex < known) {
            return;
        }
        for (int k = 0; k < n; k++) {
            if (Predicates.passes(ax[k], ay[k], bx[k], by[k], x, y)) {
                hit(id[k], vertex);
            }
        }
    }

    private void hit(int segment, int vertex) {
        if (hitCount == hits.length) {
            hits = Arrays.copyOf(hits, hitCount + (hitCount >> 1));
        }
        hits[hitCount++] = (long) segment << 32 | vertex;
    }

    /** Sorts each segment's vertices along it by |x - ax| + |y - ay|: passed pixels are monotone in both axes. */
    private void makeChains() {
        int n = segments.count;
        firstOfChain = new int[n + 1];
        for (int i = 0; i < hitCount; i++) {
            firstOfChain[(int) (hits[i] >> 32)]++;
        }
        for (int s = 0; s < n; s++) {
            firstOfChain[s + 1] += firstOfChain[s];
        }
        // Dealt out last first, so that each count ends as the place of the first.
        chain = new int[hitCount];
        for (int i = hitCount - 1; i >= 0; i--) {
            chain[--firstOfChain[(int) (hits[i] >> 32)]] = (int) hits[i];
        }
        for (int s = 0; s < n; s++) {
            sortChain(s, firstOfChain[s], firstOfChain[s + 1]);
        }
    }

    private void sortChain(int s, int from, int to) {
        if (to - from > 48) {
            sortLongChain(s, from, to);
            return;
        }
        for (int i = from + 1; i < to; i++) {
            int vertex = chain[i];
            int far = along(s, vertex);
            int k = i - 1;
            while (k >= from && along(s, chain[k]) > far) {
                chain[k + 1] = chain[k];
                k--;
            }
            chain[k + 1] = vertex;
        }
    }

    private void sortLongChain(int s, int from, int to) {
        long[] keyed = new long[to - from];
        for (int i = from; i < to; i++) {
            keyed[i - from] = (long) along(s, chain[i]) << 32 | chain[i];
        }
        Arrays.sort(keyed);
        for (int i = from; i < to; i++) {
            chain[i] = (int) keyed[i - from];
        }
    }

    private int along(int s, int vertex) {
        return Math.abs(vertices.x(vertex) - segments.ax[s]) + Math.abs(vertices.y(vertex) - segments.ay[s]);
    }
}
