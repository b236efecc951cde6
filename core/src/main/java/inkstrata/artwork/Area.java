package inkstrata.artwork;

/**
 * The places an outline encloses under a fill rule.
 *
 * @param outline closed contours, in millimetres
 * @param rule which places they enclose
 * @param drawnByPen whether all of the outline is what one stroke covers, so that its contours belong together
 */
public record Area(Outline outline, FillRule rule, boolean drawnByPen) {
    /** One that is filled. */
    public Area(Outline outline, FillRule rule) {
        this(outline, rule, false);
    }

    /** Moved, in millimetres. */
    public Area movedBy(double dx, double dy) {
        return new Area(outline.movedBy(dx, dy), rule, drawnByPen);
    }
}
