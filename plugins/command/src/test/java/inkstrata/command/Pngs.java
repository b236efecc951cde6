package inkstrata.command;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Images with their resolution, as other programs write them. */
final class Pngs {
    private Pngs() {}

    static void write(BufferedImage image, int perInch, Path file) throws IOException {
        java.nio.file.Files.deleteIfExists(file);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            IIOMetadata metadata =
                    writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), param);
            String perMetre = Long.toString(Math.round(perInch / 0.0254));
            IIOMetadataNode size = new IIOMetadataNode("pHYs");
            size.setAttribute("pixelsPerUnitXAxis", perMetre);
            size.setAttribute("pixelsPerUnitYAxis", perMetre);
            size.setAttribute("unitSpecifier", "meter");
            IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
            root.appendChild(size);
            metadata.mergeTree("javax_imageio_png_1.0", root);
            writer.write(null, new IIOImage(image, null, metadata), param);
        } finally {
            writer.dispose();
        }
    }
}
