package inkstrata.film;

import inkstrata.colour.Rgb;
import inkstrata.planar.Region;

/**
 * Paint on a film that is neither black nor clear: light gets through it, but not as through clear film.
 *
 * @param shade what it looks like on white
 * @param region where it shows
 */
public record Stain(Rgb shade, Region region) {}
