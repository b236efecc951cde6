package inkstrata.check;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.separation.FlatDrawing.disc;
import static inkstrata.separation.FlatDrawing.polygon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.plan.Ink;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits that follow from geometry alone; each film is said outright. */
class RegisterLimitTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink MOSS = ink("moss", "#4d6b3c");
    private static final Ink NIGHT = ink("night", "#1d2440");

    /** What branch and bound may miss, the grid, and facets. */
    private static final double CLOSE = 0.003;

    @Test
    void edgesThatButtOpenAtOnce() {
        Separation butt = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 2, 8, 16))
                .fill(RUST, rectangle(10, 2, 8, 16))
                .knockedOut(SAND, RUST);
        RegisterLimit limit = limit(butt, 0.4);
        assertThat(limit.limitMm()).isZero();
        assertThat(limit.place().orElseThrow().x()).isEqualTo(10);
        assertThat(limit.openings()).hasSizeGreaterThan(10);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.4, 0.9})
    void anOverlapHoldsToItsWidth(double asked) {
        Separation overlap = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 2, 8, 16))
                .fill(RUST, rectangle(9.6, 2, 8, 16))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, RUST);
        RegisterLimit limit = limit(overlap, asked);
        assertThat(limit.limitMm()).isEqualTo(0.4, within(CLOSE));
        assertThat(limit.openings().isEmpty()).isEqualTo(asked < 0.5);
    }

    /** Rims of arcs are facets, some of which lie a micrometre inside the width: a trap as wide as the register holds. */
    @Test
    void aRoundTrapAsWideAsTheRegisterHolds() {
        Separation drawn = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 2, 16, 16))
                .fill(NIGHT, disc(8, 9, 3.7))
                .fill(RUST, disc(12, 11, 2.9))
                .knockedOut(SAND, RUST, NIGHT);
        RegisterLimit limit = limit(SimulationTest.trapped(drawn), 0.4);
        assertThat(limit.openings()).isEmpty();
        assertThat(limit.limitMm()).isEqualTo(0.4, within(CLOSE));
    }

    /** One overlap ends at another: nothing opens before the overlaps do. */
    @Test
    void threeInksInATHoldToTheWidth() {
        Separation joint = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 9.6, 16, 8))
                .fill(RUST, rectangle(2, 2, 8.2, 8))
                .fill(NIGHT, rectangle(9.8, 2, 8.2, 8))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, RUST, NIGHT);
        assertThat(limit(joint, 0.5).limitMm()).isEqualTo(0.4, within(CLOSE));
    }

    /** Three films, each with a hole at a corner of an equilateral triangle: holes as near to the middle as they reach. */
    @Test
    void threeHolesMeetInTheMiddleOfTheirTriangle() {
        double side = 0.8;
        double radius = 0.2;
        double high = side * Math.sqrt(3) / 2;
        Separation holes = holes(radius, 10 - side / 2, 10, 10 + side / 2, 10, 10, 10 - high);
        RegisterLimit limit = limit(holes, 0.6);
        assertThat(limit.limitMm()).isEqualTo(side - radius * Math.sqrt(3), within(CLOSE));
        assertThat(limit.smallest().orElseThrow().spots()).hasSize(3);
    }

    /** A third hole between two others adds nothing. */
    @Test
    void aHoleBetweenTwoOthersAddsNothing() {
        Separation holes = holes(0.1, 9.6, 10, 10.4, 10, 10.05, 10.1);
        assertThat(limit(holes, 1).limitMm()).isEqualTo(0.8 - 2 * 0.1, within(CLOSE));
    }

    @Test
    void fourHolesMeetOnTheirDiagonals() {
        Separation holes = holes(0.1, 9.7, 9.7, 10.3, 9.7, 10.3, 10.3, 9.7, 10.3);
        assertThat(limit(holes, 0.8).limitMm()).isEqualTo(0.6 * Math.sqrt(2) - 2 * 0.1, within(CLOSE));
    }

    @Test
    void sheetBetweenInksIsNoOpening() {
        Separation apart = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 2, 7.9, 16))
                .fill(RUST, rectangle(10, 2, 8, 16))
                .knockedOut(SAND, RUST);
        RegisterLimit limit = limit(apart, 0.4);
        assertThat(limit.openings()).isEmpty();
        assertThat(limit.limitMm()).isEqualTo(RegisterLimit.FARTHEST_MM);
    }

    /** However much is asked, so far is looked. */
    @Test
    void aWideRegisterIsLookedForToItsEnd() {
        Separation overlap = new FlatDrawing(40, 20)
                .fill(SAND, rectangle(2, 2, 19, 16))
                .fill(RUST, rectangle(18, 2, 20, 16))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, RUST);
        assertThat(limit(overlap, 2.5).heldMm()).isBetween(2.5, 2.52);
        assertThat(limit(overlap, 4).limitMm()).isEqualTo(3, within(CLOSE));
        assertThat(limit(overlap, 4).openings()).isNotEmpty();
    }

    /** A trap as wide as is asked holds, and one that is 4 µm less does not. */
    @Test
    void whatHoldsIsToldToMicrometres() {
        for (double less : new double[] {0, 0.002, 0.004}) {
            Separation overlap = new FlatDrawing(20, 20)
                    .fill(SAND, rectangle(2, 2, 8, 16))
                    .fill(RUST, rectangle(9.6 + less, 2, 8, 16))
                    .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, RUST);
            assertThat(limit(overlap, 0.4).heldMm() >= 0.4)
                    .as("%s mm less", less)
                    .isEqualTo(less < 0.003);
        }
    }

    /** Half a millimetre of sheet lies between the inks; below it they overlap, and there the ends of overlaps are 0.8 mm apart. */
    @Test
    void aWayAcrossSheetIsNoOpening() {
        Separation notched = new FlatDrawing(20, 20)
                .fill(SAND, polygon(2, 2, 9.5, 2, 9.5, 12, 10.8, 12, 10.8, 18, 2, 18))
                .fill(RUST, polygon(18, 2, 10, 2, 10, 12, 9.2, 12, 9.2, 18, 18, 18))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, RUST);
        assertThat(limit(notched, 0.4).limitMm()).isBetween(0.8, 0.83);
    }

    /** Sheet's corners between bars that print over each other move with the bars: nothing opens there. */
    @Test
    void barsPrintedOverEachOtherOpenNowhere() {
        Separation cross = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 8, 16, 4))
                .fill(RUST, rectangle(8, 2, 4, 16))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, RUST);
        assertThat(limit(cross, 0.4).openings()).isEmpty();
        assertThat(limit(cross, 0.4).limitMm()).isEqualTo(RegisterLimit.FARTHEST_MM);
    }

    @Test
    void aPlaceWithoutFilmIsAGap() {
        Separation drawn = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 2, 16, 16))
                .fill(NIGHT, disc(10, 10, 3))
                .fill(RUST, disc(10, 10, 1))
                .separated((ink, row) -> row.top().equals(Optional.of(ink)), SAND, NIGHT);
        Region all = drawn.map()
                .dissolve(StackSet.of(drawn.table().rows().stream()
                        .filter(row -> !row.inks().isEmpty())
                        .mapToInt(inkstrata.plan.PlanningTable.Row::stack)));
        RegisterLimit limit = RegisterLimit.of(drawn.printed(), all, new Frame(0, 0, 20, 20), 0.4);
        assertThat(limit.gaps()).singleElement().satisfies(gap -> {
            assertThat(gap.covers(new Place(10, 10))).isTrue();
            assertThat(gap.areaMm2()).isEqualTo(Math.PI * Math.pow(1 - RegisterLimit.SEEN_MM / 2, 2), within(0.01));
        });
    }

    private static RegisterLimit limit(Separation separation, double asked) {
        return RegisterLimit.of(
                separation.printed(),
                Check.picture(separation),
                separation.artwork().frame(),
                asked);
    }

    /** Film k prints a whole square but for the k-th disc; places are x and y in turn. */
    private static Separation holes(double radius, double... places) {
        List<Ink> inks = List.of(SAND, RUST, MOSS, NIGHT).subList(0, places.length / 2);
        FlatDrawing drawing = new FlatDrawing(20, 20).fill(ink("ground", "#888888"), rectangle(2, 2, 16, 16));
        for (int k = 0; k < inks.size(); k++) {
            drawing.fill(inks.get(k), disc(places[2 * k], places[2 * k + 1], radius));
        }
        return drawing.separated(
                (ink, row) -> !row.inks().isEmpty() && !row.top().equals(Optional.of(ink)), inks.toArray(Ink[]::new));
    }
}
