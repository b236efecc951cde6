package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.measure.Grid;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BorderTest {
    private static final int SIZE = 400;
    private static final long SEED = 20260303;

    @Test
    void anIslandHasOneClosedBorderThatStartsAtItsLeftmostEdge() {
        PlanarMap map = cells(3, 0, 0, 0, 0, 1, 0, 0, 0, 0);
        assertThat(map.border(StackSet.of(1), StackSet.of(0)).chains())
                .containsExactly(new int[] {400, 400, 800, 400, 800, 800, 400, 800, 400, 400});
        assertThat(map.border(StackSet.of(0), StackSet.of(1)).chains())
                .containsExactly(new int[] {400, 400, 400, 800, 800, 800, 800, 400, 400, 400});
    }

    @Test
    void aThirdStackCutsTheBorder() {
        PlanarMap map = cells(3, 0, 2, 0, 0, 1, 0, 0, 0, 0);
        assertThat(map.border(StackSet.of(1), StackSet.of(0)).chains())
                .containsExactly(new int[] {800, 400, 800, 800, 400, 800, 400, 400});
        assertThat(map.border(StackSet.of(1), StackSet.of(0, 2)).chains()).hasSize(1);
    }

    @Test
    void theFrameIsNoBorder() {
        assertThat(cells(1, 0).border(StackSet.of(0), StackSet.NONE).isEmpty()).isTrue();
    }

    @Test
    void interiorsThatOnlyTouchKeepTheirOwnChains() {
        PlanarMap map = cells(4, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0);
        assertThat(map.border(StackSet.of(1), StackSet.of(0)).chains())
                .hasSize(2)
                .allSatisfy(chain -> assertThat(chain).hasSize(10));
        assertThat(map.border(StackSet.of(0), StackSet.of(1)).chains()).hasSize(1);
    }

    @Test
    void lengthsAreThoseOfTheEdgesBetween() {
        Random random = new Random(SEED);
        for (int run = 0; run < 100; run++) {
            int side = 2 + random.nextInt(12);
            Chequers cells = Chequers.random(side, SIZE, 4, random);
            PlanarMap map = cells.map(4, random);
            int edges = 0;
            for (int row = 0; row < side; row++) {
                for (int column = 0; column < side; column++) {
                    edges += between(cells.stack(column, row), cells.stack(column + 1, row));
                    edges += between(cells.stack(column, row), cells.stack(column, row + 1));
                }
            }
            double expected = Grid.millimetres(edges * SIZE);
            String which = "run " + run + " of seed " + SEED;
            assertThat(map.border(StackSet.of(0), StackSet.of(1, 2)).lengthMm())
                    .as(which)
                    .isCloseTo(expected, within(1e-9));
            assertThat(map.border(StackSet.of(1, 2), StackSet.of(0)).lengthMm())
                    .as(which)
                    .isCloseTo(expected, within(1e-9));
            double together = map.neighbours().stream()
                    .filter(pair -> pair.one() == 0 && pair.other() < 3)
                    .mapToDouble(Neighbours::lengthMm)
                    .sum();
            assertThat(together).as(which).isCloseTo(expected, within(1e-9));
        }
    }

    @Test
    void orderAndDirectionOfEdgesDoNotMatter() {
        Chequers cells = Chequers.random(20, SIZE, 3, new Random(SEED));
        List<int[]> one = cells.map(3, new Random(1))
                .border(StackSet.of(1), StackSet.of(2))
                .chains();
        List<int[]> other = cells.map(3, new Random(2))
                .border(StackSet.of(1), StackSet.of(2))
                .chains();
        assertThat(one.toArray(int[][]::new)).isDeepEqualTo(other.toArray(int[][]::new));
    }

    private static int between(int one, int other) {
        return (one == 0 && (other == 1 || other == 2)) || (other == 0 && (one == 1 || one == 2)) ? 1 : 0;
    }

    private static PlanarMap cells(int side, int... stacks) {
        return Chequers.of(side, SIZE, stacks).map(3, new Random(SEED));
    }
}
