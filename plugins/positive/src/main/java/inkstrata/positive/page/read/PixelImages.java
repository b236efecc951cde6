package inkstrata.positive.page.read;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import inkstrata.film.FilmDrawing;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Images of PNG (ISO/IEC 15948) and TIFF 6.0, read in bands of rows, so that memory does not grow with the image. */
final class PixelImages {
    /** Of one bit each: a sheet of 1 x 1.4 m at 2,880 to the inch has 18 thousand million; at 1,440 4.5. */
    private static final long MOST_BITS = 6_000_000_000L;

    /** Of more than one bit each; these take longer. */
    private static final long MOST_PIXELS = 2_000_000_000L;

    /** Of a band, in pixels. */
    private static final long BAND_BITS = 1L << 30;

    private static final long BAND = 1L << 24;

    private PixelImages() {}

    private interface Work<T> {
        T on(ImageReader reader) throws IOException;
    }

    /** How many images there are in a file. */
    static int count(String file, byte[] content) {
        return with(file, content, reader -> reader.getNumImages(true));
    }

    /** Reads one of them, from 0. */
    static FilmDrawing read(String name, byte[] content, int index) {
        return with(name, content, reader -> {
            int width = reader.getWidth(index);
            int height = reader.getHeight(index);
            boolean isBits = isBits(reader, index);
            if ((long) width * height > (isBits ? MOST_BITS : MOST_PIXELS)) {
                throw new ArtworkException(
                        name,
                        Source.UNKNOWN,
                        String.format(
                                Locale.ROOT,
                                "%,d x %,d pixels are more than a film of %s has.",
                                width,
                                height,
                                isBits ? "one bit a pixel" : "grey or coloured pixels"),
                        isBits
                                ? "Output it at a resolution of 720 to 1,440 pixels to the inch."
                                : "Output it with one bit a pixel.");
            }
            double xMm = pixelMm(reader, index, "HorizontalPixelSize", name);
            double yMm = pixelMm(reader, index, "VerticalPixelSize", name);
            double most = (Grid.LIMIT - 2) * Grid.STEP_MM;
            if (!(width * xMm < most && height * yMm < most)) {
                throw new ArtworkException(
                        name,
                        Source.UNKNOWN,
                        String.format(
                                Locale.ROOT,
                                "it is %.0f x %.0f mm by the resolution it states, and no film is as large as 8388 mm.",
                                width * xMm,
                                height * yMm),
                        "Save it with its true resolution.");
            }
            Tracing tracing = new Tracing(width);
            long band = isBits ? BAND_BITS : BAND;
            int rows = (int) Math.max(1, Math.min(height, band / width));
            for (int top = 0; top < height; top += rows) {
                ImageReadParam param = reader.getDefaultReadParam();
                param.setSourceRegion(new Rectangle(0, top, width, Math.min(rows, height - top)));
                PixelShades.send(reader.read(index, param), tracing, name);
            }
            Frame frame = new Frame(0, 0, width * xMm, height * yMm);
            Artwork page = new Artwork(name, frame, tracing.shapes(Tracing.Placing.scaled(xMm, yMm)), List.of());
            return new FilmDrawing(page, frame, Math.max(xMm, yMm));
        });
    }

    private static <T> T with(String name, byte[] content, Work<T> work) {
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            while (readers.hasNext()) {
                ImageReader reader = readers.next();
                if (List.of("png", "tif")
                        .contains(
                                reader.getFormatName().toLowerCase(Locale.ROOT).replace("tiff", "tif"))) {
                    try {
                        reader.setInput(stream);
                        return work.on(reader);
                    } finally {
                        reader.dispose();
                    }
                }
            }
        } catch (ArtworkException fault) {
            throw fault;
        } catch (PixelContours.TooManyException tooMany) {
            throw Refused.tooFine(name, tooMany);
        } catch (OutOfMemoryError tooLarge) {
            throw Refused.tooLarge(name, tooLarge);
        } catch (IOException | RuntimeException broken) {
            throw Refused.broken(name, "PNG or TIFF", broken);
        }
        throw new ArtworkException(
                name, Source.UNKNOWN, "it is neither PNG nor TIFF, whatever its name says.", "Save it as one of them.");
    }

    private static boolean isBits(ImageReader reader, int index) throws IOException {
        Iterator<ImageTypeSpecifier> types = reader.getImageTypes(index);
        return types.hasNext() && types.next().getBufferedImageType() == BufferedImage.TYPE_BYTE_BINARY;
    }

    private static double pixelMm(ImageReader reader, int index, String axis, String name) throws IOException {
        IIOMetadata metadata = reader.getImageMetadata(index);
        OptionalDouble size = metadata == null || !metadata.isStandardMetadataFormatSupported()
                ? OptionalDouble.empty()
                : value((IIOMetadataNode) metadata.getAsTree(IIOMetadataFormatImpl.standardMetadataFormatName), axis);
        if (size.isEmpty() || !(size.getAsDouble() > 1e-4 && size.getAsDouble() < 100)) {
            throw new ArtworkException(
                    name,
                    Source.UNKNOWN,
                    "it does not say how many pixels make an inch, so its true size is not known.",
                    "Save it with its resolution.");
        }
        return size.getAsDouble();
    }

    private static OptionalDouble value(IIOMetadataNode node, String name) {
        if (node.getNodeName().equals(name)) {
            try {
                return OptionalDouble.of(Double.parseDouble(node.getAttribute("value")));
            } catch (NumberFormatException notOne) {
                return OptionalDouble.empty();
            }
        }
        for (IIOMetadataNode child = (IIOMetadataNode) node.getFirstChild();
                child != null;
                child = (IIOMetadataNode) child.getNextSibling()) {
            OptionalDouble found = value(child, name);
            if (found.isPresent()) {
                return found;
            }
        }
        return OptionalDouble.empty();
    }
}
