package inkstrata.planar;

/**
 * What lies beside a straight line from a to b no farther than some vertices do, and along it neither before a nor after b.
 *
 * <p>"Along" is the sum of the ways in x and y, each counted in the line's own direction, so the strip is a parallelogram
 * and convex. All questions are answered exactly.
 *
 * @param ax start of the chord, in grid steps
 * @param ay likewise
 * @param bx its end, another point
 * @param by likewise
 * @param least the smallest cross product of b - a with p - a of any p in the strip; 0 or less
 * @param most the largest one; 0 or more
 */
record Strip(int ax, int ay, int bx, int by, long least, long most) {
    /** How far p is on the way, in steps in x and y together; 0 at a. */
    int along(int px, int py) {
        return Integer.signum(bx - ax) * (px - ax) + Integer.signum(by - ay) * (py - ay);
    }

    /** Positive on one side of the chord, in proportion to the distance. */
    long across(int px, int py) {
        return Predicates.cross(ax, ay, bx, by, px, py);
    }

    boolean holds(int px, int py) {
        int along = along(px, py);
        if (along < 0 || along > along(bx, by)) {
            return false;
        }
        long across = across(px, py);
        return across >= least && across <= most;
    }

    /** Whether a point is at most so many steps from the chord's line, in y where the chord is flat, in x where it is steep. */
    boolean isNear(long across, int steps) {
        return Math.abs(across) <= steps * (long) Math.max(Math.abs(bx - ax), Math.abs(by - ay));
    }

    int minX() {
        return Math.min(ax, bx);
    }

    int maxX() {
        return Math.max(ax, bx);
    }

    /**
     * No point of the strip with x between these has a lower y.
     *
     * @param margin in steps; all points of the strip are that near to the chord's line
     */
    int lowest(int minX, int maxX, int margin) {
        int y = ax == bx ? Math.min(ay, by) : Math.min(yAt(minX - margin), yAt(maxX + margin));
        return y - 2 * margin - 1;
    }

    int highest(int minX, int maxX, int margin) {
        int y = ax == bx ? Math.max(ay, by) : Math.max(yAt(minX - margin), yAt(maxX + margin));
        return y + 2 * margin + 1;
    }

    /** Where the chord is at x, or at its end if x lies beyond, rounded down; it must not be upright. */
    private int yAt(int x) {
        int between = Math.max(minX(), Math.min(maxX(), x));
        return (int) (ay + Math.floorDiv(((long) by - ay) * ((long) between - ax), (long) bx - ax));
    }
}
