package inkstrata.planar;

import inkstrata.measure.Grid;

/**
 * Edges along which something spreads, as a stretch of the outline of what it spreads into.
 *
 * @param spread number of the spread
 * @param xy vertices in grid steps, x and y in turn; what is spread into lies on the side of positive cross products. A closed
 *     chain repeats its first vertex
 * @param isClosed whether it is a whole outline
 * @param width how far it spreads from there, in grid steps
 * @param startsRound whether it spreads around its first vertex too; of no interest if it is closed
 * @param endsRound whether it spreads around its last vertex too
 */
record BorderChain(int spread, int[] xy, boolean isClosed, double width, boolean startsRound, boolean endsRound) {
    /** One that spreads all around its ends. */
    BorderChain(int spread, int[] xy, boolean isClosed, double width) {
        this(spread, xy, isClosed, width, true, true);
    }

    /** How many edges. */
    int edges() {
        return xy.length / 2 - 1;
    }

    double lengthMm() {
        double steps = 0;
        for (int i = 2; i < xy.length; i += 2) {
            steps += Math.hypot(xy[i] - xy[i - 2], xy[i + 1] - xy[i - 1]);
        }
        return steps * Grid.STEP_MM;
    }
}
