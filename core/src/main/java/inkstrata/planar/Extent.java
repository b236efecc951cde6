package inkstrata.planar;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far something reaches, in millimetres; of nothing at all, {@code left} is larger than {@code right}.
 *
 * @param left smallest x
 * @param low smallest y
 * @param right largest x
 * @param high largest y
 */
record Extent(double left, double low, double right, double high) {
    private static final Extent NOTHING = new Extent(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    /** Of a box on the grid. */
    static Extent of(Box box) {
        return new Extent(
                Grid.millimetres(box.left()),
                Grid.millimetres(box.low()),
                Grid.millimetres(box.right()),
                Grid.millimetres(box.high()));
    }

    /** Of all control points, between which the curves lie. */
    static Extent of(Outline outline) {
        Points points = new Points();
        outline.sendTo(points);
        return points.extent();
    }

    /** Of an outline that is one upright rectangle, drawn once around with straight lines; empty for any other. */
    static Optional<Extent> ofRectangle(Outline outline) {
        if (outline.commandCount() != 4 && outline.commandCount() != 5) {
            return Optional.empty();
        }
        Points points = new Points();
        outline.sendTo(points);
        return points.areARectangle() ? Optional.of(points.extent()) : Optional.empty();
    }

    double area() {
        return (right - left) * (high - low);
    }

    /** What both have in common. */
    Extent within(Extent other) {
        return new Extent(
                Math.max(left, other.left),
                Math.max(low, other.low),
                Math.min(right, other.right),
                Math.min(high, other.high));
    }

    /** Whether nothing of the other sticks out. */
    boolean holds(Extent other) {
        return left <= other.left && low <= other.low && right >= other.right && high >= other.high;
    }

    /** All control points of an outline. */
    private static final class Points implements CurveSink {
        private final List<double[]> all = new ArrayList<>();
        private boolean oneStraightContour = true;

        Extent extent() {
            Extent extent = NOTHING;
            for (double[] p : all) {
                extent = new Extent(
                        Math.min(extent.left, p[0]),
                        Math.min(extent.low, p[1]),
                        Math.max(extent.right, p[0]),
                        Math.max(extent.high, p[1]));
            }
            return extent;
        }

        boolean areARectangle() {
            boolean closes = all.size() == 4 || (all.size() == 5 && same(0, 4, 0) && same(0, 4, 1));
            boolean sidewaysFirst = same(0, 1, 1) && same(1, 2, 0) && same(2, 3, 1) && same(3, 0, 0);
            boolean upFirst = same(0, 1, 0) && same(1, 2, 1) && same(2, 3, 0) && same(3, 0, 1);
            return oneStraightContour && closes && (sidewaysFirst || upFirst);
        }

        private boolean same(int one, int other, int axis) {
            return all.get(one)[axis] == all.get(other)[axis];
        }

        @Override
        public void moveTo(double x, double y) {
            oneStraightContour &= all.isEmpty();
            lineTo(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            all.add(new double[] {x, y});
        }

        @Override
        public void quadTo(double x1, double y1, double x, double y) {
            oneStraightContour = false;
            lineTo(x1, y1);
            lineTo(x, y);
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
            oneStraightContour = false;
            lineTo(x1, y1);
            lineTo(x2, y2);
            lineTo(x, y);
        }
    }
}
