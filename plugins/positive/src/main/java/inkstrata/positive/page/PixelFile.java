package inkstrata.positive.page;

import java.awt.image.RenderedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.FileCacheImageOutputStream;
import javax.imageio.stream.ImageOutputStream;

/** Pages in pixels, with their resolution in the file. */
public final class PixelFile {
    /** Which file. */
    public enum Format {
        /** TIFF 6.0 with the compression of ITU-T T.6 ("Group 4"). */
        TIFF("com.sun.imageio.plugins.tiff.TIFFImageWriter", "CCITT T.6"),
        /** PNG (ISO/IEC 15948). */
        PNG("com.sun.imageio.plugins.png.PNGImageWriter", "Deflate");

        private final String writer;
        private final String compression;

        Format(String writer, String compression) {
            this.writer = writer;
            this.compression = compression;
        }
    }

    private PixelFile() {}

    /**
     * Writes a page in pixels that are black or clear, one bit each, and closes the stream. Memory does not grow with the page.
     *
     * @param perInch pixels to the inch
     */
    public static void write(Page page, int perInch, Format format, OutputStream stream) throws IOException {
        write(new PixelImage(new PixelRows(page, perInch)), perInch / 25.4, format, stream);
    }

    /** Writes an image with so many pixels to the millimetre, and closes the stream. */
    static void write(RenderedImage image, double perMm, Format format, OutputStream stream) throws IOException {
        ImageWriter writer = writer(format);
        try (stream;
                ImageOutputStream out = new FileCacheImageOutputStream(stream, null)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionType(format.compression);
            IIOMetadata metadata =
                    writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), param);
            switch (format) {
                case TIFF -> Resolution.tiff(perMm, metadata);
                case PNG -> Resolution.png(perMm, metadata);
            }
            writer.write(null, new IIOImage(image, null, metadata), param);
        } finally {
            writer.dispose();
        }
    }

    /** The JDK's own: others that may be registered leave the resolution out. */
    private static ImageWriter writer(Format format) {
        Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName(format.name());
        while (writers.hasNext()) {
            ImageWriter writer = writers.next();
            if (writer.getClass().getName().equals(format.writer)) {
                return writer;
            }
        }
        throw new IllegalStateException("this Java has no writer of its own for " + format.name());
    }
}
