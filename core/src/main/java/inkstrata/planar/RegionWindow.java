package inkstrata.planar;

import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.List;

/** A region seen through windows: outlines that stay away from one are not looked at. */
public final class RegionWindow {
    private final Region region;
    private final List<Box> shells = new ArrayList<>();
    private final List<List<Box>> holes = new ArrayList<>();

    public RegionWindow(Region region) {
        this.region = region;
        for (Region.Polygon polygon : region.polygons()) {
            shells.add(polygon.shell().box());
            holes.add(polygon.holes().stream().map(Ring::box).toList());
        }
    }

    /** What of it lies within an upright rectangle. */
    public Region at(Frame frame) {
        Box window = Box.of(frame);
        List<Region.Polygon> near = new ArrayList<>();
        for (int p = 0; p < shells.size(); p++) {
            if (shells.get(p).meets(window)) {
                Region.Polygon polygon = region.polygons().get(p);
                List<Ring> rings = new ArrayList<>();
                for (int h = 0; h < polygon.holes().size(); h++) {
                    if (holes.get(p).get(h).meets(window)) {
                        rings.add(polygon.holes().get(h));
                    }
                }
                near.add(new Region.Polygon(polygon.shell(), rings));
            }
        }
        return near.isEmpty() ? Region.EMPTY : new Region(near).intersection(rectangle(window));
    }

    private static Region rectangle(Box box) {
        return Region.of(new Region.Polygon(
                new Ring(new int[] {
                    box.left(), box.low(), box.right(), box.low(), box.right(), box.high(), box.left(), box.high()
                }),
                List.of()));
    }
}
