/**
 * The only door to Batik: reads one SVG file into an {@link inkstrata.artwork.Artwork}.
 *
 * <p>A stranger's file comes in; it reaches no network, no other file and runs no script, and its size, depth and counts
 * have named bounds. Out come flat shapes in millimetres with notes on everything that was simplified, or an {@link
 * inkstrata.artwork.ArtworkException} that says how to mend the file. Read {@link inkstrata.artwork.svg.SvgReader} first.
 */
package inkstrata.artwork.svg;
