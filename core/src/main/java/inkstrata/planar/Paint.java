package inkstrata.planar;

import inkstrata.colour.Rgb;

/**
 * What lies at a place in the artwork: a flat colour.
 *
 * @param colour as drawn, or as translucent shapes make it there
 */
public record Paint(Rgb colour) {}
