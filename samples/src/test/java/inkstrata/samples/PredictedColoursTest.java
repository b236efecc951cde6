package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Rgb;
import inkstrata.house.HowMany;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Size;
import inkstrata.plugin.Plugins;
import inkstrata.samples.PlannedFilms.PlannedFilm;
import inkstrata.separation.FilmStack;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * All films over each other, in the colours that inks make over one another, are the artwork within the tolerance of the plan.
 *
 * <p>Films are drawn by jsvg from the files, colours come from film code of the tests' own. Pixels beside borders are left out:
 * there rims lie.
 */
class PredictedColoursTest {
    /** CIEDE2000, {@code overprint.tolerance}. */
    private static final double TOLERANCE = 2;

    private static final double PIXELS_PER_MM = 2.3;

    /** Finer: jsvg makes strokes that are thinner than a pixel wider. */
    private static final double FLAG_PIXELS_PER_MM = 6.1;

    private static final int FLAGS = HowMany.of(30);

    /** All but the one whose translucent group jsvg draws in its own way. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ropeway", "carafe", "kites", "moths"})
    void samplesComeOutInTheirColours(String name) throws IOException {
        Sample sample = new Sample(name);
        Job job = JobReader.read(sample.job());
        PlannedFilms films = PlannedFilms.of(Press.files(Press.read(sample), job, withoutInspectors()));
        Looked looked = look(films, sample.drawing(), job.registerMm() + 0.5, PIXELS_PER_MM);
        assertThat(looked.faults).isEmpty();
        assertThat(looked.pixels).isGreaterThan(5_000);
    }

    /** The sun is printed on the back of a translucent sheet, which softens it; all else is as drawn. */
    @Test
    void whatIsPrintedOnTheBackIsSoftenedByTheSheet() throws IOException {
        Sample sample = new Sample("blind");
        Job job = JobReader.read(sample.job());
        PlannedFilms films = PlannedFilms.of(Press.files(Press.read(sample), job, withoutInspectors()));
        assertThat(films.films()).extracting(PlannedFilm::isBack).containsExactly(false, false, true);
        Looked looked = look(films, sample.drawing(), job.registerMm() + 0.5, PIXELS_PER_MM);
        assertThat(looked.faults).isEmpty();
        Rgb sun = films.seen(0b100).rgb();
        assertThat(Ciede2000.difference(sun, Rgb.parse("#f2913d")))
                .as("softened by the sheet: %s", sun)
                .isBetween(5.0, 30.0);
    }

    @Test
    void flagsComeOutInTheirColours() throws IOException {
        assertThat(comeOutInTheirColours(FLAGS)).isEqualTo(FLAGS);
    }

    @Tag("long")
    @Test
    void allFlatFlagsComeOutInTheirColours() throws IOException {
        assertThat(comeOutInTheirColours(Integer.MAX_VALUE)).isGreaterThan(250);
    }

    /** How many were printed. */
    private static int comeOutInTheirColours(int most) throws IOException {
        int printed = 0;
        List<String> faults = new ArrayList<>();
        for (String name : Flags.names()) {
            if (!name.startsWith("4x3") || printed == most) {
                continue;
            }
            byte[] svg;
            try (InputStream in = Flags.open(name)) {
                svg = in.readAllBytes();
            }
            Artwork flag;
            try {
                flag = SvgReader.read(
                        name,
                        new ByteArrayInputStream(svg),
                        new ReadOptions(OptionalDouble.of(60), OptionalDouble.empty(), false));
            } catch (ArtworkException notFlat) {
                continue;
            }
            printed++;
            Map<String, byte[]> files = Press.files(flag, Job.DEFAULT, Press.withoutShapers());
            for (String fault : look(PlannedFilms.of(files), svg, 0.5, FLAG_PIXELS_PER_MM).faults) {
                faults.add(name + ": " + fault);
            }
        }
        assertThat(faults).isEmpty();
        return printed;
    }

    private static Plugins withoutInspectors() {
        Plugins all = Press.plugins();
        return new Plugins(all.planners(), all.shapers(), List.of(), all.writers());
    }

    /** What was seen: how many pixels were compared, and each kind of fault once. */
    private static final class Looked {
        private final List<String> faults = new ArrayList<>();
        private int pixels;
    }

    private static Looked look(PlannedFilms films, byte[] svg, double borderMm, double perMm) {
        Size size = new Size(films.picture().width(), films.picture().height());
        BufferedImage drawing = FilmStack.drawing(svg, films.bare(), size, perMm);
        long[][] covers = films.covers(films.picture(), perMm);
        int border = (int) Math.ceil(borderMm * perMm);
        int[][] borders = borders(drawing, covers);
        Looked looked = new Looked();
        Map<Long, Lab> seen = new HashMap<>();
        Map<String, Boolean> known = new HashMap<>();
        for (int y = border; y < covers.length - border; y++) {
            for (int x = border; x < covers[y].length - border; x++) {
                if (isWithin(borders, x, y, border)) {
                    looked.pixels++;
                    Rgb drawn = Rgb.of(drawing.getRGB(x, y) & 0xffffff);
                    long cover = covers[y][x];
                    Lab print = seen.computeIfAbsent(
                            cover, there -> films.seen(there).lab());
                    if (known.putIfAbsent(cover + drawn.hex(), true) == null) {
                        double difference = Ciede2000.difference(Lab.of(drawn), print);
                        if (!(difference <= Math.max(TOLERANCE, alone(films, drawn)))) {
                            looked.faults.add(fault(films, cover, drawn, difference, x, y));
                        }
                    }
                }
            }
        }
        return looked;
    }

    /** For each pixel how many borders there are above it and to its left: beside a neighbour of another colour or with other films. */
    private static int[][] borders(BufferedImage drawing, long[][] covers) {
        int[][] sums = new int[covers.length + 1][covers[0].length + 1];
        for (int y = 0; y < covers.length; y++) {
            for (int x = 0; x < covers[y].length; x++) {
                boolean isBorder = (x > 0 && isOther(drawing, covers, x, y, x - 1, y))
                        || (y > 0 && isOther(drawing, covers, x, y, x, y - 1));
                sums[y + 1][x + 1] = sums[y][x + 1] + sums[y + 1][x] - sums[y][x] + (isBorder ? 1 : 0);
            }
        }
        return sums;
    }

    private static boolean isOther(BufferedImage drawing, long[][] covers, int x, int y, int besideX, int besideY) {
        return drawing.getRGB(x, y) != drawing.getRGB(besideX, besideY) || covers[y][x] != covers[besideY][besideX];
    }

    /** Whether no border runs through the square around a pixel. */
    private static boolean isWithin(int[][] borders, int x, int y, int reach) {
        int left = x - reach + 1;
        int top = y - reach + 1;
        int right = x + reach + 1;
        int bottom = y + reach + 1;
        return borders[bottom][right] - borders[top][right] - borders[bottom][left] + borders[top][left] == 0;
    }

    /** How far the ink of a colour is from it by itself on that sheet, or on the ground that is printed there. */
    private static double alone(PlannedFilms films, Rgb drawn) {
        double least = Ciede2000.difference(drawn, films.bare());
        double alone = 0;
        for (int i = 0; i < films.films().size(); i++) {
            double toInk = Ciede2000.difference(drawn, films.films().get(i).swatch());
            if (toInk < least) {
                least = toInk;
                alone = Ciede2000.difference(Lab.of(drawn), films.seen(1L << i).lab());
            }
        }
        return films.films().get(0).ink().equals("underbase") ? 0 : alone;
    }

    private static String fault(PlannedFilms films, long cover, Rgb drawn, double difference, int x, int y) {
        List<String> inks = new ArrayList<>();
        for (int i = 0; i < films.films().size(); i++) {
            if ((cover >> i & 1) != 0) {
                inks.add(films.films().get(i).ink());
            }
        }
        return String.format(
                Locale.ROOT,
                "%s drawn, %s printed by %s at pixel %d, %d: %.2f",
                drawn,
                films.seen(cover).rgb(),
                inks,
                x,
                y,
                difference);
    }
}
