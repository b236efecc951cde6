package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.separation.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Films that were read back, compared with what was planned.
 *
 * <p>First each film as a whole. What is wrong with all of it is said once, and mended before places are compared, so that a film that
 * lies 0.2 mm to the right is one finding and not a thousand.
 */
final class Comparison {
    private final Separation planned;
    private final List<Optional<Film>> films;
    private final double registerMm;
    private final List<String> inks;

    Comparison(Separation planned, List<Optional<Film>> films, double registerMm) {
        this.planned = planned;
        this.films = films;
        this.registerMm = registerMm;
        this.inks =
                planned.plan().pulls().stream().map(pull -> pull.ink().name()).toList();
    }

    /** Films as wholes, their paint and marks, places and what is too thin: the worst first. And how far the set holds. */
    Inspection inspection() {
        List<Finding> findings = new ArrayList<>();
        List<Film> asTheyLie = new ArrayList<>();
        List<Film> mended = new ArrayList<>();
        List<Region> printed = new ArrayList<>(planned.printed());
        List<Region> drawn = planned.plan().pulls().stream()
                .map(pull -> planned.map().dissolve(pull.prints()))
                .toList();
        Frame frame = planned.artwork().frame();
        for (int pull = 0; pull < films.size(); pull++) {
            if (films.get(pull).isEmpty()) {
                findings.add(missing(pull, frame));
                continue;
            }
            Film film = films.get(pull).get();
            asTheyLie.add(film);
            mended.add(film);
            if (isAsPlanned(film.picture(), pull)) {
                continue;
            }
            WholeFilm whole = WholeFilm.of(film, pull, planned.printed(), drawn, frame, inks);
            whole.finding().ifPresent(findings::add);
            mended.set(mended.size() - 1, film.withAround(whole.around()));
            if (!whole.picture().isEmpty()) {
                printed.set(
                        whole.pull(),
                        AsPlanned.of(whole.picture(), planned.printed().get(whole.pull()), frame));
            }
        }
        findings.addAll(PaintFaults.of(asTheyLie));
        findings.addAll(MarkFaults.of(asTheyLie, mended));
        findings.addAll(new Appearance(planned, printed, registerMm).findings());
        for (int pull = 0; pull < films.size(); pull++) {
            findings.addAll(ThinParts.of(printed.get(pull), inks.get(pull)));
        }
        LimitFindings limit = Check.limit(planned, printed, registerMm);
        findings.addAll(limit.findings());
        findings.sort(Comparator.comparing(Finding::severity).reversed());
        return Inspection.of(findings).withVerdict(limit.verdict(Obstacles.among(findings)));
    }

    private boolean isAsPlanned(Region picture, int pull) {
        Region own = planned.printed().get(pull);
        return AsPlanned.of(picture, own, planned.artwork().frame()).equals(own);
    }

    private Finding missing(int pull, Frame frame) {
        return new Finding(
                        Severity.ERROR,
                        "missing film",
                        new Place(frame.x() + frame.width() / 2, frame.y() + frame.height() / 2),
                        "there is no film for " + inks.get(pull),
                        "one film for each ink",
                        "Put its SVG into the folder, or say under films in the job file which file it is.")
                .about(Subject.ink(inks.get(pull)).withPull(pull));
    }
}
