package inkstrata.positive.page;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.FileCacheImageOutputStream;
import javax.imageio.stream.ImageOutputStream;

/** A page in pixels that are black or clear, one bit each, with its resolution in the file; memory does not grow with the page. */
public final class PixelFile {
    /** Which file. */
    public enum Format {
        /** TIFF 6.0 with the compression of ITU-T T.6 ("Group 4"). */
        TIFF("com.sun.imageio.plugins.tiff.TIFFImageWriter", "CCITT T.6"),
        /** PNG (ISO/IEC 15948), grey, one bit. */
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
     * Writes a page, and closes the stream.
     *
     * @param perInch pixels to the inch
     */
    public static void write(Page page, int perInch, Format format, OutputStream stream) throws IOException {
        PixelImage image = new PixelImage(new PixelRows(page, perInch));
        ImageWriter writer = writer(format);
        try (stream;
                ImageOutputStream out = new FileCacheImageOutputStream(stream, null)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionType(format.compression);
            IIOMetadata metadata =
                    writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), param);
            resolution(metadata, perInch, format);
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

    private static void resolution(IIOMetadata metadata, int perInch, Format format) throws IOException {
        if (format == Format.PNG) {
            // PNG counts in whole pixels a metre.
            String perMetre = Long.toString(Math.round(perInch / 0.0254));
            IIOMetadataNode size = new IIOMetadataNode("pHYs");
            size.setAttribute("pixelsPerUnitXAxis", perMetre);
            size.setAttribute("pixelsPerUnitYAxis", perMetre);
            size.setAttribute("unitSpecifier", "meter");
            IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
            root.appendChild(size);
            metadata.mergeTree("javax_imageio_png_1.0", root);
            return;
        }
        IIOMetadataNode dimension = new IIOMetadataNode("Dimension");
        for (String axis : new String[] {"HorizontalPixelSize", "VerticalPixelSize"}) {
            IIOMetadataNode size = new IIOMetadataNode(axis);
            size.setAttribute("value", Double.toString(25.4 / perInch));
            dimension.appendChild(size);
        }
        IIOMetadataNode root = new IIOMetadataNode(IIOMetadataFormatImpl.standardMetadataFormatName);
        root.appendChild(dimension);
        metadata.mergeTree(IIOMetadataFormatImpl.standardMetadataFormatName, root);
    }
}
