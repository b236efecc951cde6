package inkstrata.planar;

import inkstrata.measure.Place;
import java.util.Optional;

/**
 * In how many pieces a stack lies on a map.
 *
 * @param count of its faces
 * @param largest a place in the largest one; empty if there is none
 */
public record Pieces(int count, Optional<Place> largest) {
    static Pieces of(Region region) {
        return region.isEmpty()
                ? new Pieces(0, Optional.empty())
                : new Pieces(region.polygons().size(), Optional.of(region.somewhere()));
    }
}
