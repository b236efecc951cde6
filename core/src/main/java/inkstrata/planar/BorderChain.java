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
 * @param startSweep how far it spreads around its first vertex, from straight across on, in radians; 0 if it is closed
 * @param endSweep likewise around its last vertex
 * @param ownMm how much of its length has what spreads on both sides already
 */
record BorderChain(
        int spread, int[] xy, boolean isClosed, double width, double startSweep, double endSweep, double ownMm) {
    /** From straight across all the way round to the chain's far side. */
    static final double ALL_ROUND = 1.5 * Math.PI;

    /** How many edges. */
    int edges() {
        return xy.length / 2 - 1;
    }

    /** How long the border is that would part, in millimetres. */
    double lengthMm() {
        double steps = 0;
        for (int i = 2; i < xy.length; i += 2) {
            steps += Math.hypot(xy[i] - xy[i - 2], xy[i + 1] - xy[i - 1]);
        }
        return steps * Grid.STEP_MM - ownMm;
    }
}
