package inkstrata.bench;

import inkstrata.artwork.Artwork;
import inkstrata.colour.Rgb;
import inkstrata.planar.MapSettings;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;

/**
 * One way to use JTS OverlayNG, and whether it gives our answer: the area of each colour that shows.
 *
 * @param method of {@link PeerBenchmark}
 * @param visible for all shapes, lowest first, what shows of each
 */
record Peer(String method, Function<List<Geometry>, List<List<Geometry>>> visible) {
    /** Of the canvas: far above what rounding to a grid does to the areas, far below a face that is lost. */
    static final double MOST_DIFFERENCE = 1e-4;

    static final List<Peer> ALL = List.of(
            new Peer("subtractThoseAbove", Peers::subtractThoseAbove),
            new Peer("nodeAllOnce", Peers::nodeAllOnce),
            new Peer("nodeAllOnceQuickly", Peers::nodeAllOnceQuickly));

    /** The largest difference of any colour's area, as a share of the canvas. */
    double difference(String drawings) {
        double largest = 0;
        for (Artwork artwork : Case.drawings(drawings)) {
            Map<Rgb, Double> differences = new TreeMap<>();
            Visible.regions(artwork, MapSettings.DEFAULT)
                    .forEach((colour, region) -> differences.merge(colour, region.areaMm2(), Double::sum));
            Geometry canvas = Polygons.canvas(artwork);
            List<List<Geometry>> parts = visible.apply(Polygons.of(artwork));
            for (int i = 0; i < parts.size(); i++) {
                double area = 0;
                for (Geometry part : parts.get(i)) {
                    area += Polygons.within(canvas, part).getArea();
                }
                differences.merge(artwork.shapes().get(i).colour(), -area, Double::sum);
            }
            for (double difference : differences.values()) {
                largest = Math.max(largest, Math.abs(difference) / canvas.getArea());
            }
        }
        return largest;
    }
}
