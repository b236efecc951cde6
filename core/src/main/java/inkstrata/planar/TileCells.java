package inkstrata.planar;

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
    private int[] first;
    private int[] listed;

    TileCells(Box box, TileSegments segments) {
        this.box = box;
        this.shift = shiftFor(box, segments.count);
        this.columns = (box.width() >> shift) + 1;
        this.rows = (box.height() >> shift) + 1;
        list(segments);
    }

    private static int shiftFor(Box box, int count) {
        int shift = 1;
        while (shift < 26 && ((long) (box.width() >> shift) + 1) * ((box.height() >> shift) + 1) > Math.max(1, count)) {
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
        Ints cells = new Ints(2 * segments.count);
        Ints which = new Ints(2 * segments.count);
        for (int s = 0; s < segments.count; s++) {
            int low = Math.min(segments.ay[s], segments.by[s]);
            int high = Math.max(segments.ay[s], segments.by[s]);
            int fromColumn = column(segments.ax[s] - 1);
            int toColumn = column(segments.bx[s] + 1);
            if (fromColumn == toColumn) {
                add(s, fromColumn, row(low - 1), row(high + 1), cells, which);
                continue;
            }
            double dx = (double) segments.bx[s] - segments.ax[s];
            double slope = dx == 0 ? 0 : (segments.by[s] - segments.ay[s]) / dx;
            for (int column = fromColumn; column <= toColumn; column++) {
                double left = box.left() + ((double) column * (1 << shift)) - MARGIN;
                double right = left + (1 << shift) + 2 * MARGIN;
                double y0 = dx == 0 ? low : height(segments, s, slope, left, low, high);
                double y1 = dx == 0 ? high : height(segments, s, slope, right, low, high);
                int fromRow = row((int) Math.floor(Math.min(y0, y1) - MARGIN));
                int toRow = row((int) Math.ceil(Math.max(y0, y1) + MARGIN));
                add(s, column, fromRow, toRow, cells, which);
            }
        }
        sort(cells, which);
    }

    private static double height(TileSegments segments, int s, double slope, double x, int low, int high) {
        double y = segments.ay[s] + slope * (x - segments.ax[s]);
        return Math.max(low, Math.min(high, y));
    }

    private void add(int segment, int column, int fromRow, int toRow, Ints cells, Ints which) {
        for (int row = fromRow; row <= toRow; row++) {
            cells.add(row * columns + column);
            which.add(segment);
        }
    }

    private void sort(Ints cells, Ints which) {
        first = new int[count() + 1];
        for (int i = 0; i < cells.size(); i++) {
            first[cells.get(i) + 1]++;
        }
        for (int c = 0; c < count(); c++) {
            first[c + 1] += first[c];
        }
        int[] at = first.clone();
        listed = new int[cells.size()];
        for (int i = 0; i < cells.size(); i++) {
            listed[at[cells.get(i)]++] = which.get(i);
        }
    }

    private int column(int x) {
        return Math.max(0, Math.min(columns - 1, (x - box.left()) >> shift));
    }

    private int row(int y) {
        return Math.max(0, Math.min(rows - 1, (y - box.low()) >> shift));
    }
}
