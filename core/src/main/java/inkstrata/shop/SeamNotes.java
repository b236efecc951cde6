package inkstrata.shop;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.colour.ColourName;
import inkstrata.job.Job;
import inkstrata.planar.Paint;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.Seam;
import inkstrata.planar.SeamTally;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says which strips between shapes were closed, and asks about those that are hardly wider. */
public final class SeamNotes {
    /** More than these are only counted. */
    static final int MOST = 5;

    static final String ON_THE_SHEET = "on the sheet";
    static final String IN_THE_PICTURE = "from the picture's top left corner";

    private SeamNotes() {}

    /** A note that counts what was closed and names the largest, and one for each of the first {@value #MOST} that were kept. */
    public static List<Note> of(PlanarMap map, Job job) {
        return of(map, job, ON_THE_SHEET);
    }

    /** The same for a picture that was not put on a sheet. */
    public static List<Note> inPicture(PlanarMap map, Job job) {
        return of(map, job, IN_THE_PICTURE);
    }

    private static List<Note> of(PlanarMap map, Job job, String from) {
        List<Note> notes = new ArrayList<>();
        List<Seam> closed = map.seams().stream().filter(Seam::closed).toList();
        if (!closed.isEmpty()) {
            SeamTally tally = SeamTally.closed(map);
            notes.add(Note.info(
                    Source.UNKNOWN,
                    String.format(
                            Locale.ROOT,
                            "%s no wider than %s mm closed, %.1f mm long in all, the widest %.3f mm. The largest: %s.",
                            tally.count() == 1 ? "1 seam" : tally.count() + " seams",
                            Double.toString(job.seamMm()),
                            tally.lengthMm(),
                            tally.widestMm(),
                            text(closed.get(0), from))));
        }
        List<Seam> kept = map.seams().stream().filter(seam -> !seam.closed()).toList();
        for (Seam seam : kept.subList(0, Math.min(MOST, kept.size()))) {
            notes.add(Note.warning(
                    Source.UNKNOWN,
                    String.format(
                            Locale.ROOT,
                            "%s: meant? If not, let the shapes overlap, or write seam: %.2f mm in the job file.",
                            text(seam, from),
                            Math.ceil(100 * seam.widestMm()) / 100)));
        }
        if (kept.size() > MOST) {
            notes.add(Note.warning(
                    Source.UNKNOWN,
                    (kept.size() - MOST) + " more strips are at most three times as wide as a seam: meant?"));
        }
        return notes;
    }

    private static String text(Seam seam, String from) {
        return String.format(
                Locale.ROOT,
                "%.3f mm of %s between %s and %s, %.1f mm long, at %.2f, %.2f mm %s",
                seam.widestMm(),
                seam.shows().map(SeamNotes::name).orElse("sheet"),
                side(seam.one()),
                side(seam.other()),
                seam.lengthMm(),
                seam.place().x(),
                seam.place().y(),
                from);
    }

    private static String side(Optional<Paint> paint) {
        return paint.map(SeamNotes::name).orElse("the picture's edge");
    }

    private static String name(Paint paint) {
        return ColourName.of(paint.colour());
    }
}
