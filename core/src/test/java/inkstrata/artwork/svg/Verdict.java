package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;

/** Whether a drawing shows the same areas of colour as another renderer's picture of it. */
final class Verdict {
    static final String SAME = "the same picture";

    /** Of the canvas, for each colour. */
    private static final double TOLERANCE = 0.003;

    /** Channels that renderers may round apart where shapes shine through. */
    private static final int ROUNDING = 3;

    /** Pixels across. Strokes thinner than a pixel are drawn a pixel wide, so where that shows, a larger picture decides. */
    private static final int WIDTH = 1000;

    private static final int LARGE_WIDTH = 4000;

    private Verdict() {}

    /** {@link #SAME}, or the message of a refusal, or the colour whose area differs most and by how much of the canvas. */
    static String of(String name, InputStream svg, OtherPicture other) throws IOException {
        VisibleAreas ours;
        try (svg) {
            ours = VisibleAreas.mapped(SvgReader.read(name, svg, VisibleAreas.SIZE))
                    .onWhite();
        } catch (ArtworkException refused) {
            return refused.getMessage();
        }
        VisibleAreas.Difference worst;
        try {
            worst = ours.from(other.areas(WIDTH), ROUNDING);
            if (Math.abs(worst.share()) > TOLERANCE) {
                worst = ours.from(other.areas(LARGE_WIDTH), ROUNDING);
            }
        } catch (OtherPicture.CannotRead unread) {
            return unread.getMessage();
        }
        return Math.abs(worst.share()) > TOLERANCE
                ? String.format(Locale.ROOT, "%s %+.4f", worst.colour(), worst.share())
                : SAME;
    }

    /** Draws the same drawing on a white sheet. */
    @FunctionalInterface
    interface OtherPicture {
        /** In a picture of that many pixels across. */
        VisibleAreas areas(int width) throws IOException, CannotRead;

        /** The other renderer has no picture of it. */
        final class CannotRead extends Exception {
            private static final long serialVersionUID = 1L;

            CannotRead() {
                super("cannot be read by the other renderer");
            }
        }
    }
}
