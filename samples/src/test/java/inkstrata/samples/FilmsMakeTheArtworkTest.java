package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.separation.FilmStack.Film;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sample, read and printed as its job file asks, traps and all: the films laid over each other and drawn by jsvg, beside
 * jsvg's picture of the drawing.
 *
 * <p>Traps do not show: what gives way is printed first, beneath the darker ink it reaches under.
 */
class FilmsMakeTheArtworkTest {
    /**
     * Odd, so that edges do not run through the middle of pixels: of a side that is cut at another place for each film they may be a
     * tenth of a micrometre apart, since lines meet curves on the grid. Java lays dashes of circles up to a tenth of a millimetre beside where
     * they belong; at this size no pixel shows it.
     */
    private static final double PIXELS_PER_MM = 2.31;

    /** jsvg lets the members of a translucent group shine through one by one; there the umpire decides. */
    private static final String JSVG_DIFFERS = "lampions";

    /** Those whose inks make colours of their own over each other are {@link PredictedColoursTest}'s. */
    static List<Sample> everySample() {
        return Sample.all().stream()
                .filter(sample -> !Set.of("kites", "blind", "herons").contains(sample.name()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("everySample")
    void filmsLaidOverEachOtherMakeTheArtwork(Sample sample) throws IOException {
        PrintedAgain print =
                PrintedAgain.of(Press.print(sample), sample.drawing(), PrintedAgain.ROUNDED, PIXELS_PER_MM);
        assertThat(sample.name().equals(JSVG_DIFFERS) ? print.faults(Press.read(sample)) : print.disagreements())
                .isEmpty();
        assertThat(print.comparison().differences())
                .as("pixels on borders")
                .hasSizeLessThan(print.comparison().pixels() / 50);
    }

    @Test
    void twoFilmsInTheWrongOrderAreFound() throws IOException {
        Sample sample = new Sample("ropeway");
        Films right = Press.print(sample);
        List<Film> swapped = new ArrayList<>(right.films());
        swapped.add(3, swapped.remove(4));
        Films wrong = new Films(right.sheet(), right.bare(), right.picture(), swapped);
        assertThat(PrintedAgain.of(wrong, sample.drawing(), 0, PIXELS_PER_MM / 7)
                        .disagreements())
                .isNotEmpty();
    }
}
