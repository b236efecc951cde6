package inkstrata.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said to hold does. */
class LengthTextTest {
    @ParameterizedTest
    @CsvSource({"0, 0.00", "0.0099, 0.00", "0.01, 0.01", "0.3, 0.30", "0.309, 0.30", "0.3999999, 0.39", "0.4, 0.40"})
    void whatHoldsIsRoundedDown(double millimetres, String said) {
        assertThat(LengthText.down(millimetres)).isEqualTo(said);
        assertThat(Double.parseDouble(LengthText.down(millimetres))).isLessThanOrEqualTo(millimetres);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.00", "0.4, 0.40", "0.125, 0.125", "1, 1.00"})
    void whatWasAskedIsSaidInFull(double millimetres, String said) {
        assertThat(LengthText.asked(millimetres)).isEqualTo(said);
    }
}
