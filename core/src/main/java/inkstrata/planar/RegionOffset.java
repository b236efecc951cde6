package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.PrecisionReducer;

/**
 * Outlines moved outwards and inwards, with checks: buffers fail now and then, and inward ones can lose pieces.
 *
 * <p>The offset is made in doubles and rounded to the grid once. A strip beside a closed outline of length L has at most
 * the area L d + pi d² (J. Steiner, 1840; B. Szőkefalvi-Nagy, 1959, for any closed curve), which bounds the result.
 */
final class RegionOffset {
    /** How far the facets of an arc may lie from it: four grid steps, a fifth of the flatness of curves. */
    static final int ARC_ERROR_UM = 1;

    private static final GeometryFactory DOUBLES = new GeometryFactory();

    private RegionOffset() {}

    static Region grown(Region region, double millimetres, Corners corners) {
        checkWidth(millimetres);
        Region grown = offset(region, millimetres, corners);
        double strip = strip(region, millimetres, corners == Corners.MITRE ? Corners.MITRE_LIMIT : 1);
        check(region, grown, millimetres, region.areaMm2(), region.areaMm2() + strip);
        return grown;
    }

    static Region shrunk(Region region, double millimetres) {
        checkWidth(millimetres);
        Region shrunk = offset(region, -millimetres, Corners.ROUND);
        check(region, shrunk, -millimetres, region.areaMm2() - strip(region, millimetres, 1), region.areaMm2());
        if (!shrunk.minus(region).isEmpty()) {
            throw failure(region, -millimetres, "leaves it");
        }
        return shrunk;
    }

    /** How many pieces a quarter of an arc is cut into: the sagitta of a piece is r (1 - cos(angle / 2)). */
    static int piecesOfAQuarter(double radiusMm) {
        double angle = 2 * Math.acos(1 - Math.min(1, ARC_ERROR_UM / 1000.0 / radiusMm));
        return Math.max(2, (int) Math.ceil(Math.PI / 2 / angle));
    }

    private static void checkWidth(double millimetres) {
        if (!(millimetres >= 0 && millimetres < Grid.LIMIT * Grid.STEP_MM)) {
            throw new IllegalArgumentException("offset " + millimetres + " mm is outside 0 to 8388 mm");
        }
    }

    private static Region offset(Region region, double millimetres, Corners corners) {
        BufferParameters parameters = new BufferParameters(
                piecesOfAQuarter(Math.abs(millimetres)),
                BufferParameters.CAP_ROUND,
                join(corners),
                Corners.MITRE_LIMIT);
        parameters.setSimplifyFactor(0);
        Geometry outline = DOUBLES.createGeometry(JtsShapes.multiPolygon(region));
        Geometry moved = BufferOp.bufferOp(outline, millimetres / Grid.STEP_MM, parameters);
        return moved.isEmpty()
                ? Region.EMPTY
                : JtsShapes.region(PrecisionReducer.reducePrecision(moved, JtsShapes.GRID));
    }

    private static int join(Corners corners) {
        return switch (corners) {
            case ROUND -> BufferParameters.JOIN_ROUND;
            case MITRE -> BufferParameters.JOIN_MITRE;
            case BEVEL -> BufferParameters.JOIN_BEVEL;
        };
    }

    /** The most that lies within the width on one side; corners that stick out further count as wide strips. */
    private static double strip(Region region, double width, double reach) {
        double far = width * reach;
        return region.perimeterMm() * far + region.rings().size() * Math.PI * far * far;
    }

    private static void check(Region region, Region result, double millimetres, double least, double most) {
        double rounding = (region.perimeterMm() + result.perimeterMm()) * Grid.STEP_MM;
        double area = result.areaMm2();
        if (!(area >= least - rounding && area <= most + rounding)) {
            throw failure(
                    region,
                    millimetres,
                    String.format(Locale.ROOT, "measures %.6f mm2, outside %.6f to %.6f", area, least, most));
        }
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
