package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import java.awt.geom.Line2D;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * The stack at a place by plain counting: for each shape and clip the crossings of a ray with its segments, and the painter's
 * list of the shapes that are there. Of the mapper it shares the flattening alone.
 */
final class PlainStacks {
    private final Artwork artwork;
    private final MapSettings settings;
    private final IdentityHashMap<Area, int[][]> segments = new IdentityHashMap<>();

    PlainStacks(Artwork artwork, MapSettings settings) {
        this.artwork = artwork;
        this.settings = settings;
        for (FlatShape shape : artwork.shapes()) {
            flatten(shape.area());
            shape.clips().forEach(clip -> clip.parts().forEach(this::flatten));
        }
    }

    /** Paints at a place in grid steps, top first, as many as the settings ask for. */
    List<Paint> at(double x, double y) {
        List<FlatShape> here = artwork.shapes().stream()
                .filter(shape -> holds(shape.area(), x, y)
                        && shape.clips().stream()
                                .allMatch(clip -> clip.parts().stream().anyMatch(part -> holds(part, x, y))))
                .toList();
        return ReferencePaints.of(here, settings.backdrop()).paints().stream()
                .limit(settings.depth())
                .toList();
    }

    boolean isNearAnOutline(double x, double y, double steps) {
        for (int[][] outline : segments.values()) {
            for (int[] s : outline) {
                if (Line2D.ptSegDist(s[0], s[1], s[2], s[3], x, y) < steps) {
                    return true;
                }
            }
        }
        return false;
    }

    private void flatten(Area area) {
        segments.computeIfAbsent(area, a -> PlainOutlines.steps(a, artwork.frame(), settings.flatnessMm()));
    }

    private boolean holds(Area area, double x, double y) {
        int winding = 0;
        for (int[] s : segments.get(area)) {
            if ((s[1] <= y) != (s[3] <= y)) {
                double at = s[0] + (y - s[1]) / ((double) s[3] - s[1]) * ((double) s[2] - s[0]);
                if (at > x) {
                    winding += s[3] > s[1] ? 1 : -1;
                }
            }
        }
        return area.rule().inside(winding);
    }
}
