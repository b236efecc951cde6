package inkstrata.positive.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Size and resolution of files of pixels on both axes, taken from their bytes as the standards lay them out. */
class ResolutionBytesTest {
    private static final double WIDTH_MM = 61;
    private static final double HEIGHT_MM = 23;

    /** TIFF 6.0, section 8: ImageWidth 256, ImageLength 257, XResolution 282, YResolution 283, ResolutionUnit 296 (2 inch, 3 centimetre). */
    @ParameterizedTest
    @ValueSource(ints = {600, 1440, 2880})
    void tiff(int perInch) throws IOException {
        ByteBuffer file = ByteBuffer.wrap(bytes(PixelFile.Format.TIFF, perInch));
        file.order(file.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        assertThat(file.getShort(2)).isEqualTo((short) 42);
        double unitMm = number(file, 296) == 2 ? 25.4 : 10;
        double across = number(file, 282) / unitMm;
        double down = number(file, 283) / unitMm;
        assertThat(across * 25.4).isCloseTo(perInch, within(perInch * 1e-4));
        assertThat(down * 25.4).isCloseTo(perInch, within(perInch * 1e-4));
        assertThat(number(file, 256) / across).isCloseTo(WIDTH_MM, within(25.4 / perInch));
        assertThat(number(file, 257) / down).isCloseTo(HEIGHT_MM, within(25.4 / perInch));
    }

    /** PNG (ISO/IEC 15948:2004), 11.2.2 IHDR and 11.3.5.3 pHYs: pixels to the unit across, down, and 1 for the metre. */
    @ParameterizedTest
    @ValueSource(ints = {600, 1440, 2880})
    void png(int perInch) throws IOException {
        isTrueToSize(bytes(PixelFile.Format.PNG, perInch), perInch, WIDTH_MM, HEIGHT_MM);
    }

    @Test
    void pngOfASheetInColours() throws IOException {
        ColourSheet sheet = new ColourSheet(
                "a square",
                new Frame(0, 0, 40, 30),
                List.of(new ColourSheet.Painted(
                        "", new Area(Outline.rectangle(10, 5, 20, 20), FillRule.NONZERO), Rgb.of(0xc04020))));
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        sheet.writePng(file);
        ByteBuffer size = chunk(file.toByteArray(), "pHYs");
        isTrueToSize(file.toByteArray(), size.getInt(0) * 0.0254, 40, 30);
    }

    private static void isTrueToSize(byte[] file, double perInch, double widthMm, double heightMm) {
        ByteBuffer header = chunk(file, "IHDR");
        ByteBuffer size = chunk(file, "pHYs");
        assertThat(size.get(8)).isEqualTo((byte) 1);
        assertThat(size.getInt(0) * 0.0254).isCloseTo(perInch, within(0.02));
        assertThat(size.getInt(4) * 0.0254).isCloseTo(perInch, within(0.02));
        assertThat(header.getInt(0) * 1000.0 / size.getInt(0)).isCloseTo(widthMm, within(25.4 / perInch));
        assertThat(header.getInt(4) * 1000.0 / size.getInt(4)).isCloseTo(heightMm, within(25.4 / perInch));
    }

    private static byte[] bytes(PixelFile.Format format, int perInch) throws IOException {
        Frame frame = new Frame(0, 0, WIDTH_MM, HEIGHT_MM);
        Area area = new Area(Outline.rectangle(5, 5, 20, 4), FillRule.NONZERO);
        Page page = new Page("pixels", frame, frame, List.of(new Page.Group("all", List.of(new Page.Item(area)))));
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        PixelFile.write(page, perInch, format, file);
        return file.toByteArray();
    }

    /** The value of a field of the first directory: TIFF 6.0, section 2. Types 3 SHORT, 4 LONG and 5 RATIONAL. */
    private static double number(ByteBuffer file, int tag) {
        int directory = file.getInt(4);
        int fields = Short.toUnsignedInt(file.getShort(directory));
        for (int i = 0; i < fields; i++) {
            int field = directory + 2 + 12 * i;
            if (Short.toUnsignedInt(file.getShort(field)) == tag) {
                int value = file.getInt(field + 8);
                return switch (file.getShort(field + 2)) {
                    case 3 -> Short.toUnsignedInt(file.getShort(field + 8));
                    case 4 -> value;
                    case 5 ->
                        (double) Integer.toUnsignedLong(file.getInt(value))
                                / Integer.toUnsignedLong(file.getInt(value + 4));
                    default -> throw new AssertionError("field " + tag + " has another type");
                };
            }
        }
        throw new AssertionError("no field " + tag);
    }

    /** ISO/IEC 15948:2004, 5.2 and 5.3: a signature of eight bytes, then chunks of length, type, data and check sum. */
    private static ByteBuffer chunk(byte[] file, String type) {
        ByteBuffer all = ByteBuffer.wrap(file);
        int at = 8;
        while (at < file.length) {
            int length = all.getInt(at);
            if (new String(file, at + 4, 4, StandardCharsets.US_ASCII).equals(type)) {
                return all.slice(at + 8, length);
            }
            at += 12 + length;
        }
        throw new AssertionError("no chunk " + type);
    }
}
