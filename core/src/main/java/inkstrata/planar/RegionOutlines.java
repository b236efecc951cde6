package inkstrata.planar;

import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;

/** Regions as outlines of shapes, in millimetres, for maps that are made of regions. */
final class RegionOutlines {
    private RegionOutlines() {}

    /** One contour for each ring; for either fill rule. */
    static Outline of(Region region) {
        Outline.Builder outline = Outline.builder();
        for (Ring ring : region.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                double x = Grid.millimetres(ring.x(i));
                double y = Grid.millimetres(ring.y(i));
                if (i == 0) {
                    outline.moveTo(x, y);
                } else {
                    outline.lineTo(x, y);
                }
            }
        }
        return outline.build();
    }
}
