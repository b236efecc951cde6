package inkstrata.plan;

/** Which side of the sheet is printed. */
public enum Side {
    /** Seen from the side it is printed on: a later pull lies over an earlier one. */
    FRONT,
    /**
     * Second-surface printing: on the back of a clear or translucent sheet, and seen through it, so what is nearest to the eye
     * is printed first (common practice, no source).
     */
    BACK;

    /**
     * Whether one pull lies nearer to the eye than another where both print.
     *
     * @param pull its position in print order
     * @param other another position
     */
    public boolean isNearer(int pull, int other) {
        return this == BACK ? pull < other : pull > other;
    }
}
