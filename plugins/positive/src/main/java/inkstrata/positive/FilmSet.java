package inkstrata.positive;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.job.Job;
import inkstrata.plan.Pull;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;

/**
 * All films of one print, laid out but not yet written.
 *
 * @param title of the print
 * @param names file names, first printed first
 * @param films in the same order
 * @param layout the same for all of them
 * @param notes what the printmaker should know about them
 */
record FilmSet(String title, List<String> names, List<FilmSvg> films, FilmLayout layout, List<Note> notes) {
    FilmSet {
        names = List.copyOf(names);
        films = List.copyOf(films);
        notes = List.copyOf(notes);
    }

    static FilmSet of(Separation separation, Job job, FilmSettings settings) {
        SheetSide side = SheetSide.of(separation.table().sheet());
        Box picture = side.box(Box.of(separation.artwork().frame()));
        int labelWidth = FilmLayout.labelWidth(separation.table().sheet(), picture);
        String title = title(separation, job);
        List<Pull> pulls = separation.plan().pulls();
        List<FilmSvg> films = new ArrayList<>();
        int mostLines = 0;
        for (int i = 0; i < pulls.size(); i++) {
            Pull pull = pulls.get(i);
            List<String> label = Label.lines(title, i + 1, pulls.size(), pull, side.mirrored(), labelWidth);
            mostLines = Math.max(mostLines, label.size());
            films.add(new FilmSvg(
                    title + ", pull " + (i + 1) + " of " + pulls.size() + ": "
                            + pull.ink().name(),
                    label,
                    separation.printed().get(i),
                    side));
        }
        FilmLayout layout = FilmLayout.of(separation.table().sheet(), picture, settings, mostLines);
        return new FilmSet(title, FilmNames.of(separation.plan()), films, layout, notes(layout));
    }

    /** The job's title, else the artwork's name without its ending. */
    private static String title(Separation separation, Job job) {
        return job.title().isBlank() ? separation.artwork().name().replaceFirst("(?i)\\.svgz?$", "") : job.title();
    }

    private static List<Note> notes(FilmLayout layout) {
        if (!layout.isLargerThanSheet()) {
            return List.of();
        }
        return List.of(Note.info(
                Source.UNKNOWN,
                "Films are " + size(layout.film()) + ", larger than the sheet of " + size(layout.sheet())
                        + ", which leaves too little room around the picture: some marks, label or bar lie beyond the sheet."
                        + " For all of them to fit, give the sheet more room around the picture."));
    }

    private static String size(Box box) {
        return GridText.of(box.width()) + " x " + GridText.of(box.height()) + " mm";
    }
}
