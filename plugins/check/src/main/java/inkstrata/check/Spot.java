package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.measure.Place;

/**
 * A point of the sheet between grid points too.
 *
 * @param x in grid steps
 * @param y in grid steps
 */
record Spot(double x, double y) {
    double distanceTo(Spot other) {
        double dx = other.x - x;
        double dy = other.y - y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** In millimetres. */
    Place place() {
        return new Place(x * Grid.STEP_MM, y * Grid.STEP_MM);
    }
}
