package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.util.Locale;

/** Refuses drawings that have more outlines than can be trapped and checked while somebody waits. */
final class DrawnCurves {
    /**
     * Lines and curves of all shapes. With 400,000, in 100,000 rectangles that lie over each other at random, trap and checks took two and a
     * half minutes of processor time and 3 GiB; with ten times as many nobody waited for the end.
     */
    static final int MOST = 2_000_000;

    private DrawnCurves() {}

    /**
     * Counts them, hidden shapes included: to find those takes minutes itself.
     *
     * @throws ArtworkException if they have too many lines and curves
     */
    static void check(Artwork artwork) {
        long count = count(artwork);
        if (count > MOST) {
            throw new ArtworkException(
                    artwork.name(),
                    Source.UNKNOWN,
                    String.format(
                            Locale.ROOT,
                            "the drawing's shapes have %d lines and curves; %d are the limit for films.",
                            count,
                            MOST),
                    "Simplify its paths, merge shapes of one colour, or split the drawing.");
        }
    }

    static long count(Artwork artwork) {
        return artwork.shapes().stream()
                .mapToLong(shape -> shape.area().outline().commandCount())
                .sum();
    }
}
