package inkstrata.planar;

import inkstrata.artwork.Source;

/**
 * A closed contour of the artwork that had an area as drawn and has none once curves are straight pieces on the
 * grid: each piece has become a point, or is run along back and forth.
 *
 * <p>Counted are contours of shapes and of clips that touch the picture's frame, seen or hidden beneath others; a shape of
 * several contours may lose some and keep others. Not counted are contours that enclose nothing as drawn (a filled line),
 * and parts of contours: a long one may lose a tip narrower than the grid and still be there.
 *
 * @param source the element it belongs to; {@link Source#UNKNOWN} for a part of a clip
 * @param x of the middle of its bounds, in millimetres on the sheet
 * @param y likewise
 * @param width of its bounds as drawn, in millimetres
 * @param height likewise
 */
public record Swallowed(Source source, double x, double y, double width, double height) {}
