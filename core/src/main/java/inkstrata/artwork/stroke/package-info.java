/**
 * Strokes as shapes: what a pen of some width covers along a path (SVG 2, chapter 13).
 *
 * <p>A path and a {@link inkstrata.artwork.stroke.StrokeStyle} come in, an outline of lines and cubics to be filled by the
 * nonzero rule goes out. The pen is a segment square to the path: all places that it passes, plus caps and corners as SVG 2
 * defines them, and nothing else. The path is cut into {@link inkstrata.artwork.stroke.Piece}s along which the
 * pen either moves forwards everywhere or turns back beyond the path's centre of curvature; each kind has an outline of its
 * own that winds the same way everywhere, so none of them can cut a hole into another. Read
 * {@link inkstrata.artwork.stroke.Stroker} first.
 */
package inkstrata.artwork.stroke;
