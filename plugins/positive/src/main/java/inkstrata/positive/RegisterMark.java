package inkstrata.positive;

import inkstrata.artwork.Area;
import inkstrata.measure.Grid;

/** A cross in a ring: where the crosses of all pulls fall on each other, the print is in register. */
final class RegisterMark {
    /** The ring's radius in shares of the cross's arm. */
    private static final double RING = 0.6;

    private RegisterMark() {}

    /**
     * Draws one.
     *
     * @param arm from the centre to the end of a line of the cross, in grid steps
     * @param stroke width of its lines, in grid steps
     */
    static Area at(Spot centre, int arm, int stroke) {
        int half = stroke / 2;
        int x = centre.x();
        int y = centre.y();
        return new Shapes()
                .box(new Box(x - arm, y - half, x + arm, y - half + stroke))
                .box(new Box(x - half, y - arm, x - half + stroke, y + arm))
                .ring(centre, (int) Math.rint(RING * arm / Grid.STEPS_PER_MM) * Grid.STEPS_PER_MM, stroke)
                .area();
    }
}
