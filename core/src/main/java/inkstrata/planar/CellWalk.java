package inkstrata.planar;

/** The cells of a square grid that an edge comes near. */
final class CellWalk {
    private CellWalk() {}

    /** Is told a cell. */
    @FunctionalInterface
    interface Cells {
        void cell(int column, int row);
    }

    /**
     * Walks along an edge, by its longer extent one column after another, or one row.
     *
     * @param reach cells are told that lie as near; some a little farther as well
     * @param width of a cell; all in grid steps
     */
    static void along(int x0, int y0, int x1, int y1, int reach, int width, Cells cells) {
        boolean flat = Math.abs((long) x1 - x0) >= Math.abs((long) y1 - y0);
        boolean forwards = flat ? x0 <= x1 : y0 <= y1;
        long u0 = flat ? (forwards ? x0 : x1) : (forwards ? y0 : y1);
        long v0 = flat ? (forwards ? y0 : y1) : (forwards ? x0 : x1);
        long u1 = flat ? (forwards ? x1 : x0) : (forwards ? y1 : y0);
        long v1 = flat ? (forwards ? y1 : y0) : (forwards ? x1 : x0);
        double slope = u1 == u0 ? 0 : (v1 - v0) / (double) (u1 - u0);
        int last = cell(u1 + reach, width);
        for (int column = cell(u0 - reach, width); column <= last; column++) {
            double near = Math.max((double) u0, (double) column * width - reach);
            double far = Math.min((double) u1, (double) (column + 1) * width + reach);
            double a = v0 + slope * (near - u0);
            double b = v0 + slope * (far - u0);
            int highest = cell((long) Math.ceil(Math.max(a, b)) + reach, width);
            for (int row = cell((long) Math.floor(Math.min(a, b)) - reach, width); row <= highest; row++) {
                cells.cell(flat ? column : row, flat ? row : column);
            }
        }
    }

    private static int cell(long v, int width) {
        return (int) Math.floorDiv(v, (long) width);
    }

    /** From a point to an edge. */
    static double distance(double px, double py, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double length = dx * dx + dy * dy;
        double at = length == 0 ? 0 : Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / length));
        return Math.hypot(px - ax - at * dx, py - ay - at * dy);
    }
}
