package inkstrata.planar;

import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.util.ArrayList;
import java.util.List;

/** A region to which something small is added, or from which it is taken: outlines away from there are not touched. */
final class RegionPatch {
    private final List<Box> boxes;
    private final List<Region.Polygon> away = new ArrayList<>();
    private final List<Region.Polygon> near = new ArrayList<>();
    /** Holes, away from the patch, of polygons near it. */
    private final List<Ring> holes = new ArrayList<>();

    private RegionPatch(Region region, Region patch) {
        boxes = patch.polygons().stream().map(polygon -> polygon.shell().box()).toList();
        for (Region.Polygon polygon : region.polygons()) {
            if (isNear(polygon.shell())) {
                List<Ring> kept = new ArrayList<>();
                for (Ring hole : polygon.holes()) {
                    (isNear(hole) ? kept : holes).add(hole);
                }
                near.add(new Region.Polygon(polygon.shell(), kept));
            } else {
                away.add(polygon);
            }
        }
    }

    static Region union(Region region, Region added) {
        RegionPatch patch = new RegionPatch(region, added);
        return patch.whole(new Region(patch.near).union(added));
    }

    static Region difference(Region region, Region taken) {
        RegionPatch patch = new RegionPatch(region, taken);
        return patch.whole(new Region(patch.near).minus(taken));
    }

    private Region whole(Region changed) {
        List<List<Ring>> more = new ArrayList<>();
        changed.polygons().forEach(polygon -> more.add(new ArrayList<>(polygon.holes())));
        for (Ring hole : holes) {
            more.get(changed.polygons().size() == 1 ? 0 : around(hole, changed)).add(hole);
        }
        List<Region.Polygon> all = new ArrayList<>(away);
        for (int p = 0; p < more.size(); p++) {
            all.add(new Region.Polygon(changed.polygons().get(p).shell(), more.get(p)));
        }
        return new Region(all);
    }

    /** The polygon that a hole lies in: the only one that covers one of its vertices; it may touch others in points. */
    private static int around(Ring hole, Region changed) {
        List<Integer> candidates = new ArrayList<>();
        for (int p = 0; p < changed.polygons().size(); p++) {
            if (hole.box().meets(changed.polygons().get(p).shell().box())) {
                candidates.add(p);
            }
        }
        for (int v = 0; v < hole.size() && candidates.size() > 1; v++) {
            Place vertex = new Place(Grid.millimetres(hole.x(v)), Grid.millimetres(hole.y(v)));
            candidates.removeIf(p -> !Region.of(changed.polygons().get(p)).covers(vertex));
        }
        if (candidates.size() != 1) {
            throw new IllegalStateException("the hole at " + hole.x(0) + ", " + hole.y(0) + " (grid steps) lies in "
                    + candidates.size() + " polygons");
        }
        return candidates.get(0);
    }

    private boolean isNear(Ring ring) {
        Box bounds = ring.box();
        return boxes.stream().anyMatch(box -> box.meets(bounds));
    }
}
