package inkstrata.artwork;

/** Which places a self-crossing outline encloses (SVG 2, section 13.4.2). */
public enum FillRule {
    /** Inside where the winding number is not zero. */
    NONZERO,
    /** Inside where the winding number is odd. */
    EVENODD;

    /** Whether a place with that winding number is inside. */
    public boolean inside(int winding) {
        return this == NONZERO ? winding != 0 : (winding & 1) != 0;
    }
}
