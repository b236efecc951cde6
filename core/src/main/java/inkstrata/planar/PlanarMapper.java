package inkstrata.planar;

import inkstrata.artwork.Artwork;

/** Makes the planar map of an artwork. */
public final class PlanarMapper {
    private PlanarMapper() {}

    public static PlanarMap map(Artwork artwork, MapSettings settings) {
        throw new UnsupportedOperationException();
    }
}
