package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What no film can hold: each such element is left out with a note, and in the end the file is refused unless that was asked for. Not for several threads. */
final class Refusals {
    /** So many are listed; more are only counted. */
    static final int MOST = 20;

    private final String fileName;
    private final boolean leaveOut;
    private final Notes notes;
    private final Set<Refusal> known = new HashSet<>();
    private final List<Refusal> first = new ArrayList<>();
    private int shapesLeftOut;

    /** One element that no film can hold. */
    private record Refusal(Source source, String wrong, String mend) {}

    /**
     * Begins with none.
     *
     * @param fileName for messages
     * @param leaveOut go on without such elements
     * @param notes where it is said what was left out
     */
    Refusals(String fileName, boolean leaveOut, Notes notes) {
        this.fileName = fileName;
        this.leaveOut = leaveOut;
        this.notes = notes;
    }

    String fileName() {
        return fileName;
    }

    Notes notes() {
        return notes;
    }

    /**
     * To be thrown by the caller.
     *
     * @param wrong a sentence
     * @param mend another one
     */
    LeftOut refuse(Source source, String wrong, String mend) {
        Refusal refusal = new Refusal(source, wrong, mend);
        if (known.add(refusal) && first.size() < MOST) {
            first.add(refusal);
        }
        notes.warning(source, "left out: " + wrong);
        return new LeftOut();
    }

    /** So many shapes do not print, since they, or what holds them, are left out. */
    void leftOut(int shapes) {
        shapesLeftOut += shapes;
    }

    /**
     * Ends the reading.
     *
     * @param shapes how many are left
     * @throws ArtworkException with a line for each element, if there are any and they were not to be left out
     */
    void settle(int shapes) {
        if (leaveOut || first.isEmpty()) {
            return;
        }
        throw new ArtworkException(
                first.stream()
                        .map(refusal -> new ArtworkException(fileName, refusal.source, refusal.wrong, refusal.mend))
                        .toList(),
                known.size() - first.size(),
                outlook(shapes));
    }

    private String outlook(int shapes) {
        String them = known.size() == 1 ? "it" : "them";
        return shapes == 0
                ? "Without " + them + " nothing is left to print."
                : "--leave-out would print the drawing without " + them + ": " + shapes + " of "
                        + (shapes + shapesLeftOut) + " shapes.";
    }

    /** Thrown through an element that is left out and caught where the element began. */
    static final class LeftOut extends RuntimeException {
        private static final long serialVersionUID = 1L;

        LeftOut() {
            super("left out", null, false, false);
        }
    }
}
