package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import inkstrata.measure.Grid;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Areas in closed form; the formulas are those of plane geometry (Steiner, 1840, for the outer offset of a convex shape). */
class SpreadTest {
    private static final double WIDTH = 0.4;
    private static final double PER_MILLE = 0.1;

    @Test
    void aStraightBorderGivesAStrip() {
        Region right = square(20, 0, 20);
        Border edge = border(20, 0, 20, 20);
        for (Corners corners : Corners.values()) {
            assertThat(area(Spread.along(edge, right, WIDTH, corners)))
                    .isCloseTo(20 * WIDTH, withinPercentage(PER_MILLE));
        }
    }

    @Test
    void aSquareGrowsIntoTheFrameAroundIt() {
        Region frame = frame(40, 20);
        Border edge = border(10, 10, 30, 10, 30, 30, 10, 30, 10, 10);
        double sides = 4 * 20 * WIDTH;
        assertThat(area(Spread.along(edge, frame, WIDTH, Corners.ROUND)))
                .isCloseTo(sides + Math.PI * WIDTH * WIDTH, withinPercentage(PER_MILLE));
        assertThat(area(Spread.along(edge, frame, WIDTH, Corners.MITRE)))
                .isCloseTo(sides + 4 * WIDTH * WIDTH, withinPercentage(PER_MILLE));
        assertThat(area(Spread.along(edge, frame, WIDTH, Corners.BEVEL)))
                .isCloseTo(sides + 2 * WIDTH * WIDTH, withinPercentage(PER_MILLE));
    }

    @Test
    void aFrameGrowsIntoTheSquareWithin() {
        Border edge = border(10, 10, 30, 10, 30, 30, 10, 30, 10, 10);
        for (Corners corners : Corners.values()) {
            assertThat(area(Spread.along(edge, square(10, 10, 20), WIDTH, corners)))
                    .isCloseTo(4 * 20 * WIDTH - 4 * WIDTH * WIDTH, withinPercentage(PER_MILLE));
        }
    }

    @Test
    void aBarThinnerThanTheWidthIsFilled() {
        Region bar = rectangle(20, 0, 0.3, 20);
        assertThat(area(Spread.along(border(20, 0, 20, 20), bar, WIDTH, Corners.ROUND)))
                .isEqualTo(area(bar));
    }

    @Test
    void whatLiesBeyondSomethingElseIsNotReached() {
        Region bars = new Region(List.of(
                rectangle(20, 0, 0.1, 20).polygons().get(0),
                rectangle(20.2, 0, 20, 20).polygons().get(0)));
        assertThat(area(Spread.along(border(20, 0, 20, 20), bars, WIDTH, Corners.ROUND)))
                .isCloseTo(0.1 * 20, withinPercentage(1e-9));
    }

    @Test
    void aSlantingBorderGivesAStrip() {
        Region below = new Region(List.of(new Region.Polygon(
                new Ring(new int[] {48000, 14158, 48000, 40000, 41429, 40000, 41429, 13614}), List.of())));
        Border edge = new Border(List.of(new int[] {48000, 14158, 41429, 13614}));
        double length = Math.hypot(48000 - 41429, 14158 - 13614) * Grid.STEP_MM;
        double slope = (14158 - 13614) / (48000.0 - 41429);
        // A strip, cut upright at both ends: the left end loses a right triangle to nobody, the right end a sector's
        // part.
        double strip = length * WIDTH;
        double triangle = WIDTH * WIDTH * slope / 2;
        double beyond = WIDTH * WIDTH * Math.atan(slope) / 2;
        assertThat(area(Spread.along(edge, below, WIDTH, Corners.ROUND)))
                .isCloseTo(strip - triangle + beyond, withinPercentage(PER_MILLE));
    }

    @Test
    void noWidthAndNoBorderReachNothing() {
        assertThat(Spread.along(border(20, 0, 20, 20), square(20, 0, 20), 0, Corners.ROUND)
                        .isEmpty())
                .isTrue();
        assertThat(Spread.along(new Border(List.of()), square(20, 0, 20), WIDTH, Corners.ROUND)
                        .isEmpty())
                .isTrue();
    }

    static Region square(double x, double y, double side) {
        return rectangle(x, y, side, side);
    }

    static Region rectangle(double x, double y, double width, double height) {
        return new Region(List.of(new Region.Polygon(
                new Ring(steps(x, y, x + width, y, x + width, y + height, x, y + height)), List.of())));
    }

    /** A square of that size with a square hole in its middle. */
    static Region frame(double outside, double inside) {
        double low = (outside - inside) / 2;
        double high = (outside + inside) / 2;
        return new Region(List.of(new Region.Polygon(
                new Ring(steps(0, 0, outside, 0, outside, outside, 0, outside)),
                List.of(new Ring(steps(low, low, low, high, high, high, high, low))))));
    }

    static Border border(double... xy) {
        return new Border(List.of(steps(xy)));
    }

    private static int[] steps(double... millimetres) {
        int[] steps = new int[millimetres.length];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = Grid.steps(millimetres[i]);
        }
        return steps;
    }

    private static double area(Region region) {
        return JtsShapes.multiPolygon(region).getArea() * Grid.STEP_MM * Grid.STEP_MM;
    }
}
