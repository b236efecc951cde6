package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.util.Locale;

/** Counts what one reading draws, and stops it where that is more than the shop can hold; not for several threads. */
final class Budget {
    private final String fileName;
    private final long mostCurves;
    private final long mostLetters;
    private long curves;
    private long letters;

    /** With the bounds of {@link Limits}. */
    Budget(String fileName) {
        this(fileName, Limits.CURVES, Limits.LETTERS);
    }

    Budget(String fileName, long mostCurves, long mostLetters) {
        this.fileName = fileName;
        this.mostCurves = mostCurves;
        this.mostLetters = mostLetters;
    }

    /**
     * Counts lines and curves.
     *
     * @throws ArtworkException if there are too many
     */
    void curves(int more, Source source) {
        curves += more;
        if (curves > mostCurves) {
            throw new ArtworkException(
                    fileName,
                    source,
                    String.format(
                            Locale.ROOT,
                            "up to here the drawing's shapes have %d lines and curves; %d are the limit.",
                            curves,
                            mostCurves),
                    "Simplify its paths, draw strokes with longer dashes, use fewer copies, or split the drawing.");
        }
    }

    /**
     * Counts letters.
     *
     * @throws ArtworkException if there are too many
     */
    void letters(int more, Source source) {
        letters += more;
        if (letters > mostLetters) {
            throw new ArtworkException(
                    fileName,
                    source,
                    String.format(
                            Locale.ROOT,
                            "up to here the drawing's texts have %d letters; %d are the limit.",
                            letters,
                            mostLetters),
                    "Take out what nobody reads, or split the drawing.");
        }
    }
}
