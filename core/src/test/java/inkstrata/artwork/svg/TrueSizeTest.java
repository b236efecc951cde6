package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Note;
import inkstrata.measure.Frame;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

class TrueSizeTest {
    private final Notes notes = new Notes();

    private Frame size(String attributes, ReadOptions options) {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' " + attributes + "/>";
        Element root = SafeXml.parse("test.svg", text.getBytes(StandardCharsets.UTF_8), notes)
                .getDocumentElement();
        return TrueSize.of("test.svg", root, options, notes);
    }

    private static ReadOptions options(double widthMm, double unitsPerInch) {
        return new ReadOptions(
                widthMm > 0 ? OptionalDouble.of(widthMm) : OptionalDouble.empty(),
                unitsPerInch > 0 ? OptionalDouble.of(unitsPerInch) : OptionalDouble.empty(),
                false);
    }

    /** Absolute units after CSS Values and Units 4, section 6.2: 1 in = 2.54 cm = 25.4 mm = 101.6 Q = 72 pt = 6 pc = 96 px. */
    @ParameterizedTest
    @CsvSource({
        "254mm, 254",
        "25.4cm, 254",
        "10in, 254",
        "720pt, 254",
        "60pc, 254",
        "1016Q, 254",
        "960px, 254",
        "960, 254",
        "1.016e3q, 254",
        "' 254 mm ', 254"
    })
    void widthInUnits(String width, double millimetres) {
        Frame frame = size("width='" + width + "' height='100mm'", ReadOptions.DEFAULT);
        assertThat(frame.width()).isCloseTo(millimetres, within(1e-9));
        assertThat(frame.height()).isEqualTo(100);
    }

    /** A missing side follows the viewBox's shape; 'auto' after SVG 2, section 8.2. */
    @ParameterizedTest
    @CsvSource({
        "width='80mm', 80, 40",
        "height='80mm', 160, 80",
        "width='80mm' height='100%', 80, 40",
        "width='auto' height='80mm', 160, 80",
        "width='100mm' height='100mm', 100, 100"
    })
    void missingSideFollowsTheViewBox(String attributes, double width, double height) {
        Frame frame = size(attributes + " viewBox='5 5 200 100'", ReadOptions.DEFAULT);
        assertThat(frame).isEqualTo(new Frame(0, 0, width, height));
        assertThat(notes.list()).isEmpty();
    }

    @Test
    void bareNumbersAreCssPixelsAndANoteSaysTheSize() {
        Frame frame = size("viewBox='0 0 960,480' width='100%'", ReadOptions.DEFAULT);
        assertThat(frame.width()).isCloseTo(254, within(1e-9));
        assertThat(notes.list())
                .extracting(Note::text)
                .containsExactly("the drawing does not say how large it is in mm or inches: its numbers were read as"
                        + " px, 96 to the inch, and the picture prints 254.00 x 127.00 mm. If that is wrong, give --width or"
                        + " --units-per-inch.");
    }

    @Test
    void unitsPerInchReplacesTheCssPixel() {
        Frame frame = size("width='720' height='360'", options(0, 72));
        assertThat(frame.width()).isCloseTo(254, within(1e-9));
        assertThat(size("width='10mm' height='20mm'", options(0, 72)).width()).isEqualTo(10);
        assertThat(notes.list()).isEmpty();
    }

    @Test
    void widthFromTheCounterWins() {
        Frame frame = size("width='10mm' height='20mm' viewBox='0 0 7 7'", options(300, 72));
        assertThat(frame).isEqualTo(new Frame(0, 0, 300, 600));
        assertThat(size("viewBox='0 0 4 3'", options(400, 0))).isEqualTo(new Frame(0, 0, 400, 300));
    }

    @ParameterizedTest
    @CsvSource({
        "'', does not say how large",
        "width='10mm', does not say how large",
        "width='50%' height='50%', does not say how large",
        "viewBox='0 0 0 10', does not say how large",
        "width='9m' height='10mm', does not say how large",
        "width='9000mm' height='10mm', a sheet ends at 8389 mm",
        "width='1e-9mm' height='10mm', nothing to print"
    })
    void sizesThatCannotBeAreRefused(String attributes, String message) {
        assertThatThrownBy(() -> size(attributes, ReadOptions.DEFAULT))
                .isInstanceOf(ArtworkException.class)
                .hasMessageStartingWith("test.svg:1 <svg>: ")
                .hasMessageContaining(message);
    }

    @ParameterizedTest
    @CsvSource({"width='3 bananas', width", "height='-5mm', height", "viewBox='1 2 3', viewBox", "width='3vw', width"})
    void whatIsNoSizeIsNoted(String attribute, String name) {
        String rest = name.equals("viewBox") ? " width='5mm' height='5mm'" : " viewBox='0 0 10 10'";
        size(attribute + rest, ReadOptions.DEFAULT);
        assertThat(notes.list().get(0).text()).startsWith(name + " '").endsWith("left out");
    }
}
