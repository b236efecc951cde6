package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import java.util.Locale;

/** A drawing in thousands of colours is no flat drawing; joining colours looks at each two of them. */
final class DrawnColours {
    /** Twice as many take four times as long; an art print has some dozen inks. */
    static final int MOST = 2_000;

    private DrawnColours() {}

    /**
     * Counts the colours that shapes are drawn in, hidden ones included.
     *
     * @throws ArtworkException if there are more than {@link #MOST}
     */
    static void check(Artwork artwork) {
        long count = artwork.shapes().stream().map(FlatShape::colour).distinct().count();
        if (count > MOST) {
            throw new ArtworkException(
                    artwork.name(),
                    Source.UNKNOWN,
                    String.format(
                            Locale.ROOT,
                            "the drawing's shapes have %d colours; %d are the limit for films.",
                            count,
                            MOST),
                    "Reduce its colours in the drawing program, or trace it again with fewer.");
        }
    }
}
