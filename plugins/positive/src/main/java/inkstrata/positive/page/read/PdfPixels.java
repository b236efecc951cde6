package inkstrata.positive.page.read;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDICCBased;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** The pixels of an image in a PDF, row by row. */
final class PdfPixels {
    private static final long MOST_BITS = 6_000_000_000L;
    private static final long MOST_GREY = 1_000_000_000L;
    private static final long MOST_COLOURED = 60_000_000L;

    private PdfPixels() {}

    static void send(PDImage image, Tracing to) throws IOException {
        if (image instanceof PDImageXObject object && (object.getSoftMask() != null || object.getMask() != null)) {
            throw new UnsupportedOperationException("an image behind a mask");
        }
        int bits = image.isStencil() ? 1 : image.getBitsPerComponent();
        long pixels = (long) image.getWidth() * image.getHeight();
        if ((bits == 1 || bits == 8) && (image.isStencil() || isGrey(image.getColorSpace()))) {
            if (pixels > (bits == 1 ? MOST_BITS : MOST_GREY)) {
                throw new PdfMarks.TooMuchException();
            }
            grey(image, bits, to);
            return;
        }
        if (pixels > MOST_COLOURED) {
            throw new PdfMarks.TooMuchException();
        }
        coloured(image.getImage(), to);
    }

    private static boolean isGrey(PDColorSpace space) {
        return space instanceof PDDeviceGray || (space instanceof PDICCBased && space.getNumberOfComponents() == 1);
    }

    /** Nought is black, or what a stencil paints, unless Decode turns it round (ISO 32000-1, 8.9.5.2 and 8.9.6.2). */
    private static void grey(PDImage image, int bits, Tracing to) throws IOException {
        COSArray decode = image.getDecode();
        boolean isTurned = decode != null && decode.size() == 2 && decode.toFloatArray()[0] > decode.toFloatArray()[1];
        int stride = bits == 1 ? (image.getWidth() + 7) / 8 : image.getWidth();
        try (InputStream in = image.createInputStream()) {
            for (int y = 0; y < image.getHeight(); y++) {
                byte[] row = in.readNBytes(stride);
                if (row.length < stride) {
                    throw new IOException("an image ends after " + y + " of " + image.getHeight() + " rows");
                }
                if (bits == 1) {
                    to.bits(row, 0, isTurned);
                    continue;
                }
                for (int x = 0; isTurned && x < stride; x++) {
                    row[x] = (byte) ~row[x];
                }
                to.shades(row);
            }
        }
    }

    private static void coloured(BufferedImage image, Tracing to) {
        int[] colours = new int[image.getWidth()];
        byte[] row = new byte[image.getWidth()];
        for (int y = 0; y < image.getHeight(); y++) {
            image.getRGB(0, y, image.getWidth(), 1, colours, 0, image.getWidth());
            for (int x = 0; x < row.length; x++) {
                row[x] = (byte) Shade.of(colours[x] >> 16 & 0xff, colours[x] >> 8 & 0xff, colours[x] & 0xff);
            }
            to.shades(row);
        }
    }
}
