package inkstrata.shop;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.planar.Swallowed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says what was too small for the grid and prints nothing, with place and size. */
public final class SwallowedNotes {
    /** More than these are only counted. */
    static final int MOST = 10;

    private SwallowedNotes() {}

    /** A note for each of the first {@value #MOST} from the topmost down, and one that counts the rest. */
    public static List<Note> of(List<Swallowed> all) {
        return of(all, SeamNotes.ON_THE_SHEET);
    }

    /** The same for a picture that was not put on a sheet. */
    public static List<Note> inPicture(List<Swallowed> all) {
        return of(all, SeamNotes.IN_THE_PICTURE);
    }

    private static List<Note> of(List<Swallowed> all, String from) {
        List<Note> notes = new ArrayList<>();
        for (Swallowed one : all.subList(0, Math.min(MOST, all.size()))) {
            notes.add(Note.info(
                    one.source(),
                    String.format(
                            Locale.ROOT,
                            "An outline of %.5f x %.5f mm at %.3f, %.3f mm %s is too narrow for the grid of 0.00025 mm"
                                    + " and prints nothing.",
                            one.width(),
                            one.height(),
                            one.x(),
                            one.y(),
                            from)));
        }
        if (all.size() > MOST) {
            notes.add(Note.info(
                    Source.UNKNOWN,
                    (all.size() - MOST)
                            + " more outlines are too narrow for the grid of 0.00025 mm and print nothing."));
        }
        return notes;
    }
}
