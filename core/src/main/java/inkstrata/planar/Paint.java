package inkstrata.planar;

import inkstrata.colour.Rgb;

/**
 * What lies at a place in the artwork: a flat colour.
 *
 * @param colour as drawn, or as translucent shapes make it there
 * @param drawing the name of the drawing of its own that it belongs to; empty for the picture itself
 */
public record Paint(Rgb colour, String drawing) {
    /** Of the picture itself. */
    public Paint(Rgb colour) {
        this(colour, "");
    }
}
