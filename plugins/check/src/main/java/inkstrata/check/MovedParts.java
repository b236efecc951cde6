package inkstrata.check;

import inkstrata.check.Alignment.Outline;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Affine;
import inkstrata.planar.Region;
import java.util.List;

/**
 * Parts that have moved on a film whose other parts lie right.
 *
 * <p>Two thin bars, one of which has slid to the side, look as if the film had been slanted. If each part has kept its form, and those that do not lie
 * right have all moved by the same, that is the simpler cause.
 */
final class MovedParts {
    /** A part lies right if all of its outline is found so near, in millimetres. */
    private static final double RIGHT_MM = 0.006;

    /** One that has moved is found so near to where the others moved, in millimetres. */
    private static final double MOVED_MM = 0.02;

    private MovedParts() {}

    /**
     * Whether they explain a film as well as another place of the whole.
     *
     * @param parts that were planned
     * @param place that explains the film, too
     */
    static boolean explain(Outline film, List<Region> parts, Affine place) {
        List<Region> moved =
                parts.stream().filter(part -> !film.holds(part, RIGHT_MM)).toList();
        if (moved.isEmpty() || moved.size() == parts.size()) {
            return false;
        }
        Place from = middle(moved.get(0));
        Place to = place.inverse().of(from);
        int across = (int) Math.round((to.x() - from.x()) * Grid.STEPS_PER_MM);
        int down = (int) Math.round((to.y() - from.y()) * Grid.STEPS_PER_MM);
        return moved.stream().allMatch(part -> film.holds(part.movedBy(across, down), MOVED_MM));
    }

    private static Place middle(Region part) {
        Frame bounds = part.bounds().orElseThrow();
        return new Place(bounds.x() + bounds.width() / 2, bounds.y() + bounds.height() / 2);
    }
}
