package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import java.util.ArrayList;
import java.util.List;

/** Points evenly along outlines. */
final class OutlinePoints {
    private OutlinePoints() {}

    /**
     * One of them.
     *
     * @param spot in grid steps
     * @param inX across the outline, to where the region lies, of length 1
     * @param inY likewise
     */
    record Point(Spot spot, double inX, double inY) {}

    /** About as many as asked for, in the order of the outlines. */
    static List<Point> of(Region region, int count) {
        List<Point> points = new ArrayList<>();
        double gap = region.perimeterMm() * Grid.STEPS_PER_MM / count;
        double left = gap / 2;
        for (Ring ring : NearOutlines.rings(region)) {
            for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                double dx = ring.x(i) - ring.x(j);
                double dy = ring.y(i) - ring.y(j);
                double length = Math.hypot(dx, dy);
                for (; left < length; left += gap) {
                    points.add(new Point(
                            new Spot(ring.x(j) + dx * left / length, ring.y(j) + dy * left / length),
                            -dy / length,
                            dx / length));
                }
                left -= length;
            }
        }
        return points;
    }
}
