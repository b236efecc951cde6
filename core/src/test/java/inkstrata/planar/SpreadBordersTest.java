package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.measure.Grid;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SpreadBordersTest {
    private static final int SIZE = 400;
    private static final long SEED = 20260303;

    @Test
    void anIslandHasOneClosedChain() {
        PlanarMap map = cells(3, 0, 0, 0, 0, 1, 0, 0, 0, 0);
        assertThat(chains(map, new Spread(0, StackSet.of(1), StackSet.of(0), StackSet.NONE, 1, false)))
                .singleElement()
                .satisfies(chain -> {
                    assertThat(chain.isClosed()).isTrue();
                    assertThat(chain.edges()).isEqualTo(4);
                    assertThat(chain.lengthMm()).isCloseTo(Grid.millimetres(4 * SIZE), within(1e-12));
                });
    }

    @Test
    void whatIsSpreadIntoLiesOnTheSideOfPositiveCrossProducts() {
        PlanarMap map = cells(2, 0, 1, 0, 1);
        int[] xy = chains(map, new Spread(0, StackSet.of(0), StackSet.of(1), StackSet.NONE, 1, false))
                .get(0)
                .xy();
        int last = xy.length - 2;
        assertThat(xy[0]).isEqualTo(SIZE);
        assertThat(xy[last]).isEqualTo(SIZE);
        // The receiver is at greater x: the cross product of (0, dy) with (1, 0) is -dy.
        assertThat(xy[last + 1]).isLessThan(xy[1]);
    }

    @Test
    void aThirdStackCutsTheChain() {
        PlanarMap map = cells(3, 0, 2, 0, 0, 1, 0, 0, 0, 0);
        BorderChain chain = chains(map, new Spread(0, StackSet.of(1), StackSet.of(0), StackSet.NONE, 1, false))
                .get(0);
        assertThat(chain.isClosed()).isFalse();
        assertThat(chain.edges()).isEqualTo(3);
        assertThat(chains(map, new Spread(0, StackSet.of(1), StackSet.of(0, 2), StackSet.NONE, 1, false)))
                .singleElement()
                .satisfies(whole -> assertThat(whole.isClosed()).isTrue());
    }

    @Test
    void nothingSpreadsAcrossTheFrame() {
        assertThat(chains(cells(1, 0), new Spread(0, StackSet.of(0), StackSet.NONE, StackSet.NONE, 1, false)))
                .isEmpty();
    }

    @Test
    void whatOnlyTouchesAtACornerHasAChainOfItsOwn() {
        PlanarMap map = cells(4, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0);
        assertThat(chains(map, new Spread(0, StackSet.of(0), StackSet.of(1), StackSet.NONE, 1, false)))
                .hasSize(2);
        assertThat(chains(map, new Spread(0, StackSet.of(1), StackSet.of(0), StackSet.NONE, 1, false)))
                .hasSize(1);
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
            assertThat(length(map, new Spread(0, StackSet.of(0), StackSet.of(1, 2), StackSet.NONE, 1, false)))
                    .as(which)
                    .isCloseTo(expected, within(1e-9));
            assertThat(length(map, new Spread(0, StackSet.of(1, 2), StackSet.of(0), StackSet.NONE, 1, false)))
                    .as(which)
                    .isCloseTo(expected, within(1e-9));
            double together = map.neighbours().stream()
                    .filter(pair -> pair.one() == 0 && pair.other() < 3)
                    .mapToDouble(Neighbours::lengthMm)
                    .sum();
            assertThat(together).as(which).isCloseTo(expected, within(1e-9));
        }
    }

    private static int between(int one, int other) {
        return (one == 0 && (other == 1 || other == 2)) || (other == 0 && (one == 1 || one == 2)) ? 1 : 0;
    }

    private static double length(PlanarMap map, Spread spread) {
        return chains(map, spread).stream().mapToDouble(BorderChain::lengthMm).sum();
    }

    private static List<BorderChain> chains(PlanarMap map, Spread spread) {
        StackKinds kinds = StackKinds.of(map.stacks().size(), List.of(spread.from(), spread.into()));
        try (Crew crew = new Crew(2)) {
            return new SpreadBorders(
                            Borderlines.of(map.edges(), kinds.kindOfStack(), crew),
                            kinds,
                            List.of(spread.from()),
                            List.of(spread),
                            crew)
                    .chains();
        }
    }

    private static PlanarMap cells(int side, int... stacks) {
        return Chequers.of(side, SIZE, stacks).map(3, new Random(SEED));
    }
}
