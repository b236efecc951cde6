package inkstrata.positive.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** Files of pixels are read back by the JDK. */
class PixelFileTest {
    private static final Frame FRAME = new Frame(-3, 2, 61.7, 23.3);

    @ParameterizedTest
    @CsvSource({"TIFF, 600", "TIFF, 1440", "PNG, 600", "PNG, 2880"})
    void everyPixelAndTheResolutionAreInTheFile(PixelFile.Format format, int perInch) throws IOException {
        Page page = page();
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        PixelFile.write(page, perInch, format, file);
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file.toByteArray()))) {
            ImageReader reader = ImageIO.getImageReaders(in).next();
            assertThat(reader.getFormatName()).isEqualTo(format == PixelFile.Format.TIFF ? "tif" : "png");
            reader.setInput(in);
            assertThat(pixelMm(reader.getImageMetadata(0))).isCloseTo(25.4 / perInch, within(25.4 / perInch * 1e-4));
            BufferedImage image = reader.read(0);
            assertThat(image.getColorModel().getPixelSize()).isEqualTo(1);
            assertThat(image.getWidth()).isEqualTo((int) Math.rint(FRAME.width() / 25.4 * perInch));
            assertThat(image.getHeight()).isEqualTo((int) Math.rint(FRAME.height() / 25.4 * perInch));
            PixelRows rows = new PixelRows(page, perInch);
            int black = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                byte[] row = rows.next();
                for (int x = 0; x < image.getWidth(); x++) {
                    boolean isBlack = (image.getRGB(x, y) & 0xffffff) == 0;
                    assertThat(isBlack).isEqualTo((row[x >> 3] >> (7 - (x & 7)) & 1) == 0);
                    black += isBlack ? 1 : 0;
                }
            }
            assertThat(black).isGreaterThan(1_000);
        }
    }

    @Test
    void aSheetInColoursHasItsResolutionToo() throws IOException {
        Outline square = Outline.rectangle(10, 5, 20, 20);
        ColourSheet sheet = new ColourSheet(
                "a square",
                new Frame(0, 0, 40, 30),
                List.of(new ColourSheet.Painted("", new Area(square, FillRule.NONZERO), Rgb.of(0xc04020))));
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        sheet.writePng(file);
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file.toByteArray()))) {
            ImageReader reader = ImageIO.getImageReaders(in).next();
            reader.setInput(in);
            double pixel = pixelMm(reader.getImageMetadata(0));
            BufferedImage image = reader.read(0);
            assertThat(image.getWidth() * pixel).isCloseTo(40, within(0.01));
            assertThat(image.getHeight() * pixel).isCloseTo(30, within(0.01));
            assertThat(image.getRGB((int) (20 / pixel), (int) (15 / pixel)) & 0xffffff)
                    .isEqualTo(0xc04020);
            assertThat(image.getRGB((int) (35 / pixel), (int) (15 / pixel)) & 0xffffff)
                    .isEqualTo(0xffffff);
        }
    }

    /** By the JDK's format-neutral tree, in millimetres. */
    private static double pixelMm(IIOMetadata metadata) {
        Element size = (Element) ((Element) metadata.getAsTree("javax_imageio_1.0"))
                .getElementsByTagName("HorizontalPixelSize")
                .item(0);
        return Double.parseDouble(size.getAttribute("value"));
    }

    private static Page page() {
        Outline.Builder outline = Outline.builder();
        outline.moveTo(0, 3);
        outline.cubicTo(30, 0, 80, 30, 20, 22);
        outline.quadTo(10, 20, 0, 3);
        Outline.rectangle(50, 5, 2, 0.1).sendTo(outline);
        return new Page(
                "pixels",
                FRAME,
                FRAME,
                List.of(new Page.Group("all", List.of(new Page.Item(new Area(outline.build(), FillRule.EVENODD))))));
    }
}
