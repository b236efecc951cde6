package inkstrata.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PaperSizeTest {
    /** ISO 216; ISO 217 and ANSI/ASME Y14.1 from memory. */
    @ParameterizedTest
    @CsvFileSource(resources = "paper.csv", numLinesToSkip = 1)
    void namedSizesAreTheStandards(String name, double width, double height, String standard) {
        Size size = PaperSize.parse(name);
        assertThat(size.width()).as(standard).isCloseTo(width, within(1e-9));
        assertThat(size.height()).as(standard).isCloseTo(height, within(1e-9));
        assertThat(PaperSize.parse(name + " landscape").width()).isCloseTo(height, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"500 x 700 mm, 500, 700", "50cm x 70cm, 500, 700", "19.5x27in, 495.3, 685.8", "500 × 700 mm, 500, 700"})
    void twoLengthsAreRead(String text, double width, double height) {
        assertThat(PaperSize.parse(text).width()).isCloseTo(width, within(1e-9));
        assertThat(PaperSize.parse(text).height()).isCloseTo(height, within(1e-9));
    }

    @Test
    void otherWordsAreRefusedWithAnExample() {
        assertThatThrownBy(() -> PaperSize.parse("large")).hasMessageContaining("500 x 700 mm");
        assertThatThrownBy(() -> PaperSize.parse("0 x 70 mm")).hasMessageContaining("more than 0");
        assertThatThrownBy(() -> PaperSize.parse("A11")).hasMessageContaining("A11");
    }

    /** CSS Values and Units 4, section 6.2. */
    @ParameterizedTest
    @CsvSource({"1in, 25.4", "2.54 cm, 25.4", "96px, 25.4", "72 pt, 25.4", "6pc, 25.4", "4Q, 1", "-.5e1 mm, -5"})
    void lengthsKnowTheUnitsOfCss(String text, double millimetres) {
        assertThat(Length.parse(text).millimetres()).isCloseTo(millimetres, within(1e-12));
    }
}
