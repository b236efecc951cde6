package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** The places within a width of a border, to both sides; its ends are round. */
final class Corridor {
    /** An arc's facets stay this close to it, in grid steps: one step, so that facets cost no more than rounding does. */
    private static final double FACET_DEPTH = 1;

    /** And this close in parts of its radius: so a sector loses less than a thousandth of its area, 4/3 of this, to facets. */
    private static final double FACET_DEPTH_BY_RADIUS = 1 / 1500.0;

    /** Buffers are made in full precision: rounding while noding breaks them. Laying them over regions rounds to the grid. */
    private static final GeometryFactory EXACT = new GeometryFactory();

    private Corridor() {}

    /**
     * Should the buffer algorithm fail on whole chains (it does on tiny closed ones), each edge gets a corridor of its own;
     * corners are round then.
     *
     * @param border at least one chain
     * @param width in grid steps, more than 0
     * @throws IllegalStateException if the buffer algorithm failed on edges too
     */
    static Geometry around(Border border, double width, Corners corners) {
        Geometry chains = lines(border.chains());
        Geometry corridor = BufferOp.bufferOp(chains, width, parameters(width, corners));
        if (isRight(corridor, chains, width, corners)) {
            return corridor;
        }
        Geometry edges = lines(edges(border));
        Geometry piecewise = BufferOp.bufferOp(edges, width, parameters(width, Corners.ROUND));
        if (isRight(piecewise, edges, width, Corners.ROUND)) {
            return piecewise;
        }
        Coordinate at = chains.getCoordinate();
        throw new IllegalStateException(String.format(
                Locale.ROOT,
                "the corridor of %.3f mm along the border at %.3f, %.3f mm came out wrong. Set another trap width.",
                width / Grid.STEPS_PER_MM,
                at.x / Grid.STEPS_PER_MM,
                at.y / Grid.STEPS_PER_MM));
    }

    private static Geometry lines(List<int[]> chains) {
        return EXACT.createMultiLineString(chains.stream().map(Corridor::line).toArray(LineString[]::new));
    }

    private static List<int[]> edges(Border border) {
        return border.chains().stream()
                .flatMap(chain -> IntStream.range(1, chain.length / 2)
                        .mapToObj(i -> Arrays.copyOfRange(chain, 2 * i - 2, 2 * i + 2)))
                .toList();
    }

    /** For any buffer of that width, in grid steps. */
    static BufferParameters parameters(double width, Corners corners) {
        int facets = (int) Math.ceil(Math.PI / 4 / Math.acos(1 - Math.min(FACET_DEPTH_BY_RADIUS, FACET_DEPTH / width)));
        BufferParameters parameters = new BufferParameters(
                Math.max(facets, 2), BufferParameters.CAP_ROUND, join(corners), Corners.MITRE_LIMIT);
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

    private static LineString line(int[] chain) {
        Coordinate[] vertices = new Coordinate[chain.length / 2];
        for (int i = 0; i < vertices.length; i++) {
            vertices[i] = new Coordinate(chain[2 * i], chain[2 * i + 1]);
        }
        return EXACT.createLineString(vertices);
    }

    /**
     * Buffers fail now and then, so: every vertex of the border lies inside, and a corridor with round corners is no larger
     * than one along straight lines: length x 2 width, and a disc for each chain.
     */
    private static boolean isRight(Geometry corridor, Geometry lines, double width, Corners corners) {
        double most = lines.getLength() * 2 * width + lines.getNumGeometries() * Math.PI * width * width;
        boolean small = corners != Corners.ROUND || corridor.getArea() <= most * (1 + 1e-9);
        return small && !corridor.isEmpty() && holds(corridor, lines);
    }

    private static boolean holds(Geometry corridor, Geometry lines) {
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(corridor);
        for (Coordinate vertex : lines.getCoordinates()) {
            if (locator.locate(vertex) != Location.INTERIOR) {
                return false;
            }
        }
        return true;
    }
}
