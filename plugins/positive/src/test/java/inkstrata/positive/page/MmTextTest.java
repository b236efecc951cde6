package inkstrata.positive.page;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.measure.Grid;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class MmTextTest {
    @Test
    void everyStepOfAMillimetreIsWrittenAsItsShortestExactDecimal() {
        for (int whole : new int[] {0, 1, 499, 8387}) {
            for (int part = 0; part < Grid.STEPS_PER_MM; part++) {
                int steps = whole * Grid.STEPS_PER_MM + part;
                String exact = new BigDecimal(steps)
                        .divide(new BigDecimal(Grid.STEPS_PER_MM))
                        .stripTrailingZeros()
                        .toPlainString();
                assertThat(MmText.of(Grid.millimetres(steps))).isEqualTo(exact);
                assertThat(MmText.of(Grid.millimetres(-steps))).isEqualTo(steps == 0 ? "0" : "-" + exact);
            }
        }
    }

    @Test
    void theLastLinesOfTheGridAreWritten() {
        assertThat(MmText.of(Grid.millimetres(Grid.LIMIT - 1))).isEqualTo("8388.60775");
        assertThat(MmText.of(Grid.millimetres(1 - Grid.LIMIT))).isEqualTo("-8388.60775");
    }
}
