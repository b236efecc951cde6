package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.github.ajalt.colormath.Color;
import com.github.ajalt.colormath.CssParseKt;
import inkstrata.colour.CssColourNames;
import inkstrata.colour.Rgb;
import java.util.List;
import java.util.Locale;
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
        assertThat(List.copyOf(CssColourNames.all().keySet())).isSorted();
    }

    /** colormath has a table and a parser of its own. Batik's table is wrong, among others for gainsboro and lavenderblush. */
    @Test
    void namesAgreeWithAnotherLibrary() {
        for (var entry : CssColourNames.all().entrySet()) {
            assertThat(otherLibrary(entry.getKey())).as(entry.getKey()).isEqualTo(entry.getValue());
        }
    }

    @Test
    void functionsAgreeWithAnotherLibrary() {
        for (int hue = -360; hue <= 720; hue += 37) {
            for (int s = 0; s <= 100; s += 23) {
                for (int l = 0; l <= 100; l += 17) {
                    for (String call : List.of("hsl(%d %d%% %d%%)", "hwb(%d %d%% %d%%)")) {
                        String css = String.format(Locale.ROOT, call, hue, s, l);
                        Rgb ours = read(css).rgb();
                        Rgb theirs = otherLibrary(css);
                        // They compute in 32 bits: halves may round the other way.
                        assertThat(Math.abs(ours.red() - theirs.red())).as(css).isLessThanOrEqualTo(1);
                        assertThat(Math.abs(ours.green() - theirs.green()))
                                .as(css)
                                .isLessThanOrEqualTo(1);
                        assertThat(Math.abs(ours.blue() - theirs.blue()))
                                .as(css)
                                .isLessThanOrEqualTo(1);
                    }
                }
            }
        }
    }

    private static Rgb otherLibrary(String css) {
        var rgb = CssParseKt.parse(Color.Companion, css).toSRGB();
        return new Rgb(channel(rgb.getR()), channel(rgb.getG()), channel(rgb.getB()));
    }

    private static int channel(float value) {
        return Math.max(0, Math.min(255, Math.round(value * 255)));
    }
}
