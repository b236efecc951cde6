package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.CssColourNames;
import inkstrata.colour.Rgb;
import java.util.Locale;
import org.apache.batik.css.engine.value.Value;
import org.apache.batik.css.engine.value.svg.SVGValueConstants;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CssColourTest {
    private static CssColour read(String css) {
        return CssColour.parse(css).orElseThrow(() -> new AssertionError(css + " is a colour"));
    }

    /** Examples of CSS Color 4, sections 4 to 8 and 10, and the hsl() of colours named in section 6.1. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "#0f0 | #00ff00 | 1",
                "#0F08 | #00ff00 | 0.5333333333",
                "#00FF00 | #00ff00 | 1",
                "#0000ffcc | #0000ff | 0.8",
                "rgb(0 255 0) | #00ff00 | 1",
                "rgb(0, 255, 0) | #00ff00 | 1",
                "rgb(0% 100% 0%) | #00ff00 | 1",
                "rgba(0, 0, 255, 0.5) | #0000ff | 0.5",
                "rgb(0 0 255 / 50%) | #0000ff | 0.5",
                "rgb(none 300 -20 / 7) | #00ff00 | 1",
                "rgb(12.4 12.5 12.6) | #0c0d0d | 1",
                "rgb(50% 50% 50%) | #808080 | 1",
                "hsl(120deg 100% 50%) | #00ff00 | 1",
                "hsl(120, 100%, 25%) | #008000 | 1",
                "hsla(0.3333333333turn, 100%, 75%, .25) | #80ff80 | 0.25",
                "hsl(270 50% 40%) | #663399 | 1",
                "hsl(-90 50 40) | #663399 | 1",
                "hsl(300grad 50% 40%) | #663399 | 1",
                "hwb(150 20% 10%) | #33e68c | 1",
                "hwb(45 40% 80%) | #555555 | 1",
                "hwb(0 100% 100% / 0.4) | #808080 | 0.4",
                "rebeccapurple | #663399 | 1",
                "RebeccaPurple | #663399 | 1",
                "transparent | #000000 | 0",
                "color(srgb 1 0.5 0%) | #ff8000 | 1"
            })
    void readsCssColour4(String css, String rgb, double alpha) {
        assertThat(read(css).rgb()).hasToString(rgb);
        assertThat(read(css).alpha()).isCloseTo(alpha, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "#12",
                "#12345",
                "#ggg",
                "rgb(1,2)",
                "rgb(1 2 3 4 5)",
                "rgb(a b c)",
                "rgb(1 2 3",
                "lab(50% 0 0)",
                "color(display-p3 1 0 0)",
                "currentcolor",
                "reddish",
                "hsl(12px 1% 1%)",
                "rgb(NaN 0 0)",
                "rgb(1d 0 0)"
            })
    void whatIsNoColourOfSrgbIsEmpty(String css) {
        assertThat(CssColour.parse(css)).isEmpty();
    }

    @Test
    void thereAre148NamesInAlphabeticalOrder() {
        assertThat(CssColourNames.all()).hasSize(148);
        assertThat(java.util.List.copyOf(CssColourNames.all().keySet())).isSorted();
    }

    /** Batik's table of SVG 1.1, section 4.4; its gainsboro (#dcc8c8) is wrong, the standard's is #dcdcdc. */
    @Test
    void namesAgreeWithBatiksTableButForItsOneFault() throws IllegalAccessException {
        for (var entry : CssColourNames.all().entrySet()) {
            if (entry.getKey().equals("rebeccapurple") || entry.getKey().equals("gainsboro")) {
                continue;
            }
            assertThat(batiks(entry.getKey())).as(entry.getKey()).isEqualTo(entry.getValue());
        }
        assertThat(CssColourNames.named("gainsboro")).contains(Rgb.parse("#dcdcdc"));
    }

    private static Rgb batiks(String name) throws IllegalAccessException {
        String field = name.toUpperCase(Locale.ROOT) + "_RGB_VALUE";
        try {
            Value value = (Value) SVGValueConstants.class.getField(field).get(null);
            return new Rgb(
                    (int) value.getRed().getFloatValue(), (int) value.getGreen().getFloatValue(), (int)
                            value.getBlue().getFloatValue());
        } catch (NoSuchFieldException notThere) {
            throw new AssertionError(name, notThere);
        }
    }
}
