package inkstrata.trap;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import inkstrata.colour.Rgb;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.plan.Ink;
import inkstrata.planar.Region;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rims that are seen: light ones over dark ink, and overlaps of clear inks. */
class InSightTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink NIGHT = ink("night", "#1d2440");
    private static final Ink LEMON = clear("lemon", "#f6cf3a");
    private static final Ink WATER = clear("water", "#3f9fc4");
    private static final double EXACT = 1e-9;

    /** A quarter of the line, in steps of a 32nd of 0.4 mm. */
    @ParameterizedTest
    @CsvSource({"2.0,0.4", "1.6,0.4", "1.5,0.375", "0.8,0.2", "0.5,0.125", "0.3,0.075", "0.15,0.0375"})
    void aDarkLineKeepsHalfOfItselfBetweenLightRims(double line, double rim) {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(0, 0, 60, 40))
                .fill(NIGHT, rectangle(0, 20, 60, line))
                .knockedOut(NIGHT, SAND);
        assertThat(gained(drawn, 1)).isCloseTo(2 * 60 * rim, within(EXACT));
    }

    /** Half of it, where the far side loses nothing. */
    @Test
    void aDarkLineGivesHalfToOneSide() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(0, 0, 60, 20))
                .fill(NIGHT, rectangle(0, 20, 60, 0.5))
                .knockedOut(NIGHT, SAND);
        assertThat(gained(drawn, 1)).isCloseTo(60 * 0.25, within(EXACT));
    }

    /** Printed first the light one is hidden beneath all of the line. */
    @Test
    void beneathADarkLineNothingIsLimited() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(0, 0, 60, 40))
                .fill(NIGHT, rectangle(0, 20, 60, 0.5))
                .knockedOut(SAND, NIGHT);
        assertThat(gained(drawn, 0)).isCloseTo(60 * 0.5, within(EXACT));
    }

    /** A bar that steps from 2 mm to 0.8 mm: full rims beside the wide part, half of them beside the narrow one, rounded between them. */
    @Test
    void theWidthChangesAlongTheLine() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(0, 0, 60, 40))
                .fill(NIGHT, rectangle(0, 20, 30, 2))
                .fill(NIGHT, rectangle(30, 20.6, 30, 0.8))
                .knockedOut(NIGHT, SAND);
        double area = 2 * 30 * 0.4 + 2 * 30 * 0.2;
        // Around the step: two ends of 0.6 mm, corners turned out and in; nothing larger than squares of the width.
        assertThat(gained(drawn, 1)).isBetween(area, area + 2 * 0.6 * 0.4 + 4 * 0.4 * 0.4);
    }

    /** Inks that only touch spread by nothing, and others by less than a grid step: there is nothing to measure along their borders. */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.0001, 0.00025, 0.002})
    void whatIsNarrowerThanTheGridIsDoneAtOnce(double width) {
        Ink plum = ink("plum", "#7a2a6a");
        Ink butter = new Ink("butter", Rgb.parse("#f4d78c"), 0.1, Optional.empty(), false);
        for (Ink light : List.of(butter, SAND)) {
            Separation drawn = new FlatDrawing(600, 400)
                    .fill(plum, rectangle(50, 50, 360, 300))
                    .fill(light, rectangle(240, 80, 300, 240))
                    .knockedOut(plum, light);
            Separation trapped = assertTimeoutPreemptively(
                    Duration.ofSeconds(60), () -> new Trap().shape(drawn, TrapJob.with(width, "round")));
            assertThat(trapped.notes()).isNotEmpty();
        }
    }

    /** Of a disc or a square that keeps half of its width a quarter of the area is left, of anything longer more; round ends of borders take a little of that. */
    @Test
    void lightRimsLeaveAFifthOfEveryInkInAnyDrawing() {
        for (long seed = 0; seed < 200; seed++) {
            Separation drawn = RandomDrawing.darkFirst(seed);
            Separation trapped = new Trap().shape(drawn, TrapJob.with(0.4, "round"));
            for (int pull = 0; pull < drawn.printed().size(); pull++) {
                Region before = drawn.printed().get(pull);
                Region seen = before;
                for (int later = pull + 1; later < drawn.printed().size(); later++) {
                    seen = seen.minus(trapped.printed().get(later));
                }
                assertThat(seen.areaMm2())
                        .as("drawing %s, pull %s", seed, pull)
                        .isGreaterThanOrEqualTo(before.areaMm2() / 5);
            }
        }
    }

    @Test
    void clearInksOnlyTouch() {
        Separation drawn = sideBySide(LEMON, WATER);
        Separation trapped = new Trap().shape(drawn, TrapJob.with(0.4, "round"));
        assertThat(trapped.printed()).isEqualTo(drawn.printed());
        assertThat(trapped.notes())
                .singleElement()
                .satisfies(
                        note -> assertThat(note.text())
                                .isEqualTo(
                                        "Trap: lemon and water only touch (20.0 mm): where they overlap they show a third colour."
                                                + " Sheet shows between them as soon as a pull is off."
                                                + " If a rim is the lesser evil, set use.trap.widths: 'lemon and water 0.2 mm'."));
    }

    @Test
    void clearInksOverlapIfAsked() {
        Separation drawn = sideBySide(LEMON, WATER);
        Separation trapped = new Trap()
                .shape(
                        drawn,
                        TrapJob.using(Map.of(
                                "width", new Setting("0.4 mm", 7),
                                "widths", new Setting("lemon and water 0.2 mm", 8))));
        assertThat(trapped.printed().get(0).areaMm2() - drawn.printed().get(0).areaMm2())
                .isCloseTo(20 * 0.2, within(EXACT));
        assertThat(trapped.notes())
                .extracting(note -> note.text())
                .containsExactly("Trap: lemon runs 0.20 mm under water (20.0 mm).");
    }

    /** What little a clear ink changes a dark one by is no third colour. */
    @Test
    void aClearLightInkStillRunsUnderADarkOne() {
        assertThat(gained(sideBySide(LEMON, NIGHT), 0)).isCloseTo(20 * 0.4, within(EXACT));
    }

    private static double gained(Separation drawn, int pull) {
        Separation trapped = new Trap().shape(drawn, TrapJob.with(0.4, "round"));
        return trapped.printed().get(pull).areaMm2() - drawn.printed().get(pull).areaMm2();
    }

    private static Separation sideBySide(Ink left, Ink right) {
        return new FlatDrawing(60, 40)
                .fill(left, rectangle(10, 10, 20, 20))
                .fill(right, rectangle(30, 10, 20, 20))
                .knockedOut(left, right);
    }

    private static Ink clear(String name, String swatch) {
        return new Ink(name, Rgb.parse(swatch), 0.05, Optional.empty(), false);
    }
}
