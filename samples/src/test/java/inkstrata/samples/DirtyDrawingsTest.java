package inkstrata.samples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.separation.FilmStack.Difference;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Drawings as programs export them, through the whole line: read, planned, written as films; these laid over each other in print order and drawn by
 * jsvg are jsvg's picture of the drawing. No umpire of ours takes part. Only traps are left out: a light ink that prints after a dark one shows its rim.
 */
class DirtyDrawingsTest {
    private static final double PIXELS_PER_MM = 4.13;

    /** Near-equal colours are printed with one ink: those one level apart, and no others of these drawings. */
    private static final int LEVELS = 2;

    private static final Job JOB = JobReader.read("", "merge: 0.6");

    @Test
    void filmsOfDirtyDrawingsMakeThem() throws IOException {
        assertThat(faults(0, 25)).isEmpty();
    }

    @Test
    @Tag("long")
    void filmsOfManyDirtyDrawingsMakeThem() throws IOException {
        assertThat(faults(Long.getLong("laws.from", 25), Long.getLong("laws.drawings", 600)))
                .isEmpty();
    }

    /** A drawing with one shape more is seen to be another. */
    @Test
    void aShapeTooManyIsFound() throws IOException {
        byte[] svg = DirtyDrawing.of(1);
        byte[] more = new String(svg, UTF_8)
                .replace("</svg>", "<rect width='50%' height='50%' fill='#808001'/></svg>")
                .getBytes(UTF_8);
        assertThat(again(more, svg)).isNotEmpty();
    }

    private static Map<Long, String> faults(long from, long drawings) throws IOException {
        Map<Long, String> faults = new TreeMap<>();
        for (long seed = from; seed < from + drawings; seed++) {
            byte[] svg = DirtyDrawing.of(seed);
            List<Difference> found = again(svg, svg);
            if (!found.isEmpty()) {
                faults.put(seed, found.size() + " pixels, the first is " + found.get(0));
            }
        }
        return faults;
    }

    private static List<Difference> again(byte[] printed, byte[] drawn) throws IOException {
        Artwork artwork = SvgReader.read("dirty.svg", new ByteArrayInputStream(printed), ReadOptions.DEFAULT);
        Films films = Films.of(Press.files(artwork, JOB, Press.withoutShapers()));
        return PrintedAgain.of(films, forJsvg(drawn), LEVELS, PIXELS_PER_MM).disagreements();
    }

    /**
     * Between two semicolons may be nothing (CSS Style Attributes, section 3: declaration-list); jsvg drops the declaration before them, so
     * that {@code fill-rule:evenodd;;} is nonzero to it. librsvg 2.54 reads it as we do.
     */
    private static byte[] forJsvg(byte[] svg) {
        return new String(svg, UTF_8).replace("evenodd;;", "evenodd").getBytes(UTF_8);
    }
}
