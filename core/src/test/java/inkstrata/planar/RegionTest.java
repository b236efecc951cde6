package inkstrata.planar;

import static inkstrata.planar.RegionExample.polygon;
import static inkstrata.planar.RegionExample.rectangle;
import static inkstrata.planar.RegionExample.ring;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Regions against closed formulas of plane geometry and, on cells, against counting. */
class RegionTest {
    private static final long SEED = 20260302;
    private static final Region SQUARE = RegionExample.of(polygon(rectangle(0, 0, 20, 20)));
    private static final Region FRAME = RegionExample.of(polygon(rectangle(0, 0, 40, 40), rectangle(10, 10, 20, 20)));

    @Test
    void measuresAreThoseOfPlaneGeometry() {
        assertThat(FRAME.areaMm2()).isEqualTo(1200);
        assertThat(FRAME.perimeterMm()).isEqualTo(240);
        assertThat(FRAME.bounds()).contains(new Frame(0, 0, 40, 40));
        assertThat(Region.EMPTY.areaMm2()).isZero();
        assertThat(Region.EMPTY.bounds()).isEmpty();
    }

    @Test
    void theLargestSheetIsMeasuredExactly() {
        int far = Grid.LIMIT - 1;
        Region sheet = RegionExample.of(polygon(ring(-far, -far, far, -far, far, far, -far, far)));
        assertThat(sheet.doubledArea()).isEqualTo(2L * (2L * far) * (2L * far));
    }

    @Test
    void equalRegionsAreEqualHoweverTheyWereGiven() {
        Region one = RegionExample.of(
                polygon(ring(0, 0, 9, 0, 9, 9, 0, 9), ring(2, 2, 2, 4, 4, 4), ring(6, 6, 6, 8, 8, 8)),
                polygon(ring(20, 0, 29, 0, 29, 9)));
        Region other = RegionExample.of(
                polygon(ring(29, 9, 29, 0, 20, 0)),
                polygon(ring(9, 9, 9, 0, 0, 0, 0, 9), ring(8, 8, 6, 6, 6, 8), ring(4, 4, 2, 4, 2, 2)));
        assertThat(one).isEqualTo(other).hasSameHashCodeAs(other).hasToString(other.toString());
        assertThat(one.differenceMm2(other)).isZero();
    }

    @Test
    void setsOfCellsAreWhatCountingSays() {
        Random random = new Random(SEED);
        for (int run = 0; run < 200; run++) {
            String which = "run " + run + " of seed " + SEED;
            PlanarMap map = Chequers.random(10, 400, 4, random).map(4, random);
            Region one = map.dissolve(StackSet.of(0, 1));
            Region other = map.dissolve(StackSet.of(1, 2));
            Region both = map.dissolve(StackSet.of(1));
            assertThat(one.union(other).doubledArea())
                    .as(which)
                    .isEqualTo(map.dissolve(StackSet.of(0, 1, 2)).doubledArea());
            assertThat(one.intersection(other).doubledArea()).as(which).isEqualTo(both.doubledArea());
            assertThat(one.minus(other).doubledArea())
                    .as(which)
                    .isEqualTo(map.dissolve(StackSet.of(0)).doubledArea());
            assertThat(one.differenceMm2(other)).as(which).isEqualTo(map.areaMm2(0) + map.areaMm2(2), within(1e-12));
            assertThat(one.intersection(other).differenceMm2(both)).as(which).isZero();
        }
    }

    @Test
    void crossingsAreRoundedToTheGridAndNothingElseMoves() {
        Random random = new Random(SEED);
        for (int run = 0; run < 300; run++) {
            String which = "run " + run + " of seed " + SEED;
            Region one = triangle(random);
            Region other = triangle(random);
            double rounding = (one.perimeterMm() + other.perimeterMm()) * Grid.STEP_MM;
            Region union = one.union(other);
            Region both = one.intersection(other);
            assertThat(union.areaMm2())
                    .as(which)
                    .isCloseTo(one.areaMm2() + other.areaMm2() - both.areaMm2(), within(rounding));
            assertThat(one.minus(other).areaMm2())
                    .as(which)
                    .isCloseTo(one.areaMm2() - both.areaMm2(), within(rounding));
            for (Region result : List.of(union, both, one.minus(other))) {
                assertThat(new IsValidOp(JtsShapes.multiPolygon(result)).isValid())
                        .as(which)
                        .isTrue();
            }
        }
    }

    @Test
    void emptyRegionsAreNeutral() {
        assertThat(SQUARE.union(Region.EMPTY)).isEqualTo(SQUARE);
        assertThat(SQUARE.minus(Region.EMPTY)).isEqualTo(SQUARE);
        assertThat(SQUARE.intersection(Region.EMPTY)).isEqualTo(Region.EMPTY);
        assertThat(Region.EMPTY.minus(SQUARE)).isEqualTo(Region.EMPTY);
        assertThat(Region.union(List.of())).isEqualTo(Region.EMPTY);
        assertThat(Region.EMPTY.grown(1, Corners.ROUND)).isEqualTo(Region.EMPTY);
        assertThat(Region.EMPTY.covers(new Place(0, 0))).isFalse();
        assertThat(SQUARE.minus(SQUARE)).isEqualTo(Region.EMPTY);
    }

    @Test
    void neighboursUniteWithoutASeam() {
        Region right = RegionExample.of(polygon(rectangle(20, 0, 20, 20)));
        assertThat(SQUARE.union(right).polygons()).hasSize(1);
        assertThat(SQUARE.intersection(right)).isEqualTo(Region.EMPTY);
    }

    @Test
    void outlinesBelongToTheRegionAndHolesDoNot() {
        assertThat(FRAME.covers(new Place(5, 20))).isTrue();
        assertThat(FRAME.covers(new Place(0, 0))).isTrue();
        assertThat(FRAME.covers(new Place(10, 15))).isTrue();
        assertThat(FRAME.covers(new Place(20, 20))).isFalse();
        assertThat(FRAME.covers(new Place(40.0001, 20))).isFalse();
    }

    @Test
    void distancesAreShortestWays() {
        Region apart = RegionExample.of(polygon(rectangle(23, 24, 5, 5)));
        assertThat(SQUARE.distanceMm(apart)).isCloseTo(5, within(1e-12));
        assertThat(SQUARE.distanceMm(FRAME)).isZero();
        Region island = RegionExample.of(polygon(rectangle(12, 13, 5, 5)));
        assertThat(FRAME.distanceMm(island)).isCloseTo(2, within(1e-12));
        assertThat(SQUARE.distanceMm(island)).as("inside").isZero();
        assertThat(island.distanceMm(SQUARE)).as("inside").isZero();
        assertThatThrownBy(() -> SQUARE.distanceMm(Region.EMPTY)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Steiner's formula (1840) for convex shapes: area + perimeter x d + pi d²; other corners by elementary geometry. */
    @Test
    void aSquareGrowsAsSteinerSays() {
        double d = 0.4;
        assertThat(SQUARE.grown(d, Corners.ROUND).areaMm2() - 400)
                .isCloseTo(80 * d + Math.PI * d * d, withinPercentage(0.01));
        assertThat(SQUARE.grown(d, Corners.MITRE).areaMm2() - 400)
                .isCloseTo(80 * d + 4 * d * d, withinPercentage(1e-6));
        assertThat(SQUARE.grown(d, Corners.BEVEL).areaMm2() - 400)
                .isCloseTo(80 * d + 2 * d * d, withinPercentage(1e-6));
    }

    @Test
    void growingCornersAloneIsRightToAThousandth() {
        Region speck = RegionExample.of(polygon(ring(0, 0, 1, 0, 1, 1, 0, 1)));
        double side = Grid.STEP_MM;
        for (double d : new double[] {0.1, 0.4, 3, 50}) {
            assertThat(speck.grown(d, Corners.ROUND).areaMm2())
                    .isCloseTo(side * side + 4 * side * d + Math.PI * d * d, withinPercentage(0.1));
        }
    }

    @Test
    void aFrameShrinksOnBothSides() {
        double d = 0.4;
        double hole = 400 + 80 * d + Math.PI * d * d;
        assertThat(FRAME.shrunk(d).areaMm2()).isCloseTo(Math.pow(40 - 2 * d, 2) - hole, withinPercentage(0.001));
    }

    @Test
    void whatIsThinnerThanTwiceTheWidthVanishesAndTheRestStays() {
        Region dumbbell = SQUARE.union(RegionExample.of(polygon(rectangle(20, 9.7, 20, 0.6))))
                .union(RegionExample.of(polygon(rectangle(40, 0, 20, 20))));
        Region shrunk = dumbbell.shrunk(0.4);
        assertThat(shrunk.polygons()).hasSize(2);
        assertThat(shrunk.areaMm2()).isCloseTo(2 * 19.2 * 19.2, withinPercentage(0.02));
        assertThat(RegionExample.of(polygon(rectangle(0, 0, 0.7, 20))).shrunk(0.4))
                .isEqualTo(Region.EMPTY);
    }

    @Test
    void growingBackWhatWasShrunkStaysInside() {
        Random random = new Random(SEED);
        for (int run = 0; run < 60; run++) {
            Region region = Chequers.random(9, 4000, 2, random).map(2, random).dissolve(StackSet.of(1));
            Region opened = region.shrunk(0.2).grown(0.2, Corners.ROUND);
            double slack = region.perimeterMm() * 2 * Grid.STEP_MM;
            assertThat(opened.minus(region).areaMm2())
                    .as("run %d of seed %d", run, SEED)
                    .isLessThan(slack);
            Region closed = region.grown(0.2, Corners.ROUND).shrunk(0.2);
            assertThat(region.minus(closed).areaMm2())
                    .as("run %d of seed %d", run, SEED)
                    .isLessThan(slack);
        }
    }

    @Test
    void nothingIsGrownByLessThanAGridStep() {
        assertThat(SQUARE.grown(0, Corners.ROUND)).isEqualTo(SQUARE);
        assertThat(SQUARE.shrunk(0.0001)).isEqualTo(SQUARE);
        assertThatThrownBy(() -> SQUARE.grown(-1, Corners.ROUND)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SQUARE.shrunk(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatWouldLeaveTheGridCannotGrow() {
        double end = Grid.millimetres(Grid.LIMIT - 1);
        Region corner = RegionExample.of(polygon(rectangle(end - 20, -end, 20, 20)));
        assertThatThrownBy(() -> corner.grown(1, Corners.ROUND))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("grid ends at 8388 mm");
        assertThat(corner.shrunk(1).areaMm2()).isCloseTo(18 * 18, within(1e-9));
    }

    @Test
    void everyGridPointOfAnOutlineIsCovered() {
        int far = 30_000_001;
        Region thin = RegionExample.of(polygon(ring(0, 0, far, 0, far, 1, 0, 1)));
        Random random = new Random(SEED);
        for (int i = 0; i < 1_000; i++) {
            double x = Grid.millimetres(random.nextInt(far));
            assertThat(thin.covers(new Place(x, Grid.millimetres(1)))).isTrue();
        }
        Region upright = RegionExample.of(polygon(ring(far - 1, 0, far, 0, far, 1, far - 1, 1)));
        assertThat(upright.covers(new Place(Grid.millimetres(far), 0))).isTrue();
        assertThat(upright.covers(new Place(Grid.millimetres(far) + 0.001 * Grid.STEP_MM, 0)))
                .isFalse();
    }

    @Test
    void aRingOfHolesThatTouchPartsAPolygonInTwo() {
        // Four holes around (2, 2) that touch in corners: what lies between them is another interior.
        int[] cells = new int[25];
        for (int hole : new int[] {7, 11, 13, 17}) {
            cells[hole] = 1;
        }
        Region around = Chequers.of(5, 400, cells).map(2, new Random(SEED)).dissolve(StackSet.of(0));
        assertThat(around.polygons()).hasSize(2);
        Region holes = RegionExample.of(
                polygon(ring(800, 400, 1200, 400, 1200, 800, 800, 800)),
                polygon(ring(400, 800, 800, 800, 800, 1200, 400, 1200)),
                polygon(ring(1200, 800, 1600, 800, 1600, 1200, 1200, 1200)),
                polygon(ring(800, 1200, 1200, 1200, 1200, 1600, 800, 1600)));
        Region sheet = RegionExample.of(polygon(ring(0, 0, 2000, 0, 2000, 2000, 0, 2000)));
        assertThat(sheet.minus(holes).differenceMm2(around)).isZero();
        assertThat(sheet.minus(holes).polygons()).hasSize(2);
        assertThat(holes.union(around).differenceMm2(sheet)).isZero();
        assertThat(holes.distanceMm(around)).isZero();
    }

    @Test
    void movingByStepsIsExact() {
        Region moved = FRAME.movedBy(3, -5);
        assertThat(moved.movedBy(-3, 5)).isEqualTo(FRAME);
        assertThat(moved.doubledArea()).isEqualTo(FRAME.doubledArea());
        assertThat(moved.polygons().get(0).shell().x(0)).isEqualTo(3);
        assertThat(moved.polygons().get(0).shell().y(0)).isEqualTo(-5);
    }

    private static Region triangle(Random random) {
        int size = random.nextBoolean() ? 100 : 100_000;
        while (true) {
            int[] xy = random.ints(6, 0, size).toArray();
            if (new Ring(xy).doubledArea() != 0) {
                return RegionExample.of(polygon(new Ring(xy)));
            }
        }
    }
}
