package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Rgb;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.separation.FilmStack;
import inkstrata.separation.FilmStack.Comparison;
import inkstrata.separation.FilmStack.Difference;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Films of a drawing that jsvg read, laid over each other and drawn by jsvg, beside jsvg's picture of the drawing. */
class FilmsMakeTheArtworkTest {
    private static final double PIXELS_PER_MM = 5;

    /**
     * How far from a border of the drawing a pixel may differ, in pixels: where an edge passes within rounding of a pixel's
     * middle, drawing and film may fall to different sides of it.
     */
    private static final double ROUNDING = 1.5;

    /** How many of the pixels that differ at a border are looked at through the magnifying glass. */
    private static final int LOOKED_AT = 40;

    /** Two ways of flattening a curve to 5 µm may differ by twice that. */
    private static final double HAIR_MM = 0.01;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "orchard, 400, 560, 500, 700, #f7efdc",
        "ropeway, 180, 240, 250, 320, #ffffff",
        "carafe, 120, 160, 180, 220, #ffffff"
    })
    void filmsLaidOverEachOtherMakeTheArtwork(
            String name, double width, double height, double sheetWidth, double sheetHeight, String bare)
            throws Exception {
        Sample sample = new Sample(name);
        Size size = new Size(width, height);
        Size sheet = new Size(sheetWidth, sheetHeight);
        Films films = Press.print(sample, size, sheet, Rgb.parse(bare), folder);
        Comparison comparison = FilmStack.compare(
                FilmStack.drawing(sample.drawing(), films.bare(), size, PIXELS_PER_MM),
                FilmStack.print(films.films(), films.bare(), films.picture(), PIXELS_PER_MM));
        List<Difference> real = comparison.differences();
        List<Difference> unexplained = new ArrayList<>(real.stream()
                .filter(difference -> difference.toBorder() > ROUNDING)
                .toList());
        int step = Math.max(1, real.size() / LOOKED_AT);
        for (int i = 0; i < real.size(); i += step) {
            unexplained.add(real.get(i));
        }
        byte[] drawing = sample.drawing();
        unexplained.removeIf(difference -> isInTheDrawing(drawing, films, size, difference));
        assertThat(unexplained).isEmpty();
        assertThat(real.size()).isLessThan(comparison.pixels() / 100);
    }

    /** Whether the drawing itself has the printed colour there, seen from so near that pixels no longer matter. */
    private static boolean isInTheDrawing(byte[] drawing, Films films, Size size, Difference difference) {
        Place place = new Place((difference.x() + 0.5) / PIXELS_PER_MM, (difference.y() + 0.5) / PIXELS_PER_MM);
        return FilmStack.toColour(drawing, films.bare(), size, place, difference.printed(), HAIR_MM) < HAIR_MM;
    }
}
