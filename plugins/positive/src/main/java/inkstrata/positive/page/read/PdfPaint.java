package inkstrata.positive.page.read;

import inkstrata.colour.Rgb;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A paint of PDF, as one film or as several plates see it.
 *
 * @param shade on a page that is one film
 * @param tints how much of each colorant it holds, 0 to 1, by the colorant's name
 * @param isOnAll whether it goes onto every plate (the colorant All: ISO 32000-1, 8.6.6.4)
 * @param overprints whether it leaves plates alone that it holds nothing of (11.7.4)
 */
record PdfPaint(Rgb shade, Map<String, Double> tints, boolean isOnAll, boolean overprints) {
    static final String CYAN = "Cyan";
    static final String MAGENTA = "Magenta";
    static final String YELLOW = "Yellow";
    static final String BLACK = "Black";

    PdfPaint {
        tints = new LinkedHashMap<>(tints);
    }

    static PdfPaint ofLight(int red, int green, int blue) {
        double black = 1 - Shade.of(red, green, blue) / 255.0;
        return new PdfPaint(new Rgb(red, green, blue), Map.of(BLACK, black), false, false);
    }

    /** Inks of the process: each 0 to 1. */
    static PdfPaint ofInks(double cyan, double magenta, double yellow, double black) {
        Map<String, Double> tints = new LinkedHashMap<>();
        tints.put(CYAN, cyan);
        tints.put(MAGENTA, magenta);
        tints.put(YELLOW, yellow);
        tints.put(BLACK, black);
        return new PdfPaint(Tracing.grey(Shade.ofInks(cyan, magenta, yellow, black)), tints, false, false);
    }

    /** Named colorants. */
    static PdfPaint ofColorants(Map<String, Double> tints) {
        double sum = tints.values().stream().mapToDouble(tint -> tint).sum();
        return new PdfPaint(Tracing.grey(Shade.ofInk(sum)), tints, false, false);
    }

    static PdfPaint onAll(double tint) {
        return new PdfPaint(Tracing.grey(Shade.ofInk(tint)), Map.of(), true, false);
    }

    PdfPaint overprinting(boolean doesOverprint) {
        return new PdfPaint(shade, tints, isOnAll, doesOverprint);
    }

    /** What a plate sees of it; none if it leaves the plate as it is. */
    Optional<Rgb> on(String plate) {
        if (isOnAll) {
            return Optional.of(shade);
        }
        Double tint = tints.get(plate);
        if (tint != null && (tint > 0 || !overprints)) {
            return Optional.of(Tracing.grey(Shade.ofInk(tint)));
        }
        return overprints ? Optional.empty() : Optional.of(Rgb.WHITE);
    }
}
