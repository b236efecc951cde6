package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.measure.Grid;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Cells of 1 x 1 mm: how far the first kind spreads can be counted. */
class SpreadingTest {
    private static final int SIZE = Grid.STEPS_PER_MM;
    private static final long SEED = 20261127;

    /** Columns of stacks 0, 1, 2 and 1: the corridor reaches across the third into the fourth. */
    private static final PlanarMap COLUMNS = Chequers.of(
                    4, SIZE, new int[] {0, 1, 2, 1, 0, 1, 2, 1, 0, 1, 2, 1, 0, 1, 2, 1})
            .map(3, new Random(SEED));

    @Test
    void whatIsReachedAcrossSomethingElseIsLeftOut() {
        assertThat(grown(COLUMNS, new Spread(0, StackSet.of(0), StackSet.of(1), StackSet.NONE, 2.5, false)))
                .isCloseTo(4 * 2, within(1e-9));
    }

    @Test
    void overWhatItMayLieItGoesOn() {
        assertThat(grown(COLUMNS, new Spread(0, StackSet.of(0), StackSet.of(1), StackSet.of(2), 2.5, false)))
                .isCloseTo(4 * 3.5, within(1e-9));
        assertThat(grown(COLUMNS, new Spread(0, StackSet.of(0), StackSet.of(1), StackSet.of(2), 1.5, false)))
                .isCloseTo(4 * 2.5, within(1e-9));
    }

    /** It only starts from the edges it shares with what it spreads into. */
    @Test
    void whatItMayLieOverIsNoneOfItsBorders() {
        assertThat(grown(COLUMNS, new Spread(0, StackSet.of(1), StackSet.of(2), StackSet.of(0), 0.5, false)))
                .isCloseTo(4 * 3, within(1e-9));
    }

    /** Stacks 0 and 1 meet in one point, with 2 and 3 beside it: a quarter disc, its facets a little outside. */
    @Test
    void aroundAPointInWhichFourMeetItGrowsRound() {
        PlanarMap map = Chequers.of(2, SIZE, new int[] {0, 2, 3, 1}).map(4, new Random(SEED));
        List<StackSet> areas = List.of(StackSet.of(0), StackSet.of(1), StackSet.of(2), StackSet.of(3));
        Spread spread = new Spread(0, StackSet.of(0), StackSet.of(1), StackSet.NONE, 0.4, false);
        double gained = Spreading.of(map, areas, List.of(spread), Corners.ROUND, Corners.MITRE_LIMIT)
                        .grown(0)
                        .areaMm2()
                - 1;
        assertThat(gained).isBetween(Math.PI * 0.04, Math.PI * 0.04 * 1.002);
        Spread onSheet = new Spread(0, StackSet.of(0), StackSet.of(1), StackSet.NONE, 0.4, false);
        assertThat(grown(map, onSheet)).as("two and three are sheet").isCloseTo(1, within(1e-9));
    }

    private static double grown(PlanarMap map, Spread spread) {
        return Spreading.of(map, List.of(spread.from()), List.of(spread), Corners.ROUND, Corners.MITRE_LIMIT)
                .grown(0)
                .areaMm2();
    }
}
