package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.measure.Grid;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class GridTextTest {
    @Test
    void everyStepOfAMillimetreIsWrittenAsItsShortestExactDecimal() {
        for (int whole : new int[] {0, 1, 499, 8387}) {
            for (int part = 0; part < Grid.STEPS_PER_MM; part++) {
                int steps = whole * Grid.STEPS_PER_MM + part;
                String exact = new BigDecimal(steps)
                        .divide(new BigDecimal(Grid.STEPS_PER_MM))
                        .stripTrailingZeros()
                        .toPlainString();
                assertThat(GridText.of(steps)).isEqualTo(exact);
                assertThat(GridText.of(-steps)).isEqualTo(steps == 0 ? "0" : "-" + exact);
            }
        }
    }

    @Test
    void theLastLinesOfTheGridAreWritten() {
        assertThat(GridText.of(Grid.LIMIT - 1)).isEqualTo("8388.60775");
        assertThat(GridText.of(1 - Grid.LIMIT)).isEqualTo("-8388.60775");
    }
}
