package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;

/**
 * What no film can hold: the file is refused, or the element is left out with a note.
 *
 * @param fileName for messages
 * @param leaveOut go on without such elements
 * @param notes where it is said what was left out
 */
record Refusals(String fileName, boolean leaveOut, Notes notes) {
    /**
     * To be thrown by the caller.
     *
     * @param wrong a sentence
     * @param mend another one
     */
    RuntimeException refuse(Source source, String wrong, String mend) {
        if (!leaveOut) {
            return new ArtworkException(fileName, source, wrong, mend);
        }
        notes.warning(source, "left out: " + wrong);
        return new LeftOut();
    }

    /** Thrown through an element that is left out and caught where the element began. */
    static final class LeftOut extends RuntimeException {
        private static final long serialVersionUID = 1L;

        LeftOut() {
            super("left out", null, false, false);
        }
    }
}
