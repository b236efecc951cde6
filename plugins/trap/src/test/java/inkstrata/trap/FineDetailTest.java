package inkstrata.trap;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shapes and borders far smaller than the trap; areas in square millimetres against closed formulas. */
class FineDetailTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");
    /** All corners lie on the grid, so only the sum of floating-point numbers may differ. */
    private static final double EXACT = 1e-9;

    /** Each fills what lies beside it, for the width of the trap: sand goes on beneath rust to beneath night. */
    @Test
    void threeInksThinnerThanTheTrapFillAllThatIsDarker() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(10, 10, 0.2, 20))
                .fill(RUST, rectangle(10.2, 10, 0.2, 20))
                .fill(NIGHT, rectangle(10.4, 10, 0.2, 20))
                .knockedOut(SAND, RUST, NIGHT);
        Separation trapped = new Trap().shape(drawn, TrapJob.with(0.4, "round"));
        assertThat(trapped.printed().get(0).areaMm2()).isCloseTo(12, within(EXACT));
        assertThat(trapped.printed().get(1).areaMm2()).isCloseTo(8, within(EXACT));
        assertThat(trapped.printed().get(2)).isSameAs(drawn.printed().get(2));
    }

    /** A quarter of a disc about the border's end and a strip of one step; the arc's chords take off 0.1 % at most. */
    @Test
    void aBorderOfOneGridStepGetsItsWholeRim() {
        double step = 1.0 / Grid.STEPS_PER_MM;
        double width = 0.4;
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(10, 10, 10, 10))
                .fill(NIGHT, rectangle(20, 20 - step, 10, 10))
                .knockedOut(SAND, NIGHT);
        double rim = Math.PI * width * width / 4 + step * width;
        assertThat(gained(drawn, width)).isCloseTo(rim, within(2e-3 * rim));
    }

    @Test
    void aPointInCommonIsNoBorder() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(10, 10, 10, 10))
                .fill(NIGHT, rectangle(20, 20, 10, 10))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, 0.4)).isZero();
    }

    /** Corridors of 5 mm lie many deep on each other; together they fill the plate and nothing beside it. */
    @Test
    void theWidestTrapFillsAPlateOfSmallSquares() {
        FlatDrawing drawing = new FlatDrawing(60, 40).fill(NIGHT, rectangle(10, 10, 20, 10));
        for (int column = 0; column < 10; column++) {
            for (int row = 0; row < 5; row++) {
                drawing.fill(SAND, rectangle(10.75 + 2 * column, 10.75 + 2 * row, 0.5, 0.5));
            }
        }
        Separation trapped = new Trap().shape(drawing.knockedOut(SAND, NIGHT), TrapJob.with(5, "round"));
        assertThat(trapped.printed().get(0).areaMm2()).isCloseTo(200, within(EXACT));
    }

    /**
     * A mitre reaches width / sin(half the tip) beyond the tip, and a sharper one is cut off at 4 widths, as {@code Corners}
     * promises; not bevelled at the tip, as a plain mitre join of an SVG stroke is (SVG 2, section 13.5.5, from memory).
     */
    @ParameterizedTest
    @CsvSource({"20,cut off", "28,cut off", "30,whole", "60,whole", "120,whole"})
    void aMitreSpikesNoFartherThanItsLimit(double degrees, String expected) {
        double width = 0.4;
        double sine = Math.sin(Math.toRadians(degrees / 2));
        double half = 4 * Math.tan(Math.toRadians(degrees / 2));
        Separation drawn = new FlatDrawing(60, 40)
                .fill(NIGHT, rectangle(5, 5, 50, 30))
                .fill(SAND, FlatDrawing.polygon(26, 20 - half, 30, 20, 26, 20 + half))
                .knockedOut(SAND, NIGHT);
        Separation trapped = new Trap().shape(drawn, TrapJob.with(width, "mitre"));
        double reach = Probe.edges(trapped.printed().get(0)).stream()
                        .mapToInt(edge -> edge[0])
                        .max()
                        .orElseThrow()
                / (double) Grid.STEPS_PER_MM;
        assertThat(reach).isCloseTo(30 + (expected.equals("whole") ? width / sine : 4 * width), within(0.002));
    }

    private static double gained(Separation drawn, double widthMm) {
        Separation trapped = new Trap().shape(drawn, TrapJob.with(widthMm, "round"));
        return trapped.printed().get(0).areaMm2() - drawn.printed().get(0).areaMm2();
    }
}
