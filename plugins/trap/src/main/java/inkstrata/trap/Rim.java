package inkstrata.trap;

import inkstrata.planar.Region;

/**
 * What one pull gains under or over one neighbour.
 *
 * @param meeting who gives way to what
 * @param lengthMm how long the border is along which it does
 * @param region what it gains
 */
record Rim(Meeting meeting, double lengthMm, Region region) {}
