package inkstrata.planar;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.PrecisionReducer;

/**
 * Outlines moved outwards and inwards, with checks: buffers fail now and then, and inward ones can lose pieces. Then the slower {@link MappedOffset} is taken.
 *
 * <p>The offset is made in doubles and rounded to the grid once. A strip beside a closed outline of length L has at most
 * the area L d + pi d² (J. Steiner, 1840; B. Szőkefalvi-Nagy, 1959, for any closed curve), which bounds the result; and one
 * of the two regions must lie in the other.
 */
final class RegionOffset {
    /** An arc's facets stay this close to it, in grid steps: one step, so that facets cost no more than rounding does. */
    private static final double FACET_DEPTH = 1;

    /** And this close in parts of its radius: so a sector loses less than a thousandth of its area, 4/3 of this, to facets. */
    private static final double FACET_DEPTH_BY_RADIUS = 1 / 1500.0;

    private static final GeometryFactory DOUBLES = new GeometryFactory();

    private RegionOffset() {}

    static Region grown(Region region, double millimetres, Corners corners) {
        if (isNone(millimetres)) {
            return region;
        }
        double reach = corners == Corners.MITRE ? Corners.MITRE_LIMIT : 1;
        checkRoom(region, millimetres * reach);
        return checked(
                region, millimetres, corners, region.areaMm2(), region.areaMm2() + strip(region, millimetres * reach));
    }

    static Region shrunk(Region region, double millimetres) {
        if (isNone(millimetres)) {
            return region;
        }
        return checked(
                region, -millimetres, Corners.ROUND, region.areaMm2() - strip(region, millimetres), region.areaMm2());
    }

    /** By a buffer, or where that fails by way of a map. */
    private static Region checked(Region region, double millimetres, Corners corners, double least, double most) {
        Region moved = offset(region, millimetres, corners);
        if (fault(region, moved, millimetres, least, most).isEmpty()) {
            return moved;
        }
        Region mapped = MappedOffset.of(region, millimetres / Grid.STEP_MM, corners);
        fault(region, mapped, millimetres, least, most).ifPresent(fault -> {
            throw failure(region, millimetres, fault);
        });
        return mapped;
    }

    private static boolean isNone(double millimetres) {
        if (!(millimetres >= 0 && millimetres < Grid.LIMIT * Grid.STEP_MM)) {
            throw new IllegalArgumentException("offset " + millimetres + " mm is outside 0 to 8388 mm");
        }
        return millimetres < Grid.STEP_MM;
    }

    private static void checkRoom(Region region, double reach) {
        Frame bounds = region.bounds().orElseThrow();
        double least = Math.min(bounds.x(), bounds.y()) - reach;
        double most = Math.max(bounds.right(), bounds.bottom()) + reach;
        double end = (Grid.LIMIT - 2) * Grid.STEP_MM;
        if (least < -end || most > end) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a region from %.2f to %.2f mm cannot grow by %.2f mm: the grid ends at 8388 mm",
                    least + reach,
                    most - reach,
                    reach));
        }
    }

    private static Region offset(Region region, double millimetres, Corners corners) {
        double steps = millimetres / Grid.STEP_MM;
        Geometry outline = DOUBLES.createGeometry(JtsShapes.multiPolygon(region));
        Geometry moved = BufferOp.bufferOp(outline, steps, parameters(Math.abs(steps), corners));
        return moved.isEmpty()
                ? Region.EMPTY
                : JtsShapes.region(PrecisionReducer.reducePrecision(moved, JtsShapes.GRID));
    }

    private static BufferParameters parameters(double steps, Corners corners) {
        double depth = Math.min(FACET_DEPTH_BY_RADIUS, FACET_DEPTH / steps);
        int facetsInQuadrant = (int) Math.ceil(Math.PI / 4 / Math.acos(1 - depth));
        BufferParameters parameters = new BufferParameters(
                Math.max(facetsInQuadrant, 2), BufferParameters.CAP_ROUND, join(corners), Corners.MITRE_LIMIT);
        parameters.setSimplifyFactor(0);
        return parameters;
    }

    private static int join(Corners corners) {
        return switch (corners) {
            case ROUND -> BufferParameters.JOIN_ROUND;
            case MITRE -> BufferParameters.JOIN_MITRE;
            case BEVEL -> BufferParameters.JOIN_BEVEL;
        };
    }

    /** The most that lies within the width on one side. */
    private static double strip(Region region, double width) {
        return region.perimeterMm() * width + region.rings().size() * Math.PI * width * width;
    }

    /** What is wrong with a result, if anything. */
    private static Optional<String> fault(Region region, Region result, double millimetres, double least, double most) {
        double rounding = rounding(region, result);
        double area = result.areaMm2();
        if (!(area >= least - rounding && area <= most + rounding)) {
            return Optional.of(
                    String.format(Locale.ROOT, "measures %.6f mm2, outside %.6f to %.6f", area, least, most));
        }
        boolean isGrown = millimetres > 0;
        double sticksOut =
                (isGrown ? region : result).minus(isGrown ? result : region).areaMm2();
        return sticksOut <= rounding
                ? Optional.empty()
                : Optional.of(String.format(Locale.ROOT, "left %.6f mm2 behind", sticksOut));
    }

    /** What rounding to the grid can do to an area. */
    private static double rounding(Region one, Region other) {
        return (one.perimeterMm() + other.perimeterMm()) * Grid.STEP_MM;
    }

    private static IllegalStateException failure(Region region, double millimetres, String how) {
        Ring first = region.polygons().get(0).shell();
        return new IllegalStateException(String.format(
                Locale.ROOT,
                "the outline at %.5f, %.5f mm moved by %.5f mm %s",
                Grid.millimetres(first.x(0)),
                Grid.millimetres(first.y(0)),
                millimetres,
                how));
    }
}
