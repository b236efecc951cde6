package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Sets of regions laid over each other: OverlayNG of JTS with snap rounding on the grid.
 *
 * <p>Every result's area is held against what it can be at all, give or take the rounding of outlines.
 */
final class RegionOverlay {
    private RegionOverlay() {}

    static Region union(List<Region> regions) {
        Geometry all = JtsShapes.FACTORY.createGeometryCollection(
                regions.stream().map(JtsShapes::multiPolygon).toArray(Geometry[]::new));
        Region union = result(all, () -> UnaryUnionNG.union(all, JtsShapes.GRID));
        double largest = 0;
        double sum = 0;
        for (Region region : regions) {
            largest = Math.max(largest, region.areaMm2());
            sum += region.areaMm2();
        }
        check("union", union, largest, sum, regions);
        return union;
    }

    static Region intersection(Region one, Region other) {
        Region both = overlay(one, other, OverlayNG.INTERSECTION);
        check("intersection", both, 0, Math.min(one.areaMm2(), other.areaMm2()), List.of(one, other));
        return both;
    }

    static Region difference(Region one, Region other) {
        Region rest = overlay(one, other, OverlayNG.DIFFERENCE);
        check("difference", rest, one.areaMm2() - other.areaMm2(), one.areaMm2(), List.of(one, other));
        return rest;
    }

    private static Region overlay(Region one, Region other, int operation) {
        Geometry first = JtsShapes.multiPolygon(one);
        Geometry second = JtsShapes.multiPolygon(other);
        return result(first, () -> OverlayNG.overlay(first, second, operation, JtsShapes.GRID));
    }

    private static Region result(Geometry first, Supplier<Geometry> operation) {
        try {
            return JtsShapes.region(operation.get());
        } catch (TopologyException failed) {
            Coordinate at = failed.getCoordinate() != null ? failed.getCoordinate() : first.getCoordinate();
            throw new IllegalStateException(
                    String.format(
                            Locale.ROOT,
                            "regions cannot be laid over each other near %.5f, %.5f mm",
                            at.x * Grid.STEP_MM,
                            at.y * Grid.STEP_MM),
                    failed);
        }
    }

    private static void check(String operation, Region result, double least, double most, List<Region> inputs) {
        double rounding = inputs.stream().mapToDouble(Region::perimeterMm).sum() * Grid.STEP_MM;
        double area = result.areaMm2();
        if (!(area >= least - rounding && area <= most + rounding)) {
            Ring first = inputs.get(0).polygons().get(0).shell();
            throw new IllegalStateException(String.format(
                    Locale.ROOT,
                    "the %s with the region at %.5f, %.5f mm measures %.6f mm2, which is outside %.6f to %.6f",
                    operation,
                    Grid.millimetres(first.x(0)),
                    Grid.millimetres(first.y(0)),
                    area,
                    least,
                    most));
        }
    }
}
