package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.job.Job;
import inkstrata.job.JobReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The pictures of the README are what the program makes today.
 *
 * <p>To draw them anew: {@code mvn -pl samples -am test -Dtest=GalleryTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dtest.jvm.options=-Dgallery.rewrite=true}, then look at them.
 */
class GalleryTest {
    /** Renderers and JDKs draw soft edges in slightly different ways; a moved or missing film changes far more. */
    private static final double MEAN_DIFFERENCE = 1.0;

    @ParameterizedTest
    @ValueSource(strings = {"orchard", "carafe", "ropeway", "kites", "moths", "blind", "herons"})
    void theCommittedPictureIsWhatTheFilmsMakeToday(String name) throws IOException {
        Sample sample = new Sample(name);
        Job job = JobReader.read(sample.job());
        Map<String, byte[]> files = Press.files(Press.read(sample), job, Press.plugins());
        BufferedImage today = Gallery.draw(sample.drawing(), Films.of(files), PlannedFilms.of(files));
        Path committed = Path.of(name, "gallery.png").toAbsolutePath();
        if (Boolean.getBoolean("gallery.rewrite")) {
            ImageIO.write(today, "png", committed.toFile());
        }
        assertThat(meanDifference(ImageIO.read(committed.toFile()), today)).isLessThan(MEAN_DIFFERENCE);
        assertThat(Files.size(committed)).as("a page should load fast").isLessThan(300_000);
    }

    /** Of all channels of all pixels, 0 to 255. */
    private static double meanDifference(BufferedImage a, BufferedImage b) {
        assertThat(a.getWidth()).isEqualTo(b.getWidth());
        assertThat(a.getHeight()).isEqualTo(b.getHeight());
        long sum = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                int p = a.getRGB(x, y);
                int q = b.getRGB(x, y);
                for (int shift = 0; shift < 24; shift += 8) {
                    sum += Math.abs((p >> shift & 255) - (q >> shift & 255));
                }
            }
        }
        return sum / (3.0 * a.getWidth() * a.getHeight());
    }
}
