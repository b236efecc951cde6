package inkstrata.positive.page.read;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceN;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.color.PDICCBased;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;

/**
 * Colours of PDF as paints. Profiles are passed over: their grey, red green blue, or cyan magenta yellow black count as the device's, since a film
 * knows only black.
 */
final class PdfColours {
    /** Colorants that are none, or all of them (ISO 32000-1, 8.6.6.4). */
    static final String NONE = "None";

    static final String ALL = "All";

    private static final Set<String> PROCESS = Set.of(PdfPaint.CYAN, PdfPaint.MAGENTA, PdfPaint.YELLOW, PdfPaint.BLACK);

    private PdfColours() {}

    /** Whether a colorant is one of the four inks of a colour print. */
    static boolean isProcess(String colorant) {
        return PROCESS.contains(colorant);
    }

    /** @throws UnsupportedOperationException if no film can hold it */
    static PdfPaint paint(PDColor colour) throws IOException {
        PDColorSpace space = colour.getColorSpace();
        if (space == null || space instanceof PDPattern || colour.getPatternName() != null) {
            throw new UnsupportedOperationException("a pattern or gradient");
        }
        float[] c = colour.getComponents();
        if (space instanceof PDSeparation separation) {
            return colorants(List.of(separation.getColorantName()), c);
        }
        if (space instanceof PDDeviceN several) {
            return colorants(several.getColorantNames(), c);
        }
        if (space instanceof PDDeviceGray || (space instanceof PDICCBased && c.length == 1)) {
            return light(c[0], c[0], c[0]);
        }
        if (space instanceof PDDeviceRGB || (space instanceof PDICCBased && c.length == 3)) {
            return light(c[0], c[1], c[2]);
        }
        if (space instanceof PDDeviceCMYK || (space instanceof PDICCBased && c.length == 4)) {
            return PdfPaint.ofInks(c[0], c[1], c[2], c[3]);
        }
        float[] rgb = space.toRGB(c);
        return light(rgb[0], rgb[1], rgb[2]);
    }

    private static PdfPaint light(double red, double green, double blue) {
        return PdfPaint.ofLight(channel(red), channel(green), channel(blue));
    }

    private static int channel(double value) {
        return (int) Math.round(255 * Math.max(0, Math.min(1, value)));
    }

    private static PdfPaint colorants(List<String> names, float[] tints) {
        Map<String, Double> held = new LinkedHashMap<>();
        for (int i = 0; i < names.size() && i < tints.length; i++) {
            if (names.get(i).equals(ALL)) {
                return PdfPaint.onAll(tints[i]);
            }
            if (!names.get(i).equals(NONE)) {
                held.put(names.get(i), (double) tints[i]);
            }
        }
        return PdfPaint.ofColorants(held);
    }
}
