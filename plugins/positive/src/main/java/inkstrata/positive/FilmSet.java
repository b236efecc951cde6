package inkstrata.positive;

import inkstrata.artwork.Note;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.job.Job;
import inkstrata.measure.Grid;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.CurvedOutlines;
import inkstrata.positive.page.MmText;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * All films of one print, drawn but not yet written.
 *
 * @param title of the print
 * @param names of files, without their ending, first printed first
 * @param films in the same order
 * @param plates the same films as all are seen from the front, farthest from the eye first; a single one as it is
 * @param layout of a film for the side that the sheet is printed on; of one for the other side everything is mirrored
 * @param notes what the printmaker should know about them
 */
record FilmSet(
        String title, List<String> names, List<Film> films, List<Plate> plates, FilmLayout layout, List<Note> notes) {
    /**
     * A film as it is seen from the front, whichever side it is for.
     *
     * @param name with its number, so that plates sort in print order and none is taken for a process colour
     */
    record Plate(String name, Film film) {}

    FilmSet {
        names = List.copyOf(names);
        films = List.copyOf(films);
        plates = List.copyOf(plates);
        notes = List.copyOf(notes);
    }

    static FilmSet of(Separation separation, Job job, FilmSettings settings) {
        Sheet sheet = separation.table().sheet();
        String title = title(separation, job);
        List<Pull> pulls = separation.plan().pulls();
        List<List<String>> labels = new ArrayList<>();
        for (int i = 0; i < pulls.size(); i++) {
            SheetSide side = side(separation, i);
            int width = FilmLayout.labelWidth(sheet, picture(separation, side));
            labels.add(Label.lines(
                    title, i + 1, pulls.size(), pulls.get(i), Label.side(side.mirrored()), settings.date(), width));
        }
        int mostLines = labels.stream().mapToInt(List::size).max().orElse(0);
        List<List<Outline>> curves = CurvedOutlines.of(separation.printed(), separation.map(), separation.artwork());
        List<Film> films = new ArrayList<>();
        for (int i = 0; i < pulls.size(); i++) {
            SheetSide side = side(separation, i);
            films.add(new Film(
                    title + ", pull " + (i + 1) + " of " + pulls.size() + ": "
                            + pulls.get(i).ink().name(),
                    pulls.get(i).ink(),
                    side,
                    FilmLayout.of(sheet, picture(separation, side), settings, mostLines),
                    curves.get(i).stream().map(side::outline).toList(),
                    labels.get(i)));
        }
        FilmLayout layout =
                FilmLayout.of(sheet, picture(separation, SheetSide.of(sheet, sheet.side())), settings, mostLines);
        List<Plate> plates = sheet.farthestFirst(pulls).stream()
                .map(pull -> plate(pull, films.get(pull), curves.get(pull), separation, settings, mostLines, title))
                .toList();
        return new FilmSet(title, FilmNames.of(separation.plan()), films, plates, layout, notes(layout));
    }

    private static Plate plate(
            int pull,
            Film film,
            List<Outline> seenFromFront,
            Separation separation,
            FilmSettings settings,
            int mostLines,
            String title) {
        String name = String.format(Locale.ROOT, "%02d %s", pull + 1, film.ink().name());
        if (!film.side().mirrored() || separation.plan().pulls().size() == 1) {
            return new Plate(name, film);
        }
        Sheet sheet = separation.table().sheet();
        List<Pull> pulls = separation.plan().pulls();
        SheetSide front = SheetSide.of(sheet, Side.FRONT);
        Box picture = picture(separation, front);
        List<String> label = Label.lines(
                title,
                pull + 1,
                pulls.size(),
                pulls.get(pull),
                Label.sideOfBackPlate(),
                settings.date(),
                FilmLayout.labelWidth(sheet, picture));
        FilmLayout layout = FilmLayout.of(sheet, picture, settings, mostLines);
        return new Plate(name, new Film(film.title(), film.ink(), front, layout, seenFromFront, label));
    }

    private static SheetSide side(Separation separation, int pull) {
        Sheet sheet = separation.table().sheet();
        return SheetSide.of(
                sheet, sheet.side(separation.plan().pulls().get(pull).ink()));
    }

    private static Box picture(Separation separation, SheetSide side) {
        return side.box(Box.of(separation.artwork().frame()));
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
                        + " For all of them to fit, give the sheet " + missing(layout) + " more."));
    }

    /** By how much films reach beyond the sheet, side by side. */
    private static String missing(FilmLayout layout) {
        Box film = layout.film();
        Box sheet = layout.sheet();
        Map<String, Integer> sides = new LinkedHashMap<>();
        sides.put(" mm above", sheet.top() - film.top());
        sides.put(" mm below", film.bottom() - sheet.bottom());
        sides.put(" mm on the left", sheet.left() - film.left());
        sides.put(" mm on the right", film.right() - sheet.right());
        return sides.entrySet().stream()
                .filter(side -> side.getValue() > 0)
                .map(side -> MmText.of(Grid.millimetres(side.getValue())) + side.getKey())
                .collect(Collectors.joining(", "));
    }

    private static String size(Box box) {
        return MmText.of(box.frame().width()) + " x " + MmText.of(box.frame().height()) + " mm";
    }
}
