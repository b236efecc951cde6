package inkstrata.artwork;

/**
 * The places an outline encloses under a fill rule.
 *
 * @param outline closed contours, in millimetres
 * @param rule which places they enclose
 */
public record Area(Outline outline, FillRule rule) {
    /** Moved, in millimetres. */
    public Area movedBy(double dx, double dy) {
        return new Area(outline.movedBy(dx, dy), rule);
    }
}
