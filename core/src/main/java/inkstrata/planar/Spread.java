package inkstrata.planar;

/**
 * One area of a map that grows into another along the edges they share.
 *
 * @param area which one grows, by its place in a list of areas
 * @param from the stacks of that area that give way
 * @param into the stacks it grows into from the edges it shares with them; those of that area, which it has already, count where they end
 *     within the width: it grows on beyond them
 * @param over the stacks it may lie over where it has grown through something narrower than the width: those of {@code into}
 *     and others
 * @param widthMm how far it grows; less than a grid step does nothing
 * @param leavesHalf whether at least half of what it grows into must stay free, measured straight across from each edge
 */
public record Spread(int area, StackSet from, StackSet into, StackSet over, double widthMm, boolean leavesHalf) {
    /** @throws IllegalArgumentException if something gives way to itself: walks along the outline of what it spreads into need another side */
    public Spread {
        if (!from.and(into).isEmpty()) {
            throw new IllegalArgumentException("stacks " + from.and(into) + " give way to themselves");
        }
        over = over.or(into);
    }
}
