package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.house.HowMany;
import inkstrata.measure.Frame;
import inkstrata.separation.FilmStack.Difference;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Films of random drawings, laid over each other in print order, are the drawings.
 *
 * <p>jsvg is seen to be wrong where it intersects self-crossing clips by {@link java.awt.geom.Area} (drawings 4, 23 and 47, for
 * example); there the umpire decides.
 */
class GeneratedFilmsTest {
    private static final double PIXELS_PER_MM = 6.1;

    @Test
    void filmsLaidOverEachOtherAreTheDrawing() throws IOException {
        Map<Long, String> faults = new TreeMap<>();
        for (long seed = 1; seed <= HowMany.of(20); seed++) {
            GeneratedDrawing drawing = GeneratedDrawing.of(seed);
            List<Difference> found = PrintedAgain.of(drawing.artwork(), drawing.svg(), PIXELS_PER_MM)
                    .faults(drawing.artwork());
            if (!found.isEmpty()) {
                faults.put(seed, found.size() + " pixels, the first is " + found.get(0));
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void shapesMovedByALittleMoreThanThatAreFound() throws IOException {
        GeneratedDrawing drawing = GeneratedDrawing.of(1);
        Frame frame = drawing.artwork().frame();
        Artwork moved = drawing.artwork().movedBy(0.06, 0);
        Artwork inPlace = new Artwork("moved.svg", frame, moved.shapes(), List.of());
        assertThat(PrintedAgain.of(inPlace, drawing.svg(), PIXELS_PER_MM).faults(drawing.artwork()))
                .isNotEmpty();
    }
}
