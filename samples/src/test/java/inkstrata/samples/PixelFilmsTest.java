package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.planar.Region;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/**
 * Films of flags in pixels, knocked out and without trap, on a ground of a colour of its own, so that ink covers all of the picture:
 * every pixel is black on just one film, and each film's black measures what its region does, give or take half a pixel along
 * its outline.
 */
class PixelFilmsTest {
    private static final int FLAGS = 15;
    private static final int PER_INCH = 600;
    private static final double PIXEL_MM = 25.4 / PER_INCH;
    private static final Rgb GROUND = Rgb.of(0x0b1c2d);
    private static final Job JOB = JobReader.read(
            "pixels.yaml",
            "sheet: {colour: '#fdfefc'}\nmerge: 0\nuse:\n  positive: {formats: [png], resolution: 600, marks: false, bar: false, wedge: false}");

    @Test
    void everyPixelIsBlackOnJustOneFilm() throws IOException {
        Plugins all = Press.plugins();
        Plugins knockout = new Plugins(
                all.planners().stream()
                        .filter(planner -> planner.id().equals("knockout"))
                        .toList(),
                List.of(),
                List.of(),
                all.writers());
        Map<String, String> faults = new TreeMap<>();
        int looked = 0;
        for (String name : Flags.names()) {
            if (looked < FLAGS && name.startsWith("4x3")) {
                looked += flag(name, knockout, faults) ? 1 : 0;
            }
        }
        assertThat(looked).isEqualTo(FLAGS);
        assertThat(faults).isEmpty();
    }

    private static boolean flag(String name, Plugins plugins, Map<String, String> faults) throws IOException {
        Artwork artwork;
        try (InputStream in = Flags.open(name)) {
            artwork = SvgReader.read(name, in, new ReadOptions(OptionalDouble.of(40), OptionalDouble.empty(), false));
        } catch (ArtworkException refused) {
            assertThat(refused).hasMessageContaining("fill is a gradient");
            return false;
        }
        Frame frame = artwork.frame();
        List<FlatShape> shapes = new ArrayList<>(artwork.shapes());
        Outline ground = Outline.rectangle(frame.x(), frame.y(), frame.width(), frame.height());
        shapes.add(0, FlatShape.opaque(new Area(ground, FillRule.NONZERO), GROUND, Source.UNKNOWN));
        Separation separation = new Separator(plugins).separate(artwork.withShapes(shapes), JOB);
        List<BufferedImage> films = new ArrayList<>();
        for (Map.Entry<String, byte[]> file :
                Press.files(separation, JOB, plugins).entrySet()) {
            if (file.getKey().matches("\\d.*\\.png")) {
                films.add(ImageIO.read(new ByteArrayInputStream(file.getValue())));
            }
        }
        compare(name, separation, films, faults);
        return true;
    }

    private static void compare(
            String name, Separation separation, List<BufferedImage> films, Map<String, String> faults) {
        Frame picture = separation.artwork().frame();
        BufferedImage first = films.get(0);
        int wrong = 0;
        int[] black = new int[films.size()];
        for (int y = 0; y < first.getHeight(); y++) {
            double down = (y + 0.5) * PIXEL_MM - picture.y();
            for (int x = 0; x < first.getWidth(); x++) {
                double across = (x + 0.5) * PIXEL_MM - picture.x();
                if (across <= 0 || across >= picture.width() || down <= 0 || down >= picture.height()) {
                    continue;
                }
                int times = 0;
                for (int film = 0; film < films.size(); film++) {
                    boolean isBlack = (films.get(film).getRGB(x, y) & 0xffffff) == 0;
                    times += isBlack ? 1 : 0;
                    black[film] += isBlack ? 1 : 0;
                }
                wrong += times == 1 ? 0 : 1;
            }
        }
        if (wrong > 0) {
            faults.put(name, wrong + " pixels are not black on just one film");
        }
        for (int film = 0; film < black.length; film++) {
            Region printed = separation.printed().get(film);
            double off = Math.abs(black[film] * PIXEL_MM * PIXEL_MM - printed.areaMm2());
            if (!(off <= 0.5 * PIXEL_MM * printed.perimeterMm())) {
                faults.put(name + " film " + (film + 1), off + " mm2 off");
            }
        }
    }
}
