package inkstrata.artwork.svg;

import inkstrata.colour.Rgb;

/**
 * What an area is filled with.
 *
 * @param opacity more than 0, at most 1
 */
record FlatPaint(Rgb colour, double opacity) {}
