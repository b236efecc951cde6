package inkstrata.planar;

/**
 * Two stacks that share edges or meet in a point.
 *
 * @param one the smaller stack number
 * @param other the larger one
 * @param lengthMm of all edges between them; 0 if they only meet in points
 */
public record Neighbours(int one, int other, double lengthMm) {}
