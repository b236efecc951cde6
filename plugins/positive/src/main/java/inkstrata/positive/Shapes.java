package inkstrata.positive;

import inkstrata.artwork.Area;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;

/** Draws marks from upright boxes and rings; all of them run clockwise as seen on the film. */
final class Shapes {
    /** How far the control points of a quarter circle lie from its ends, in radii: 4/3 (√2 - 1), off by 0.03 %. */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private final Outline.Builder outline = Outline.builder();

    Shapes box(Box box) {
        outline.moveTo(mm(box.left()), mm(box.top()));
        outline.lineTo(mm(box.right()), mm(box.top()));
        outline.lineTo(mm(box.right()), mm(box.bottom()));
        outline.lineTo(mm(box.left()), mm(box.bottom()));
        return this;
    }

    /** A box less another within it. */
    Shapes boxAround(Box box, Box hole) {
        box(box);
        outline.moveTo(mm(hole.left()), mm(hole.top()));
        outline.lineTo(mm(hole.left()), mm(hole.bottom()));
        outline.lineTo(mm(hole.right()), mm(hole.bottom()));
        outline.lineTo(mm(hole.right()), mm(hole.top()));
        return this;
    }

    /** A line of a width along a circle. */
    Shapes ring(Spot centre, int radius, int stroke) {
        circle(centre, Grid.millimetres(radius) + Grid.millimetres(stroke) / 2, 1);
        circle(centre, Grid.millimetres(radius) - Grid.millimetres(stroke) / 2, -1);
        return this;
    }

    /** Clockwise for a turn of 1, else the other way. */
    private void circle(Spot centre, double radius, int turn) {
        double x = mm(centre.x());
        double y = mm(centre.y());
        double r = radius;
        double q = r * QUARTER;
        CurveSink to = outline;
        to.moveTo(x + r, y);
        to.cubicTo(x + r, y + turn * q, x + q, y + turn * r, x, y + turn * r);
        to.cubicTo(x - q, y + turn * r, x - r, y + turn * q, x - r, y);
        to.cubicTo(x - r, y - turn * q, x - q, y - turn * r, x, y - turn * r);
        to.cubicTo(x + q, y - turn * r, x + r, y - turn * q, x + r, y);
    }

    Area area() {
        return new Area(outline.build(), FillRule.NONZERO);
    }

    private static double mm(int steps) {
        return Grid.millimetres(steps);
    }
}
