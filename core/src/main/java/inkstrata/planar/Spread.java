package inkstrata.planar;

/**
 * One area of a map that grows into another along the edges they share.
 *
 * @param area which one grows, by its place in a list of areas
 * @param from the stacks of that area that give way
 * @param into the stacks it grows into; none of that area
 */
public record Spread(int area, StackSet from, StackSet into) {}
