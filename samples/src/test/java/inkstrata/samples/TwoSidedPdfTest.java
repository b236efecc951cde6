package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.plan.Pull;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page with all inks of a print with a pull on the back of the sheet: drawn by others, each place has the colour of what is nearest to
 * the eye there, seen from the front.
 */
class TwoSidedPdfTest {
    private static final int PER_INCH = 150;
    private static final double STEP_MM = 0.9;
    private static final double INSIDE_MM = 0.4;

    @TempDir
    private static Path folder;

    private static Separation separation;
    /** Of the sheet from the page's, in millimetres. */
    private static double left;

    private static double top;

    @BeforeAll
    static void print() throws IOException {
        Sample blind = new Sample("blind");
        Job job = JobReader.read(
                "blind.yaml", Files.readString(blind.job()) + "\nuse: {positive: {formats: [svg, pdf-inks]}}\n");
        separation = new Separator(Press.plugins()).separate(Press.read(blind), job);
        Files.write(
                folder.resolve("inks.pdf"),
                Press.files(separation, job, Press.plugins()).get("inks.pdf"));
        try (PDDocument document = Loader.loadPDF(folder.resolve("inks.pdf").toFile())) {
            PDPage page = document.getPage(0);
            left = page.getTrimBox().getLowerLeftX() * 25.4 / 72;
            top = (page.getMediaBox().getUpperRightY() - page.getTrimBox().getUpperRightY()) * 25.4 / 72;
        }
    }

    @Test
    void pdfBoxShowsThePictureAsSeenFromTheFront() throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve("inks.pdf").toFile())) {
            isSeenFromTheFront(new PDFRenderer(document).renderImageWithDPI(0, PER_INCH, ImageType.RGB));
        }
    }

    /** Needs pdftoppm (poppler-utils) on the PATH. */
    @Test
    @Tag("long")
    void popplerShowsThePictureAsSeenFromTheFront() throws IOException, InterruptedException {
        Process poppler = new ProcessBuilder(
                        "pdftoppm", "-r", Integer.toString(PER_INCH), "-png", "-singlefile", "inks.pdf", "inks")
                .directory(folder.toFile())
                .inheritIO()
                .start();
        assertThat(poppler.waitFor()).isZero();
        isSeenFromTheFront(ImageIO.read(folder.resolve("inks.png").toFile()));
    }

    private static int pixel(double millimetres) {
        return (int) (millimetres * PER_INCH / 25.4);
    }

    private static void isSeenFromTheFront(BufferedImage page) {
        List<Pull> pulls = separation.plan().pulls();
        List<Integer> farthestFirst = separation.table().sheet().farthestFirst(pulls);
        List<Region> sure = new ArrayList<>();
        for (Region region : separation.printed()) {
            sure.add(region.shrunk(INSIDE_MM));
        }
        List<Region> wide = separation.printed().stream()
                .map(region -> region.grown(INSIDE_MM, Corners.ROUND))
                .toList();
        Map<String, Integer> seen = new HashMap<>();
        Frame picture = separation.artwork().frame();
        for (double y = picture.y() + STEP_MM; y < picture.bottom(); y += STEP_MM) {
            for (double x = picture.x() + STEP_MM; x < picture.right(); x += STEP_MM) {
                Place place = new Place(x, y);
                int wanted = 0xffffff;
                String name = "sheet";
                boolean isSure = true;
                for (int pull : farthestFirst) {
                    boolean within = sure.get(pull).covers(place);
                    if (within) {
                        wanted = pulls.get(pull).ink().swatch().packed();
                        name = pulls.get(pull).ink().name();
                    }
                    isSure &= within || !wide.get(pull).covers(place);
                }
                if (isSure) {
                    seen.merge(name, 1, Integer::sum);
                    int drawn = page.getRGB(pixel(left + x), pixel(top + y)) & 0xffffff;
                    assertThat(Integer.toHexString(drawn))
                            .as("%s at %.1f, %.1f mm", name, x, y)
                            .isEqualTo(Integer.toHexString(wanted));
                }
            }
        }
        assertThat(seen.get("dawn")).isGreaterThan(200);
        assertThat(seen).containsKeys("leaf", "lattice", "sheet");
    }
}
