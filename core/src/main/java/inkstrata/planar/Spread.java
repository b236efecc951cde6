package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** How far one area grows into its neighbour along the border they share. */
public final class Spread {
    private Spread() {}

    /**
     * The part of a receiver that lies within a width of a border, without what is cut off from that border: parts reached
     * across something else.
     *
     * <p>On the grid. Vertices of the receiver are kept; where the corridor's side cuts an edge of the receiver, the new
     * vertex is rounded to the grid, so the result leaves the receiver by half a grid step at most.
     *
     * @param border edges of the receiver's outline
     * @param widthMm 0 or more
     * @return nothing if the width is 0 or the border has no edges
     */
    public static Region along(Border border, Region receiver, double widthMm, Corners corners) {
        double width = widthMm * Grid.STEPS_PER_MM;
        if (width < 1 || border.chains().isEmpty() || receiver.isEmpty()) {
            return Region.EMPTY;
        }
        Geometry corridor = Corridor.around(border, width, corners);
        Geometry reached =
                OverlayNG.overlay(corridor, JtsShapes.multiPolygon(receiver), OverlayNG.INTERSECTION, JtsShapes.GRID);
        return JtsShapes.region(touching(reached, border));
    }

    private static Geometry touching(Geometry reached, Border border) {
        BorderEdges edges = new BorderEdges(border);
        @SuppressWarnings("unchecked")
        List<Polygon> parts = PolygonExtracter.getPolygons(reached);
        return JtsShapes.FACTORY.createMultiPolygon(
                parts.stream().filter(edges::touch).toArray(Polygon[]::new));
    }
}
