package inkstrata.positive.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** PDF is read and drawn by PDFBox; what its areas measure is known by hand. */
class PdfFileTest {
    private static final Frame FRAME = new Frame(-10, -20, 120, 90);
    private static final Frame TRIM = new Frame(0, 0, 100, 60);

    /** ISO 32000-1, 8.3.2.3: user space counts in 1/72 inch. */
    @Test
    void boxesHaveTheirTrueSize() throws IOException {
        try (PDDocument document = read(List.of(page(Outline.rectangle(0, 0, 10, 10))))) {
            PDPage page = document.getPage(0);
            assertBox(page.getMediaBox(), 0, 0, 120, 90);
            assertBox(page.getTrimBox(), 10, 10, 100, 60);
        }
    }

    private static void assertBox(PDRectangle box, double left, double low, double width, double height) {
        assertThat(box.getLowerLeftX() * 25.4 / 72).isCloseTo(left, within(0.001));
        assertThat(box.getLowerLeftY() * 25.4 / 72).isCloseTo(low, within(0.001));
        assertThat(box.getWidth() * 25.4 / 72).isCloseTo(width, within(0.001));
        assertThat(box.getHeight() * 25.4 / 72).isCloseTo(height, within(0.001));
    }

    @Test
    void areasAreDrawnWhereTheyAre() throws IOException {
        try (PDDocument document = read(List.of(page(Outline.rectangle(0, 0, 10, 30)), page(disc(50, 20, 25))))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            BufferedImage box = new PDFRenderer(document).renderImageWithDPI(0, 254, ImageType.GRAY);
            assertThat(box.getWidth()).isBetween(1199, 1200);
            assertThat(darkMm2(box)).isCloseTo(300, within(0.3));
            assertThat(box.getRaster().getSample(105, 205, 0)).isZero();
            assertThat(box.getRaster().getSample(195, 495, 0)).isZero();
            assertThat(box.getRaster().getSample(95, 205, 0)).isEqualTo(255);
            assertThat(box.getRaster().getSample(205, 495, 0)).isEqualTo(255);
            BufferedImage disc = new PDFRenderer(document).renderImageWithDPI(1, 254, ImageType.GRAY);
            assertThat(darkMm2(disc)).isCloseTo(Math.PI * 625, within(Math.PI * 625 * 1e-3));
        }
    }

    /** ISO 32000-1, 8.6.6.4 (Separation) and 11.7.4 (overprint control). */
    @Test
    void inksAreSeparationsThatOverprint() throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        PdfFile.writePlates(
                "inks",
                List.of(
                        new PdfFile.Plate("01 sand", Rgb.parse("#e8cf9a"), page(Outline.rectangle(0, 0, 50, 40))),
                        new PdfFile.Plate(
                                "02 night sea", Rgb.parse("#1d2440"), page(Outline.rectangle(30, 20, 50, 40)))),
                file);
        try (PDDocument document = Loader.loadPDF(file.toByteArray())) {
            PDPage page = document.getPage(0);
            PDSeparation first = (PDSeparation) page.getResources().getColorSpace(COSName.getPDFName("Ink1"));
            PDSeparation second = (PDSeparation) page.getResources().getColorSpace(COSName.getPDFName("Ink2"));
            assertThat(first.getColorantName()).isEqualTo("01 sand");
            assertThat(second.getColorantName()).isEqualTo("02 night sea");
            assertThat(second.getAlternateColorSpace().getName()).isEqualTo("DeviceRGB");
            assertThat(second.toRGB(new float[] {1}))
                    .containsExactly(new float[] {0x1d / 255f, 0x24 / 255f, 0x40 / 255f}, within(1e-6f));
            assertThat(second.toRGB(new float[] {0})).containsExactly(new float[] {1, 1, 1}, within(1e-6f));
            PDExtendedGraphicsState over = page.getResources().getExtGState(COSName.getPDFName("Over"));
            assertThat(over.getNonStrokingOverprintControl()).isTrue();
            assertThat(over.getOverprintMode()).isEqualTo(1);
            String content = new String(page.getContents().readAllBytes(), java.nio.charset.StandardCharsets.US_ASCII);
            assertThat(content.lines().filter(line -> line.contains("scn")))
                    .containsExactly("/Over gs /Ink1 cs 1 scn", "/Over gs /Ink2 cs 1 scn");
        }
    }

    @Test
    void sameBytesEachTime() throws IOException {
        List<Page> pages = List.of(page(disc(50, 20, 25)));
        assertThat(bytes(pages)).isEqualTo(bytes(pages));
    }

    private static double darkMm2(BufferedImage image) {
        double dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark += 1 - image.getRaster().getSample(x, y, 0) / 255.0;
            }
        }
        return dark / 100;
    }

    private static byte[] bytes(List<Page> pages) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        PdfFile.write("films", pages, file);
        return file.toByteArray();
    }

    private static PDDocument read(List<Page> pages) throws IOException {
        return Loader.loadPDF(bytes(pages));
    }

    private static Page page(Outline outline) {
        return new Page(
                "page",
                FRAME,
                TRIM,
                List.of(new Page.Group("all", List.of(new Page.Item(new Area(outline, FillRule.NONZERO))))));
    }

    private static Outline disc(double x, double y, double r) {
        double q = r * 4 / 3 * (Math.sqrt(2) - 1);
        Outline.Builder disc = Outline.builder();
        disc.moveTo(x + r, y);
        disc.cubicTo(x + r, y + q, x + q, y + r, x, y + r);
        disc.cubicTo(x - q, y + r, x - r, y + q, x - r, y);
        disc.cubicTo(x - r, y - q, x - q, y - r, x, y - r);
        disc.cubicTo(x + q, y - r, x + r, y - q, x + r, y);
        return disc.build();
    }
}
