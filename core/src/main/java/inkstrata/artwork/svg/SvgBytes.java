package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.GZIPInputStream;

/** The bytes of a drawing, unzipped where the file is an svgz, and never more than {@link Limits#BYTES} of them. */
final class SvgBytes {
    private SvgBytes() {}

    /**
     * Reads a stream to its end.
     *
     * @throws ArtworkException if there are too many bytes, or the file is zipped and damaged
     * @throws IOException if the stream cannot be read
     */
    static byte[] read(String fileName, InputStream stream) throws IOException {
        byte[] bytes = capped(fileName, stream);
        boolean zipped = bytes.length > 2 && (bytes[0] & 0xff) == 0x1f && (bytes[1] & 0xff) == 0x8b;
        if (!zipped) {
            return bytes;
        }
        try (GZIPInputStream unzipped = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return capped(fileName, unzipped);
        } catch (IOException damaged) {
            throw new ArtworkException(
                    fileName,
                    Source.UNKNOWN,
                    "the file is compressed and damaged (" + damaged.getMessage() + ").",
                    "Save the drawing again, best as plain SVG.");
        }
    }

    private static byte[] capped(String fileName, InputStream stream) throws IOException {
        byte[] bytes = stream.readNBytes(Limits.BYTES + 1);
        if (bytes.length > Limits.BYTES) {
            throw new ArtworkException(
                    fileName,
                    Source.UNKNOWN,
                    "the drawing has more than " + (Limits.BYTES >> 20) + " MB.",
                    "Split it, or simplify its outlines in the drawing program.");
        }
        return bytes;
    }
}
