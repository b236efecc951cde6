package inkstrata.check;

import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Outlines of regions, to be asked what of them is nearest. */
final class NearOutlines {
    private final Cells<Stretch> stretches;

    /** @param typical how far away things are usually looked for, in grid steps */
    NearOutlines(List<Region> regions, double typical) {
        stretches = new Cells<>(typical);
        for (Region region : regions) {
            rings(region).forEach(this::add);
        }
    }

    private void add(Ring ring) {
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Stretch edge = new Stretch(ring.x(j), ring.y(j), ring.x(i), ring.y(i));
            Outlines.chop(
                    edge,
                    stretches.size(),
                    part -> stretches.add(part.middle().x(), part.middle().y(), part));
        }
    }

    /** The nearest place on them; none if all are as far as that or farther. */
    Optional<Spot> nearest(Spot spot, double reach) {
        double margin = reach + stretches.size() / 2;
        Spot[] best = {null};
        stretches.near(Box.around(spot).wider(margin), stretch -> {
            Spot near = stretch.nearest(spot);
            double least = best[0] == null ? reach : best[0].distanceTo(spot);
            if (near.distanceTo(spot) < least) {
                best[0] = near;
            }
        });
        return Optional.ofNullable(best[0]);
    }

    /** Shells and holes. */
    static List<Ring> rings(Region region) {
        List<Ring> rings = new ArrayList<>();
        for (Region.Polygon polygon : region.polygons()) {
            rings.add(polygon.shell());
            rings.addAll(polygon.holes());
        }
        return rings;
    }
}
