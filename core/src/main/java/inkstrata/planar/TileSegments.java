package inkstrata.planar;

/**
 * The distinct pieces of one tile, each with the outlines that run along it.
 *
 * <p>Piece {@code s} runs from (ax, ay) to (bx, by), the smaller end first. Its <em>runs</em> say which outline (by its place
 * in the tile) goes along it how often, forwards counted positive. Pieces whose runs cancel are not kept: neither may their
 * ends count as hot, nor may they split the frame.
 */
final class TileSegments {
    int[] ax;
    int[] ay;
    int[] bx;
    int[] by;
    int count;

    private int[] firstRun;
    private int[] runOutline;
    private int[] runCount;
    private int[] runSource;

    /** Takes the pieces of a tile, equal ones merged. */
    static TileSegments of(Tile tile) {
        TileSegments result = new TileSegments();
        int n = tile.pieceCount();
        int[] p = tile.pieces();
        result.ax = new int[n];
        result.ay = new int[n];
        result.bx = new int[n];
        result.by = new int[n];
        int[] next = new int[n];
        int[] tail = new int[n];
        int[] head = new int[n];
        int[] outline = new int[n];
        int[] delta = new int[n];
        int distinct = 0;
        int capacity = Integer.highestOneBit(Math.max(4, n)) * 4;
        int[] slots = new int[capacity];
        for (int i = 0; i < tile.outlines().length; i++) {
            for (int k = tile.start()[i]; k < tile.start()[i + 1]; k++) {
                int at = k * Tile.STRIDE;
                boolean forward = p[at] != p[at + 2] ? p[at] < p[at + 2] : p[at + 1] < p[at + 3];
                int from = forward ? at : at + 2;
                int to = forward ? at + 2 : at;
                outline[k] = i;
                delta[k] = forward ? 1 : -1;
                next[k] = -1;
                int slot = hash(p[from], p[from + 1], p[to], p[to + 1]) & (capacity - 1);
                int s;
                while (true) {
                    s = slots[slot] - 1;
                    if (s < 0
                            || (result.ax[s] == p[from]
                                    && result.ay[s] == p[from + 1]
                                    && result.bx[s] == p[to]
                                    && result.by[s] == p[to + 1])) {
                        break;
                    }
                    slot = (slot + 1) & (capacity - 1);
                }
                if (s < 0) {
                    s = distinct++;
                    slots[slot] = s + 1;
                    result.ax[s] = p[from];
                    result.ay[s] = p[from + 1];
                    result.bx[s] = p[to];
                    result.by[s] = p[to + 1];
                    head[s] = k;
                } else {
                    next[tail[s]] = k;
                }
                tail[s] = k;
            }
        }
        result.sum(distinct, head, next, outline, delta, p);
        return result;
    }

    /** Adds up runs of one outline along one piece and drops what cancels; pieces come grouped by outline. */
    private void sum(int distinct, int[] head, int[] next, int[] outline, int[] delta, int[] pieces) {
        firstRun = new int[distinct + 1];
        Ints outlines = new Ints(outline.length);
        Ints counts = new Ints(outline.length);
        Ints sources = new Ints(outline.length);
        for (int s = 0; s < distinct; s++) {
            int before = outlines.size();
            int k = head[s];
            while (k >= 0) {
                int first = k;
                int total = 0;
                while (k >= 0 && outline[k] == outline[first]) {
                    total += delta[k];
                    k = next[k];
                }
                if (total != 0) {
                    outlines.add(outline[first]);
                    counts.add(total);
                    sources.add(pieces[first * Tile.STRIDE + 4]);
                }
            }
            if (outlines.size() > before) {
                ax[count] = ax[s];
                ay[count] = ay[s];
                bx[count] = bx[s];
                by[count] = by[s];
                firstRun[count++] = before;
            }
        }
        firstRun[count] = outlines.size();
        runOutline = outlines.toArray();
        runCount = counts.toArray();
        runSource = sources.toArray();
    }

    /** First of its runs; they end where the next piece's begin. */
    int firstRun(int segment) {
        return firstRun[segment];
    }

    /** Place of the run's outline in the tile; runs of a piece are in rising order of outline. */
    int runOutline(int run) {
        return runOutline[run];
    }

    /** How often the outline runs along the piece, forwards less backwards; not 0. */
    int runCount(int run) {
        return runCount[run];
    }

    /** A source segment of the run. */
    int runSource(int run) {
        return runSource[run];
    }

    private static int hash(int a, int b, int c, int d) {
        int h = a * 0x9E3779B1 + b * 0x85EBCA77 + c * 0xC2B2AE3D + d * 0x27D4EB2F;
        h ^= h >>> 15;
        h *= 0x2C1B3C6D;
        return h ^ h >>> 13;
    }
}
