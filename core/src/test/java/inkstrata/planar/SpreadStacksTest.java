package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class SpreadStacksTest {
    private static final int CORRIDOR = 2;

    /** Area 0 lies where kind 0 does, and spreads into kind 1. */
    private final UnaryOperator<int[]> meaning = meaning();

    @Test
    void aCorridorCountsOverWhatItMaySpreadOverAlone() {
        assertThat(meaning.apply(new int[] {CORRIDOR, 1})).containsExactly(CORRIDOR, 1);
        assertThat(meaning.apply(new int[] {CORRIDOR, 0})).containsExactly(0);
        assertThat(meaning.apply(new int[] {CORRIDOR})).isEmpty();
    }

    /** As in the flag 1x1/sv, 200 mm wide, where three kinds lay in one cell narrower than a grid step. */
    @Test
    void ofKindsThatRoundingHasBentOverEachOtherTheFirstCounts() {
        assertThat(meaning.apply(new int[] {1, 0})).containsExactly(0);
        assertThat(meaning.apply(new int[] {CORRIDOR, 1, 0})).containsExactly(0);
    }

    private static UnaryOperator<int[]> meaning() {
        StackSet giving = StackSet.of(0);
        StackSet receiving = StackSet.of(1);
        StackKinds kinds = StackKinds.of(2, List.of(giving, receiving));
        assertThat(kinds.count()).isEqualTo(CORRIDOR);
        Spread spread = new Spread(0, giving, receiving, receiving, 0.3, false);
        return SpreadStacks.meaning(kinds, List.of(giving), List.of(spread));
    }
}
