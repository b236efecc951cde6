package inkstrata.trap;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The number of docs/trap.md from which on an overlap shows a third colour: farther than 10 from both inks. */
class ThirdColourTest {
    @ParameterizedTest
    @CsvSource({"9.99, 9.99, false", "9.99, 40, false", "40, 9.99, false", "10.01, 40, true", "40, 10.01, true"})
    void isFartherThan10FromBoth(double fromGiving, double fromInto, boolean isThird) {
        assertThat(new RimColour(fromGiving, fromInto, true).isThirdColour()).isEqualTo(isThird);
        assertThat(new RimColour(fromGiving, fromInto, false).isThirdColour()).isEqualTo(isThird);
    }
}
