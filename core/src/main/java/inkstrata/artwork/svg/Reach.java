package inkstrata.artwork.svg;

/**
 * How far from the sheet a drawing may reach: far enough for any background that sticks out, near enough that no number
 * overflows and no loop walks for ever.
 */
final class Reach {
    static final double KILOMETRES = 10;

    private static final double MOST_MM = KILOMETRES * 1e6;

    private Reach() {}

    /**
     * The same coordinate or length.
     *
     * @throws Exceeded if it is too large or not a number
     */
    static double checked(double millimetres) {
        if (!(Math.abs(millimetres) <= MOST_MM)) {
            throw new Exceeded();
        }
        return millimetres;
    }

    /** Thrown through the element that reaches too far; the walk, which knows its place, makes a refusal of it. */
    static final class Exceeded extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Exceeded() {
            super("reaches more than " + KILOMETRES + " km from the sheet", null, false, false);
        }
    }
}
