package inkstrata.trap;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.separation.FlatDrawing.disc;
import static inkstrata.separation.FlatDrawing.polygon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the lighter pull gains, against plane geometry in closed form, to one part in a thousand. */
class RimAreasTest {
    /** An edge that the round end of a rim crosses bends by up to half a step: two edges of at most 80 µm in these drawings. */
    private static final double BENT_MM2 = 2 * 0.08 * Grid.STEP_MM / 2;

    private static final double PER_MILLE = 0.1;
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");

    /** The left square grows under the right one: edge x width; its ends are cut by the receiver. */
    @ParameterizedTest
    @CsvSource({"0.2, round, 4", "0.4, round, 8", "0.2, mitre, 4", "0.4, mitre, 8", "0.4, bevel, 8"})
    void squaresSideBySide(double width, String corners, double area) {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(10, 10, 20, 20))
                .fill(NIGHT, rectangle(30, 10, 20, 20))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, width, corners, 0)).isCloseTo(area, withinPercentage(PER_MILLE));
        assertThat(gained(drawn, width, corners, 1)).isZero();
    }

    /** Four squares of side 20 around a point: the lightest grows under both beside it, and by a quarter disc under the one across. */
    @ParameterizedTest
    @CsvSource({"0.2, round, 8.0314159265", "0.4, round, 16.1256637061", "0.4, bevel, 16.1256637061"})
    void squaresAcrossAPoint(double width, String corners, double area) {
        Ink clay = ink("clay", "#a0522d");
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 20, 20))
                .fill(RUST, rectangle(30, 10, 20, 20))
                .fill(clay, rectangle(10, 30, 20, 20))
                .fill(NIGHT, rectangle(30, 30, 20, 20))
                .knockedOut(SAND, RUST, clay, NIGHT);
        assertThat(gained(drawn, width, corners, 0)).isCloseTo(area, withinPercentage(PER_MILLE));
        assertThat(gained(drawn, width, corners, 3)).isZero();
    }

    /** Where sheet lies beside the point, what opens there is part of it: squares that only meet in a corner gain nothing. */
    @Test
    void squaresThatMeetInACornerOnSheet() {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 20, 20))
                .fill(NIGHT, rectangle(30, 30, 20, 20))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, 0.4, "round", 0)).isZero();
    }

    /** A light disc of radius 10 in a dark square grows: 2 pi r d + pi d^2. */
    @ParameterizedTest
    @CsvSource({"0.2, 12.6920343205", "0.4, 25.6353960533"})
    void discInSquare(double width, double area) {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(NIGHT, rectangle(10, 10, 40, 40))
                .fill(SAND, disc(30, 30, 10))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, width, "round", 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    /** A light square grows over the rim of a dark disc of radius 10: its hole is choked by 2 pi r d - pi d^2. */
    @ParameterizedTest
    @CsvSource({"0.2, 12.4407069082", "0.4, 24.6300864041"})
    void holeChokedAroundADisc(double width, double area) {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 40, 40))
                .fill(NIGHT, disc(30, 30, 10))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, width, "round", 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    /** Two halves of a disc of radius 10: d sqrt(r^2 - d^2) + r^2 asin(d / r). */
    @ParameterizedTest
    @CsvSource({"0.2, 3.99973331733", "0.4, 7.99786615437"})
    void halfDiscs(double width, double area) {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, disc(30, 30, 10))
                .fill(NIGHT, disc(30, 30, 10))
                .fill(SAND, halfDisc())
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, width, "round", 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    /**
     * A light triangle with two sides of 20 and a wedge between them, in a dark field: P d and its corners, which are together a disc, or
     * d^2 tan(t / 2) each where it turns by t and is mitred within the limit.
     */
    @ParameterizedTest
    @ValueSource(doubles = {20, 40, 60, 80, 100, 120, 140, 160})
    void wedgeGrows(double degrees) {
        double d = 0.4;
        double base = 2 * 20 * Math.sin(Math.toRadians(degrees / 2));
        Separation drawn = new FlatDrawing(60, 60)
                .fill(NIGHT, rectangle(5, 5, 50, 50))
                .fill(SAND, wedge(degrees))
                .knockedOut(SAND, NIGHT);
        double straight = (40 + base) * d;
        assertThat(gained(drawn, d, "round", 0)).isCloseTo(straight + Math.PI * d * d, withinPercentage(PER_MILLE));
        double mitred = 0;
        for (double inner : new double[] {degrees, (180 - degrees) / 2, (180 - degrees) / 2}) {
            double half = Math.toRadians((180 - inner) / 2);
            double tip = d * d * Math.tan(half);
            double over = Math.max(0, d / Math.cos(half) - Corners.MITRE_LIMIT * d);
            mitred += tip - over * over / Math.tan(half);
        }
        assertThat(gained(drawn, d, "mitre", 0)).isCloseTo(straight + mitred, withinPercentage(PER_MILLE));
    }

    /** The same, dark in a light field, which grows into it: P d - d^2 cot(b / 2) for each of its angles b. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 40, 60, 80, 100, 120, 140, 160})
    void wedgeIsGrownInto(double degrees) {
        double d = 0.4;
        double base = 2 * 20 * Math.sin(Math.toRadians(degrees / 2));
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(5, 5, 50, 50))
                .fill(NIGHT, wedge(degrees))
                .knockedOut(SAND, NIGHT);
        double area = (40 + base) * d;
        for (double inner : new double[] {degrees, (180 - degrees) / 2, (180 - degrees) / 2}) {
            area -= d * d / Math.tan(Math.toRadians(inner / 2));
        }
        assertThat(gained(drawn, d, "round", 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    private static Outline wedge(double degrees) {
        double half = Math.toRadians(degrees / 2);
        double x = 20 * Math.sin(half);
        double y = 20 * Math.cos(half);
        return polygon(30, 15, 30 + x, 15 + y, 30 - x, 15 + y);
    }

    /** A mitre is cut off square at its limit: of a right angle's tip a triangle of (sqrt 2 - limit) d. */
    @Test
    void mitresEndAtTheLimit() {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(NIGHT, rectangle(10, 10, 40, 40))
                .fill(SAND, rectangle(20, 20, 20, 20))
                .knockedOut(SAND, NIGHT);
        Separation trapped = new Trap()
                .shape(
                        drawn,
                        TrapJob.using(Map.of(
                                "width", new Setting("0.4 mm", 7),
                                "corners", new Setting("mitre", 8),
                                "limit", new Setting("1.2", 9))));
        double tip = (Math.sqrt(2) - 1.2) * 0.4;
        assertThat(trapped.printed().get(0).areaMm2() - 400)
                .isCloseTo(4 * 20 * 0.4 + 4 * (0.16 - tip * tip), withinPercentage(PER_MILLE));
    }

    /** A square of side 20 grows into the frame around it: 4 s d and its corners, 4 d^2, pi d^2 or 2 d^2. */
    @ParameterizedTest
    @CsvSource({
        "0.2, mitre, 16.16",
        "0.4, mitre, 32.64",
        "0.2, round, 16.1256637061",
        "0.4, round, 32.5026548246",
        "0.4, bevel, 32.32"
    })
    void squareInAFrame(double width, String corners, double area) {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(NIGHT, rectangle(10, 10, 40, 40))
                .fill(SAND, rectangle(20, 20, 20, 20))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, width, corners, 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    /** A frame grows into the square of side 20 within: 4 s d - 4 d^2, whatever the corners. */
    @ParameterizedTest
    @CsvSource({"0.2, round, 15.84", "0.4, round, 31.36", "0.4, mitre, 31.36", "0.4, bevel, 31.36"})
    void squareOnSquare(double width, String corners, double area) {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 40, 40))
                .fill(NIGHT, rectangle(20, 20, 20, 20))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, width, corners, 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    /** A ring of radii 10 and 7 in a field: the field grows under it from both sides, 2 pi d (R + r) - pi d^2 + pi d^2. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.4, 1.0})
    void ringFromBothSides(double width) {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 40, 40))
                .fill(NIGHT, disc(30, 30, 10))
                .fill(SAND, disc(30, 30, 7))
                .knockedOut(SAND, NIGHT);
        double area = Math.PI * (100 - Math.pow(10 - width, 2) + Math.pow(7 + width, 2) - 49);
        assertThat(gained(drawn, width, "round", 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    /** A dark bar 20 mm long in a light field is filled once it is no wider than twice the trap: one trap from each side. */
    @ParameterizedTest
    @CsvSource({"0.3, 6", "0.7, 14", "0.8, 16", "1.0, 16.16"})
    void thinBarIsFilled(double thickness, double area) {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 40, 40))
                .fill(NIGHT, rectangle(20, 30, 20, thickness))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, 0.4, "round", 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    /** A bar between sand and bare sheet is filled from its one side, not a whisker farther. */
    @Test
    void thinBarAtTheSheetIsFilledFromOneSide() {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 20, 20))
                .fill(NIGHT, rectangle(30, 10, 0.3, 20))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, 0.4, "round", 0)).isCloseTo(6, withinPercentage(1e-9));
    }

    /**
     * A bar thinner than the trap, darker than what lies on either side: the lighter goes on beneath the darker, or the two
     * would part as soon as they are farther off than the bar is wide; the darker does not go on over the lighter.
     */
    @Test
    void beneathAThinBarTheLighterGoesOn() {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 20, 20))
                .fill(NIGHT, rectangle(30, 10, 0.2, 20))
                .fill(RUST, rectangle(30.2, 10, 20, 20))
                .knockedOut(SAND, RUST, NIGHT);
        assertThat(gained(drawn, 0.4, "round", 0)).isCloseTo(0.4 * 20, withinPercentage(1e-9));
        assertThat(gained(drawn, 0.4, "round", 1)).isCloseTo(0.2 * 20, withinPercentage(1e-9));
    }

    /**
     * Three rectangles at a point: the border of two of them ends there, and its trap ends in a quarter disc beyond, all
     * within the darkest: sand L d + pi d^2 / 4 under night and 20 d under rust, rust likewise under night.
     */
    @Test
    void threeColoursAtAPoint() {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 20, 20))
                .fill(RUST, rectangle(10, 30, 20, 20))
                .fill(NIGHT, rectangle(30, 10, 20, 40))
                .knockedOut(SAND, RUST, NIGHT);
        double d = 0.4;
        double end = Math.PI * d * d / 4;
        assertThat(gained(drawn, d, "round", 0)).isCloseTo(20 * d + 20 * d + end, withinPercentage(PER_MILLE));
        assertThat(gained(drawn, d, "round", 1)).isCloseTo(20 * d + end, withinPercentage(PER_MILLE));
        assertThat(gained(drawn, d, "round", 2)).isZero();
    }

    /** A border that runs out to the edge of the sheet, and one that ends slantwise at bare sheet. */
    @Test
    void edgeOfTheSheet() {
        Separation sheet = new FlatDrawing(40, 20)
                .fill(SAND, rectangle(0, 0, 20, 20))
                .fill(NIGHT, rectangle(20, 0, 20, 20))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(sheet, 0.4, "round", 0)).isCloseTo(8, withinPercentage(1e-9));
        Separation slant = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 20, 20))
                .fill(NIGHT, polygon(30, 10, 40, 0, 40, 40, 30, 30))
                .knockedOut(SAND, NIGHT);
        // Above and below the strip of 20 x d, an eighth of a disc each: the receiver leans away at 45 degrees.
        double area = 20 * 0.4 + 2 * Math.PI * 0.16 / 8;
        assertThat(gained(slant, 0.4, "round", 0)).isCloseTo(area, withinPercentage(PER_MILLE));
    }

    @Test
    void whiteArtworkIsSheet() {
        Separation drawn = new FlatDrawing(60, 60)
                .fill(SAND, rectangle(10, 10, 40, 40))
                .fill(Rgb.WHITE, rectangle(20, 20, 20, 20))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, 0.4, "round", 0)).isZero();
    }

    /** What runs on beneath needs no trap; what does not, does. */
    @Test
    void overprintedNeighboursNeedNone() {
        FlatDrawing drawing =
                new FlatDrawing(60, 60).fill(SAND, rectangle(10, 10, 40, 40)).fill(NIGHT, rectangle(20, 20, 20, 20));
        Separation runsOn = drawing.separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, NIGHT);
        assertThat(gained(runsOn, 0.4, "round", 0)).isZero();
        assertThat(gained(runsOn, 0.4, "round", 1)).isZero();
    }

    private static double gained(Separation drawn, double width, String corners, int pull) {
        Separation trapped = new Trap().shape(drawn, TrapJob.with(width, corners));
        Region before = drawn.printed().get(pull);
        Region after = trapped.printed().get(pull);
        double gained = after.areaMm2() - before.areaMm2();
        assertThat(after.minus(before).areaMm2()).isCloseTo(gained, offset(BENT_MM2));
        return gained;
    }

    private static Outline halfDisc() {
        double[] xy = new double[2 * 361];
        for (int i = 0; i <= 360; i++) {
            xy[2 * i] = 30 - 10 * Math.sin(Math.PI * i / 360);
            xy[2 * i + 1] = 30 - 10 * Math.cos(Math.PI * i / 360);
        }
        return polygon(xy);
    }
}
