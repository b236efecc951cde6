package inkstrata.artwork.stroke;

/**
 * A part of a leg, and the curves along its sides.
 *
 * @param from where it begins
 * @param to where it ends
 * @param left eight numbers, a cubic along the pen's left end; null where that lies beyond the centre of curvature
 * @param right the same to the right
 * @param centres x and y of points up to which the pen goes forwards, the centres of curvature; null where it does so all along
 * @param beyond a cubic along the pen's end beyond the centres; null without them
 * @param isLine whether the sides are straight lines
 */
record Piece(
        Station from, Station to, double[] left, double[] right, double[] centres, double[] beyond, boolean isLine) {
    /** Whether the pen goes forwards all along. */
    boolean isGentle() {
        return centres == null;
    }

    /** The inner side of the turn is the left one. */
    boolean turnsLeft() {
        return left == null;
    }
}
