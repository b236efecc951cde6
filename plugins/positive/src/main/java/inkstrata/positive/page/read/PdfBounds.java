package inkstrata.positive.page.read;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Whether a document's streams stay within bounds once they are unpacked: a small file may unpack to more than any memory holds. */
final class PdfBounds {
    /** All streams together. */
    private static final long MOST_BYTES = 1L << 30;

    private PdfBounds() {}

    /** @throws PdfMarks.TooMuchException if it does not */
    static void check(PDDocument document) throws IOException {
        long left = Math.min(MOST_BYTES, Runtime.getRuntime().maxMemory() / 3);
        for (COSObjectKey key :
                new ArrayList<>(document.getDocument().getXrefTable().keySet())) {
            COSObject object = document.getDocument().getObjectFromPool(key);
            if (object != null && object.getObject() instanceof COSStream stream) {
                left -= unpacked(stream, left);
                if (left < 0) {
                    throw new PdfMarks.TooMuchException();
                }
            }
        }
    }

    /** As far as is asked. */
    private static long unpacked(COSStream stream, long most) throws IOException {
        List<COSName> filters = filters(stream.getFilters());
        boolean isFlate = !filters.isEmpty()
                && List.of(COSName.FLATE_DECODE, COSName.FLATE_DECODE_ABBREVIATION)
                        .contains(filters.get(0));
        if (filters.size() > 2) {
            throw new PdfMarks.TooMuchException();
        }
        if (filters.size() == 2 && filters.get(0).equals(filters.get(1))) {
            throw new PdfMarks.TooMuchException();
        }
        if (!isFlate) {
            return stream.getLength();
        }
        Inflater inflater = new Inflater();
        byte[] packed = new byte[1 << 16];
        byte[] out = new byte[1 << 18];
        try (InputStream in = stream.createRawInputStream()) {
            while (!inflater.finished() && inflater.getBytesWritten() <= most) {
                int count = inflater.inflate(out);
                if (count == 0) {
                    int more = in.read(packed);
                    if (more <= 0 || inflater.needsDictionary()) {
                        break;
                    }
                    inflater.setInput(packed, 0, more);
                }
            }
            return inflater.getBytesWritten();
        } catch (DataFormatException damaged) {
            return inflater.getBytesWritten();
        } finally {
            inflater.end();
        }
    }

    private static List<COSName> filters(COSBase filters) {
        List<COSName> names = new ArrayList<>();
        if (filters instanceof COSName name) {
            names.add(name);
        } else if (filters instanceof COSArray several) {
            several.forEach(each -> {
                COSBase held = each instanceof COSObject object ? object.getObject() : each;
                if (held instanceof COSName name) {
                    names.add(name);
                }
            });
        }
        return names;
    }
}
