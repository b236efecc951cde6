package inkstrata.planar;

/**
 * The edges of a map that have different stacks at their sides, as plain arrays.
 *
 * <p>No two edges cross, overlap or pass through a vertex. Coordinates are grid steps on the sheet, y down.
 * {@code left} is the side where {@code cross(to - from, p - from) > 0}: seen on the sheet with y down, the right-hand
 * side when walking from {@code from} to {@code to}. Beyond the frame lies {@link #OUTSIDE}.
 *
 * @param x of each vertex
 * @param y of each vertex
 * @param from vertex at which each edge starts
 * @param to vertex at which each edge ends
 * @param left number of the stack on the side of positive cross products
 * @param right number of the stack on the other side
 * @param source segment of the topmost outline that runs along each edge; -1 on the frame
 */
record EdgeTable(int[] x, int[] y, int[] from, int[] to, int[] left, int[] right, int[] source) {
    /** Stands for the stack beyond the frame. */
    static final int OUTSIDE = -1;
}
