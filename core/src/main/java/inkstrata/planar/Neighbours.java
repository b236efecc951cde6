package inkstrata.planar;

/**
 * Two stacks that share edges.
 *
 * @param one the smaller stack number
 * @param other the larger one
 * @param lengthMm of all edges between them
 */
public record Neighbours(int one, int other, double lengthMm) {}
