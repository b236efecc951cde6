package inkstrata.positive.page;

import inkstrata.measure.Frame;
import java.util.Arrays;

/**
 * A page in pixels, row by row from the top: a pixel is black if its middle lies within an area, found exactly but for the
 * rounding of doubles.
 *
 * <p>By the middle, not by how much of a pixel is covered: where areas of three films meet in one pixel none may cover half of
 * it, and it would be left out on all of them. A middle lies within just one of the areas that fill a sheet. Each row or
 * edge of pixels is at most half a pixel off.
 *
 * <p>Memory grows with the page's edges and with one row, not with the number of rows. Each row costs a sort of the edges that
 * meet it.
 */
final class PixelRows {
    /** Edges that meet a row are packed into a {@code long}: item, pixel, winding. */
    private static final int PIXEL_BITS = 30;

    private static final int WINDING_BITS = 2;
    private static final int ALL_BLACK = 0;
    private static final byte ALL_CLEAR = (byte) 0xff;

    private final PixelEdges edges;
    private final Frame frame;
    private final double pixelMm;
    private final int width;
    private final int height;
    private final byte[] row;

    private int[] active = new int[64];
    private int activeCount;
    private long[] meets = new long[64];
    private int nextEdge;
    private int nextRow;

    PixelRows(Page page, int perInch) {
        edges = new PixelEdges(page);
        frame = page.frame();
        pixelMm = 25.4 / perInch;
        width = count(frame.width(), pixelMm);
        height = count(frame.height(), pixelMm);
        row = new byte[(width + 7) / 8];
    }

    private static int count(double millimetres, double pixelMm) {
        return (int) Math.max(1, Math.rint(millimetres / pixelMm));
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Begins again at the top. */
    void rewind() {
        activeCount = 0;
        nextEdge = 0;
        nextRow = 0;
    }

    /** How many rows were handed over. */
    int done() {
        return nextRow;
    }

    /** The next row, eight pixels a byte, the leftmost the highest bit: 0 is black, 1 clear. Good until the next call. */
    byte[] next() {
        double level = frame.y() + (nextRow + 0.5) * pixelMm;
        nextRow++;
        Arrays.fill(row, ALL_CLEAR);
        activate(level);
        int count = meets(level);
        Arrays.sort(meets, 0, count);
        for (int i = 0; i < count; ) {
            i = item(i, count, level);
        }
        return row;
    }

    private void activate(double level) {
        while (nextEdge < edges.size() && edges.top(edges.fromTop(nextEdge)) <= level) {
            if (activeCount == active.length) {
                active = Arrays.copyOf(active, 2 * activeCount);
            }
            active[activeCount++] = edges.fromTop(nextEdge++);
        }
    }

    /** Packs those that meet a level and drops those that end above it. */
    private int meets(double level) {
        int kept = 0;
        if (meets.length < activeCount) {
            meets = new long[active.length];
        }
        for (int i = 0; i < activeCount; i++) {
            int edge = active[i];
            if (edges.bottom(edge) > level) {
                active[kept] = edge;
                long pixel = pixel(edges.xAt(edge, level));
                meets[kept++] =
                        ((long) edges.item(edge) << PIXEL_BITS | pixel) << WINDING_BITS | (edges.winding(edge) + 1);
            }
        }
        activeCount = kept;
        return kept;
    }

    /** The first pixel whose middle does not lie before that. */
    private int pixel(double x) {
        double first = Math.ceil((x - frame.x()) / pixelMm - 0.5);
        return (int) Math.max(0, Math.min(width, first));
    }

    /** Blackens what the edges of one item enclose; gives the place of the next item's first. */
    private int item(int first, int count, double level) {
        int item = (int) (meets[first] >> (PIXEL_BITS + WINDING_BITS));
        boolean isEvenOdd = edges.isEvenOdd(item);
        Frame window = edges.window(item);
        boolean isSeen = level >= window.y() && level < window.bottom();
        int low = pixel(window.x());
        int high = pixel(window.right());
        int winding = 0;
        int i = first;
        for (; i < count && (int) (meets[i] >> (PIXEL_BITS + WINDING_BITS)) == item; i++) {
            winding += (int) (meets[i] & 3) - 1;
            boolean isInside = isEvenOdd ? (winding & 1) != 0 : winding != 0;
            if (isInside && isSeen && i + 1 < count) {
                blacken(Math.max(low, pixelOf(meets[i])), Math.min(high, pixelOf(meets[i + 1])));
            }
        }
        return i;
    }

    private static int pixelOf(long packed) {
        return (int) (packed >> WINDING_BITS) & ((1 << PIXEL_BITS) - 1);
    }

    private void blacken(int from, int to) {
        if (from >= to) {
            return;
        }
        int first = from >> 3;
        int last = to >> 3;
        int before = 0xff00 >> (from & 7) & 0xff;
        int after = 0xff >> (to & 7);
        if (first == last) {
            row[first] &= (byte) (before | after);
            return;
        }
        row[first] &= (byte) before;
        Arrays.fill(row, first + 1, last, (byte) ALL_BLACK);
        if (last < row.length) {
            row[last] &= (byte) after;
        }
    }
}
