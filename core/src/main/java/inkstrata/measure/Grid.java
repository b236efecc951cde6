package inkstrata.measure;

/**
 * The grid every vertex sits on: whole quarter micrometres, far under the finest dot a film can hold.
 *
 * <p>Coordinates stay below 2<sup>25</sup> steps in size (a sheet of 8.388 m), so every cross product of two
 * differences fits a {@code long} with room for doubling, and exact integer predicates can decide everything.
 */
public final class Grid {
    /** One grid step in millimetres. A coarser grid than 1 µm was measured to lose thin areas; a finer one costs nothing. */
    public static final double STEP_MM = 0.00025;

    /** Grid steps in one millimetre. */
    public static final int STEPS_PER_MM = 4000;

    /** Every coordinate is smaller than this in size, in steps. */
    public static final int LIMIT = 1 << 25;

    private Grid() {}

    /**
     * The nearest grid line; halves go up.
     *
     * @param millimetres on the sheet
     * @throws IllegalArgumentException if not a number or 8.388 m or more away from the origin
     */
    public static int steps(double millimetres) {
        double steps = Math.floor(millimetres * STEPS_PER_MM + 0.5);
        if (!(Math.abs(steps) < LIMIT)) {
            throw new IllegalArgumentException(
                    "coordinate " + millimetres + " mm is outside the grid, which ends at 8388 mm");
        }
        return (int) steps;
    }

    /** Exact: a grid line's place in millimetres, as the nearest {@code double}. */
    public static double millimetres(int steps) {
        return steps / (double) STEPS_PER_MM;
    }
}
