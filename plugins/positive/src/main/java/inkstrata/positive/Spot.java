package inkstrata.positive;

/**
 * A place on the film, in grid steps from the sheet's top left corner, y down.
 *
 * @param x to the right
 * @param y down
 */
record Spot(int x, int y) {}
