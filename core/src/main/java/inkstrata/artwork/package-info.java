/**
 * The drawing as the shop sees it: flat shapes in paint order, in millimetres, and the notes taken while reading it.
 *
 * <p>What comes out of {@link inkstrata.artwork.svg} and goes into the planar map. A {@link
 * inkstrata.artwork.FlatShape} knows its outline with its true curves, fill rule, colour, how opaque it is, what it is
 * clipped by, and the element and line it came from. Nothing here reads files. Read
 * {@link inkstrata.artwork.Artwork} first.
 */
package inkstrata.artwork;
