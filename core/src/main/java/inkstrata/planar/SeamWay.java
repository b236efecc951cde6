package inkstrata.planar;

/**
 * A straight way across a strip, from a place on one side to the nearest one on the other, in grid steps.
 *
 * @param x where it starts, rounded
 * @param y likewise
 * @param toX where it ends, rounded
 * @param toY likewise
 * @param behindX a little before its start, beyond the strip
 * @param behindY likewise
 * @param beyondX a little after its end, beyond the strip
 * @param beyondY likewise
 * @param length before rounding
 */
record SeamWay(int x, int y, int toX, int toY, int behindX, int behindY, int beyondX, int beyondY, double length) {
    /**
     * How far marks go on beyond a strip, 1.5 µm: edges of two maps of one drawing differ by a step or two, and a way may meet them at
     * 45 degrees.
     */
    private static final double BEYOND = 6;

    /**
     * One that starts at an edge.
     *
     * @param originX that the other places start from
     * @param originY likewise
     * @param dx of the direction in which the way runs if it has no length, 1 long
     * @param dy likewise
     */
    static SeamWay of(int originX, int originY, double x, double y, double toX, double toY, double dx, double dy) {
        double length = size(toX - x, toY - y);
        double ux = length < 0.5 ? dx : (toX - x) / length;
        double uy = length < 0.5 ? dy : (toY - y) / length;
        return new SeamWay(
                originX + round(x),
                originY + round(y),
                originX + round(toX),
                originY + round(toY),
                originX + round(x - BEYOND * ux),
                originY + round(y - BEYOND * uy),
                originX + round(toX + BEYOND * ux),
                originY + round(toY + BEYOND * uy),
                length);
    }

    /** The length of a vector; differences of grid steps do not overflow, so no more care is needed. */
    static double size(double dx, double dy) {
        return Math.sqrt(dx * dx + dy * dy);
    }

    private static int round(double v) {
        return (int) Math.floor(v + 0.5);
    }
}
