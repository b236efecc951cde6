package inkstrata.planar;

import java.util.Arrays;

/**
 * A uniform grid over a tile, about one cell for each segment; each segment is listed in every cell it comes within one
 * unit of.
 */
final class TileCells {
    /** One unit, and a little for the double arithmetic that finds the cells. */
    private static final double MARGIN = 1.01;

    private final Box box;
    private final int shift;
    private final int columns;
    private final int rows;
    /** For each cell the place of its first segment in the list; until all are listed, how many there are. */
    private final int[] first;

    private int[] listed;

    /** Cells and what is listed in them, as they come: the cell in the upper half of the bits. */
    private long[] found;

    private int foundCount;

    TileCells(Box box, TileSegments segments) {
        this.box = box;
        this.shift = shiftFor(box, segments.count);
        this.columns = (box.width() >> shift) + 1;
        this.rows = (box.height() >> shift) + 1;
        this.first = new int[count() + 1];
        this.found = new long[3 * segments.count + 16];
        list(segments);
        sort();
    }

    private static int shiftFor(Box box, int count) {
        int shift = 1;
        while (shift < 26
                && ((long) (box.width() >> shift) + 1) * ((box.height() >> shift) + 1) > Math.max(1, 2L * count)) {
            shift++;
        }
        return shift;
    }

    int count() {
        return columns * rows;
    }

    /** The cell that holds a point of the tile. */
    int cellOf(int x, int y) {
        return ((y - box.low()) >> shift) * columns + ((x - box.left()) >> shift);
    }

    int firstListed(int cell) {
        return first[cell];
    }

    int endListed(int cell) {
        return first[cell + 1];
    }

    int segment(int at) {
        return listed[at];
    }

    private void list(TileSegments segments) {
        int size = 1 << shift;
        for (int s = 0; s < segments.count; s++) {
            int ax = segments.ax[s] - box.left();
            int bx = segments.bx[s] - box.left();
            int ay = segments.ay[s] - box.low();
            int by = segments.by[s] - box.low();
            int fromColumn = column(ax - 1);
            int toColumn = column(bx + 1);
            if (fromColumn == toColumn || ax == bx) {
                int fromRow = row(Math.min(ay, by) - 1);
                int toRow = row(Math.max(ay, by) + 1);
                for (int column = fromColumn; column <= toColumn; column++) {
                    add(s, column, fromRow, toRow);
                }
                continue;
            }
            double slope = (by - ay) / (double) (bx - ax);
            for (int column = fromColumn; column <= toColumn; column++) {
                double left = (double) column * size - MARGIN;
                double right = left + size + 2 * MARGIN;
                double enters = ay + slope * ((left > ax ? left : ax) - ax);
                double leaves = ay + slope * ((right < bx ? right : bx) - ax);
                double least = slope < 0 ? leaves : enters;
                double most = slope < 0 ? enters : leaves;
                add(s, column, row((int) (least - MARGIN)), row((int) (most + MARGIN)));
            }
        }
    }

    private void add(int segment, int column, int fromRow, int toRow) {
        for (int row = fromRow; row <= toRow; row++) {
            if (foundCount == found.length) {
                found = Arrays.copyOf(found, foundCount + (foundCount >> 1));
            }
            int cell = row * columns + column;
            found[foundCount++] = (long) cell << 32 | segment;
            first[cell]++;
        }
    }

    /** Deals out what was found, last first, so that each cell's count of segments ends as the place of its first. */
    private void sort() {
        for (int cell = 0; cell < count(); cell++) {
            first[cell + 1] += first[cell];
        }
        listed = new int[foundCount];
        for (int i = foundCount - 1; i >= 0; i--) {
            listed[--first[(int) (found[i] >> 32)]] = (int) found[i];
        }
        found = new long[0];
    }

    /** The column of an x relative to the box; what lies beyond the box counts to its first or last one. */
    private int column(int x) {
        return Math.max(0, Math.min(columns - 1, x >> shift));
    }

    /** Likewise. */
    private int row(int y) {
        return Math.max(0, Math.min(rows - 1, y >> shift));
    }
}
