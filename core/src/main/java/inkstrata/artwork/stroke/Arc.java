package inkstrata.artwork.stroke;

/** Arcs of circles as cubics, for round caps and corners. */
final class Arc {
    /** The widest angle of one cubic: it leaves the circle by 4 millionths of the radius. */
    private static final double WIDEST = Math.PI / 4;

    private Arc() {}

    /**
     * Goes along an arc from where the contour ends.
     *
     * @param x of the centre
     * @param y of the centre
     * @param endX where the arc ends
     * @param endY the same
     * @param turn radians, positive from x to y
     */
    static void draw(Contour contour, double x, double y, double endX, double endY, double turn) {
        int count = Math.max(1, (int) Math.ceil(Math.abs(turn) / WIDEST - 1e-9));
        double step = turn / count;
        double handle = 4.0 / 3 * Math.tan(step / 4);
        double fromX = contour.lastX() - x;
        double fromY = contour.lastY() - y;
        double ax = fromX;
        double ay = fromY;
        for (int i = 1; i <= count; i++) {
            double cos = Math.cos(i * step);
            double sin = Math.sin(i * step);
            double bx = i == count ? endX - x : fromX * cos - fromY * sin;
            double by = i == count ? endY - y : fromX * sin + fromY * cos;
            contour.curve(
                    x + ax - handle * ay,
                    y + ay + handle * ax,
                    x + bx + handle * by,
                    y + by - handle * bx,
                    i == count ? endX : x + bx,
                    i == count ? endY : y + by);
            ax = bx;
            ay = by;
        }
    }
}
