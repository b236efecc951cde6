package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Films of the orchard, a sheet of 500 x 700 mm in eleven inks, in the hands of programs that are not ours. Needs pdfinfo and
 * pdftoppm (poppler-utils), qpdf, gs (ghostscript) and tiffinfo (libtiff-tools) on the PATH.
 */
@Tag("long")
class OtherProgramsTest {
    private static final double WIDTH_MM = 500;
    private static final double HEIGHT_MM = 700;
    private static final int PER_INCH = 600;

    @TempDir
    private static Path folder;

    private static int films;
    private static Frame picture;
    private static final List<Double> outlinesMm = new ArrayList<>();

    @BeforeAll
    static void print() throws IOException {
        Sample sample = Sample.all().stream()
                .filter(one -> one.name().equals("orchard"))
                .findFirst()
                .orElseThrow();
        Job job = JobReader.read(
                "orchard.yaml",
                Files.readString(sample.job()) + "  positive: {formats: [svg, pdf, pdf-inks, tiff], resolution: "
                        + PER_INCH + "}\n");
        Separation separation = new Separator(Press.plugins()).separate(Press.read(sample), job);
        picture = separation.artwork().frame();
        separation.printed().forEach(region -> outlinesMm.add(region.perimeterMm()));
        for (Map.Entry<String, byte[]> file :
                Press.files(separation, job, Press.plugins()).entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
            films += file.getKey().matches("\\d.*\\.svg") ? 1 : 0;
        }
        assertThat(films).isEqualTo(11);
    }

    @Test
    void pdfinfoFindsTheSheetsSize() throws IOException, InterruptedException {
        for (String file : List.of("films.pdf", "inks.pdf")) {
            String said = run("pdfinfo", "-box", "-f", "1", "-l", "99", file);
            List<MatchResult> boxes = Pattern.compile(
                            "(MediaBox|TrimBox): +([0-9.-]+) +([0-9.-]+) +([0-9.-]+) +([0-9.-]+)")
                    .matcher(said)
                    .results()
                    .toList();
            assertThat(boxes).hasSize(2 * (file.equals("films.pdf") ? films : 1));
            for (MatchResult box : boxes) {
                assertThat(mm(box.group(4)) - mm(box.group(2))).isCloseTo(WIDTH_MM, within(0.02));
                assertThat(mm(box.group(5)) - mm(box.group(3))).isCloseTo(HEIGHT_MM, within(0.02));
            }
        }
    }

    private static double mm(String points) {
        return Double.parseDouble(points) * 25.4 / 72;
    }

    @Test
    void qpdfFindsNothingWrong() throws IOException, InterruptedException {
        for (String file : List.of("films.pdf", "inks.pdf")) {
            assertThat(run("qpdf", "--check", file)).contains("No syntax or stream encoding errors found");
        }
    }

    @Test
    void tiffinfoFindsPixelsAndResolution() throws IOException, InterruptedException {
        for (String file : files("\\d.*\\.tif")) {
            String said = run("tiffinfo", file);
            assertThat(number(said, "Image Width: (\\d+)")).isCloseTo(WIDTH_MM / 25.4 * PER_INCH, within(1.0));
            assertThat(number(said, "Image Length: (\\d+)")).isCloseTo(HEIGHT_MM / 25.4 * PER_INCH, within(1.0));
            assertThat(said).contains("CCITT Group 4", "pixels/cm");
            assertThat(number(said, "Resolution: ([0-9.]+)") * 2.54).isCloseTo(PER_INCH, within(0.01));
        }
    }

    /**
     * Poppler, PDFBox and our own pixels, by what is black of the picture. Poppler blackens each quarter of a pixel that it touches,
     * which widens all it draws by an eighth of a pixel on average; so much more along outlines is granted.
     */
    @Test
    void renderersDrawTheSameFilms() throws IOException, InterruptedException {
        List<String> tiffs = files("\\d.*\\.tif");
        try (PDDocument document = Loader.loadPDF(folder.resolve("films.pdf").toFile())) {
            for (int i = 0; i < films; i++) {
                String page = Integer.toString(i + 1);
                run("pdftoppm", "-r", "600", "-gray", "-singlefile", "-f", page, "-l", page, "films.pdf", "poppler");
                double other = darkMm2(pgm(folder.resolve("poppler.pgm")), 255);
                double box = darkMm2(
                        new PDFRenderer(document)
                                .renderImageWithDPI(i, PER_INCH, ImageType.GRAY)
                                .getData(),
                        255);
                double ours = darkMm2(
                        ImageIO.read(folder.resolve(tiffs.get(i)).toFile()).getData(), 1);
                double widened = outlinesMm.get(i) * 25.4 / PER_INCH / 8;
                assertThat(ours).as("film %d, our pixels beside PDFBox", i + 1).isCloseTo(box, within(1e-3 * box));
                assertThat(other)
                        .as("film %d, poppler beside PDFBox", i + 1)
                        .isCloseTo(box + widened / 2, within(1e-3 * box + widened / 2));
            }
        }
    }

    /**
     * The plates that Ghostscript takes from the page with all inks are the films as it draws them one by one: pixel for pixel, but for
     * a few on outlines, where its two devices round differently.
     */
    @Test
    void separationsAreTheFilms() throws IOException, InterruptedException {
        run(
                "gs",
                "-q",
                "-dBATCH",
                "-dNOPAUSE",
                "-sDEVICE=tiffsep",
                "-dMaxSpots=32",
                "-r300",
                "-sOutputFile=plates.tif",
                "inks.pdf");
        run(
                "gs",
                "-q",
                "-dBATCH",
                "-dNOPAUSE",
                "-sDEVICE=tiffgray",
                "-r300",
                "-sOutputFile=film-%02d.tif",
                "films.pdf");
        List<String> plates = files("plates.*\\(\\d\\d .*\\)\\.tif");
        assertThat(plates).hasSize(films);
        for (int i = 0; i < films; i++) {
            BufferedImage plate = ImageIO.read(folder.resolve(plates.get(i)).toFile());
            BufferedImage film = ImageIO.read(
                    folder.resolve(String.format("film-%02d.tif", i + 1)).toFile());
            assertThat(plate.getWidth()).isEqualTo(film.getWidth());
            int black = 0;
            int more = 0;
            int away = 0;
            for (int y = 0; y < film.getHeight(); y++) {
                for (int x = 0; x < film.getWidth(); x++) {
                    int one = plate.getRaster().getSample(x, y, 0);
                    int other = film.getRaster().getSample(x, y, 0);
                    black += other == 0 ? 1 : 0;
                    more += Integer.compare(other, one);
                    away += one == other || isOnOutline(film, x, y) || isOnOutline(plate, x, y) ? 0 : 1;
                }
            }
            assertThat(black).isGreaterThan(1_000);
            assertThat(away).as("away from outlines on %s", plates.get(i)).isZero();
            assertThat(Math.abs(more)).as(plates.get(i)).isLessThan(black / 1000);
        }
    }

    private static boolean isOnOutline(BufferedImage film, int x, int y) {
        int first = film.getRaster().getSample(x, y, 0);
        for (int v = Math.max(0, y - 1); v <= Math.min(film.getHeight() - 1, y + 1); v++) {
            for (int u = Math.max(0, x - 1); u <= Math.min(film.getWidth() - 1, x + 1); u++) {
                if (film.getRaster().getSample(u, v, 0) != first) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Of the picture. */
    private static double darkMm2(Raster grey, int clear) {
        double pixel = 25.4 / PER_INCH;
        double dark = 0;
        int bottom = (int) (picture.bottom() / pixel);
        int right = (int) (picture.right() / pixel);
        for (int y = (int) (picture.y() / pixel); y < bottom; y++) {
            for (int x = (int) (picture.x() / pixel); x < right; x++) {
                dark += 1 - grey.getSample(x, y, 0) / (double) clear;
            }
        }
        return dark * pixel * pixel;
    }

    /** Portable graymap, raw. */
    private static Raster pgm(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        int at = 0;
        int[] numbers = new int[3];
        for (int found = -1; found < 3; found++) {
            int start = at;
            while (!Character.isWhitespace(bytes[at])) {
                at++;
            }
            if (found >= 0) {
                numbers[found] = Integer.parseInt(new String(bytes, start, at - start, StandardCharsets.US_ASCII));
            }
            at++;
        }
        BufferedImage image = new BufferedImage(numbers[0], numbers[1], BufferedImage.TYPE_BYTE_GRAY);
        byte[] pixels = Arrays.copyOfRange(bytes, at, bytes.length);
        image.getRaster().setDataElements(0, 0, numbers[0], numbers[1], pixels);
        return image.getRaster();
    }

    private static double number(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .findFirst()
                .map(found -> Double.parseDouble(found.group(1)))
                .orElseThrow();
    }

    private static List<String> files(String pattern) {
        return Arrays.stream(folder.toFile().listFiles())
                .map(File::getName)
                .filter(name -> name.matches(pattern))
                .sorted()
                .toList();
    }

    private static String run(String... command) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(command));
        Process process = new ProcessBuilder(words)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as("%s: %s", words, said).isZero();
        return said;
    }
}
