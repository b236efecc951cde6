package inkstrata.planar;

/**
 * A part of an edge that faces one other edge across a stack that both border.
 *
 * @param strip number of the stack between them
 * @param one number of the stack beyond this edge, or {@link EdgeTable#OUTSIDE}
 * @param other number of the stack beyond the other edge; likewise
 * @param contour that this edge belongs to ({@link SeamContours})
 * @param facing contour that the other belongs to; higher
 * @param across the other edge
 * @param first way across, where the stretch starts; the strip lies on the side of positive cross products
 * @param last way across, where it ends
 * @param length of the stretch in grid steps
 * @param widest longest way across, in grid steps
 * @param closes whether the strip is narrow enough here to be closed
 * @param known whether it is certain that what shows between lies beneath both sides; else deeper stacks would tell
 */
record SeamStretch(
        int strip,
        int one,
        int other,
        int contour,
        int facing,
        int across,
        SeamWay first,
        SeamWay last,
        double length,
        double widest,
        boolean closes,
        boolean known) {
    /** Whether all ways end in one vertex. */
    boolean isFan() {
        return first.toX() == last.toX() && first.toY() == last.toY();
    }

    /** Whether its first way ends in the same vertex as that of another. */
    boolean leadsTo(SeamStretch that) {
        return first.toX() == that.first.toX() && first.toY() == that.first.toY();
    }

    /** Whether it was found from the side whose contour has the lower number. */
    boolean isLower() {
        return contour < facing;
    }
}
