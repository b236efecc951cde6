package inkstrata.plan;

import inkstrata.colour.Rgb;
import inkstrata.measure.Size;

/**
 * What is printed on.
 *
 * @param size in millimetres
 * @param colour of the bare sheet
 * @param side the side that is printed
 */
public record Sheet(Size size, Rgb colour, Side side) {}
