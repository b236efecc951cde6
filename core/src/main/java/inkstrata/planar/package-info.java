/**
 * The planar map: all outlines of the artwork noded together once, so that films cut from it fit exactly.
 *
 * <p>An {@link inkstrata.artwork.Artwork} comes in; a {@link inkstrata.planar.PlanarMap} goes out, whose faces each
 * know their stack of paints. Sets of stacks dissolve into {@link inkstrata.planar.Region}s that share every vertex with
 * their neighbours. Everything sits on {@link inkstrata.measure.Grid} and exact integer predicates decide. The only
 * door to JTS, which does booleans and buffers of regions that leave the map. Read {@link
 * inkstrata.planar.PlanarMapper} first.
 */
package inkstrata.planar;
