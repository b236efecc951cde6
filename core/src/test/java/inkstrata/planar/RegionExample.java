package inkstrata.planar;

import inkstrata.measure.Grid;
import inkstrata.planar.Region.Polygon;
import java.util.Arrays;
import java.util.List;

/** Regions made by hand, for tests of those who receive them. */
public final class RegionExample {
    private RegionExample() {}

    public static Region of(Polygon... polygons) {
        return new Region(List.of(polygons));
    }

    public static Polygon polygon(Ring shell, Ring... holes) {
        return new Polygon(shell, List.of(holes));
    }

    /** Vertices in grid steps, x and y in turn. */
    public static Ring ring(int... xy) {
        return new Ring(xy.clone());
    }

    /** An upright rectangle, in millimetres. */
    public static Ring rectangle(double x, double y, double width, double height) {
        return ringMm(x, y, x + width, y, x + width, y + height, x, y + height);
    }

    /** Vertices in millimetres, x and y in turn. */
    public static Ring ringMm(double... xy) {
        return new Ring(Arrays.stream(xy).mapToInt(Grid::steps).toArray());
    }
}
