package inkstrata.plan;

/** Which side of the sheet is printed. */
public enum Side {
    FRONT,
    /** Second-surface printing: on the back of a clear or translucent sheet. */
    BACK
}
