package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.List;

/** Where something prints: polygons with holes on the grid, none overlapping another. */
public final class Region {
    public static final Region EMPTY = new Region(List.of());

    private final List<Polygon> polygons;

    Region(List<Polygon> polygons) {
        this.polygons = List.copyOf(polygons);
    }

    /** One piece: a shell and the holes in it. */
    public record Polygon(Ring shell, List<Ring> holes) {
        public Polygon {
            holes = List.copyOf(holes);
        }
    }

    public List<Polygon> polygons() {
        return polygons;
    }

    public boolean isEmpty() {
        return polygons.isEmpty();
    }

    /** Exact up to the last rounding of the result. */
    public double areaMm2() {
        long doubled = 0;
        for (Polygon polygon : polygons) {
            doubled += Math.abs(polygon.shell().doubledArea());
            for (Ring hole : polygon.holes()) {
                doubled -= Math.abs(hole.doubledArea());
            }
        }
        return doubled / (2.0 * Grid.STEPS_PER_MM * Grid.STEPS_PER_MM);
    }
}
