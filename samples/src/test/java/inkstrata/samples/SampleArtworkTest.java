package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.separation.FilmStack;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The samples themselves, as jsvg draws them. */
class SampleArtworkTest {
    @Test
    void thereAreTheSamplesThatTheReadmeSpeaksOf() {
        assertThat(Sample.all())
                .extracting(Sample::name)
                .contains("orchard", "ropeway", "carafe", "lampions", "kites", "moths", "blind", "herons");
    }

    static List<Sample> everySample() {
        return Sample.all();
    }

    @ParameterizedTest
    @MethodSource("everySample")
    void eachHasAJobFileAndAPageThatSaysWhatToLookFor(Sample sample) throws IOException {
        assertThat(Files.readString(sample.job())).contains("title:");
        assertThat(Files.readString(sample.about())).contains("What to look for");
    }

    @ParameterizedTest
    @MethodSource("everySample")
    void everyListedInkShowsAndNothingElseDoes(Sample sample) throws IOException {
        List<Rgb> inks = sample.listedInks();
        if (inks.isEmpty()) {
            assertThat(sample.name())
                    .as("only this one leaves its inks to the drawing")
                    .isEqualTo("lampions");
            return;
        }
        Map<Rgb, Integer> seen = colours(sample);
        assertThat(seen.keySet()).containsAll(inks);
        int made = sample.name().equals("kites") ? 1 : 0;
        assertThat(seen)
                .as("the inks, what they make over each other, and the sheet")
                .hasSize(inks.size() + made + 1);
        assertThat(seen.values()).as("nothing is a speck").allMatch(pixels -> pixels > 500);
    }

    /** Each colour with the number of its pixels, drawn 700 pixels wide without antialiasing. */
    private static Map<Rgb, Integer> colours(Sample sample) throws IOException {
        Frame frame = Press.read(sample).frame();
        Size size = new Size(700, 700 * frame.height() / frame.width());
        BufferedImage image = FilmStack.drawing(sample.drawing(), Rgb.WHITE, size, 1);
        Map<Rgb, Integer> seen = new TreeMap<>();
        for (int y = 1; y < image.getHeight() - 1; y++) {
            for (int x = 1; x < image.getWidth() - 1; x++) {
                seen.merge(Rgb.of(image.getRGB(x, y) & 0xffffff), 1, Integer::sum);
            }
        }
        return seen;
    }
}
