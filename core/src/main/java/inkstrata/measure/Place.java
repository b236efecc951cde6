package inkstrata.measure;

/**
 * A place on the sheet, in millimetres from its top left corner, y down.
 *
 * @param x to the right
 * @param y down
 */
public record Place(double x, double y) {}
