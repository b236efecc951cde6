package inkstrata.check;

import inkstrata.check.WholeFilm.Fault;
import inkstrata.film.Film;
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
 * lies 0.2 mm to the right is one finding and not a thousand; and once for all films that are wrong alike. What is grey is said, and taken as it was
 * planned. How far films hold is asked of them as they would be without all that was found.
 */
final class Comparison {
    private final Separation planned;
    private final List<Optional<Film>> films;
    private final double registerMm;
    private final Intent intent;

    Comparison(Separation planned, List<Optional<Film>> films, double registerMm) {
        this.planned = planned;
        this.films = films;
        this.registerMm = registerMm;
        this.intent = Intent.of(planned);
    }

    /** Films as wholes, their paint and marks, places and what is too thin: the worst first. And how far the set holds. */
    Inspection inspection() {
        List<Finding> findings = new ArrayList<>();
        Diagnosis diagnosis = new Diagnosis(intent);
        List<WholeFilm> wholes = new ArrayList<>();
        for (int pull = 0; pull < films.size(); pull++) {
            if (films.get(pull).isEmpty()) {
                findings.add(missing(pull));
            } else {
                wholes.add(diagnosis.of(films.get(pull).get(), pull));
            }
        }
        List<WholeSet> sets = WholeSet.of(wholes, intent, diagnosis);
        for (WholeSet set : sets) {
            set.films().forEach(film -> wholes.replaceAll(known -> known.pull() == film.pull() ? film : known));
        }
        WholeWords words = new WholeWords(intent, wholes);
        sets.forEach(set -> findings.add(words.finding(set)));
        findings.addAll(PaintFaults.of(wholes, intent));
        findings.addAll(MarkFaults.of(wholes, intent));
        Appearance appearance = new Appearance(planned, intent, printed(wholes), files(), registerMm);
        findings.addAll(appearance.findings());
        NearOutlines edges = ThinParts.drawn(planned);
        for (int pull = 0; pull < films.size(); pull++) {
            findings.addAll(
                    ThinParts.of(appearance.mended().get(pull), intent.inks().get(pull), edges));
        }
        LimitFindings limit = Check.limit(planned, appearance.mended(), registerMm);
        // What shows in how far films hold is said there.
        findings.removeIf(finding -> finding.rule().equals(Part.LOST_OVERPRINT) && isWithin(finding, limit.lost()));
        findings.addAll(limit.findings());
        findings.sort(Comparator.comparing(Finding::severity).reversed());
        return Inspection.of(findings).withVerdict(limit.verdict(Obstacles.among(findings)));
    }

    /** Whether most of what is said to be lacking makes films hold less. */
    private boolean isWithin(Finding lacking, LostRegister lost) {
        Region area = lacking.area().orElse(Region.EMPTY);
        List<Region> pieces =
                lost.pieces().stream().map(LostRegister.Piece::lacking).toList();
        return pieces.stream().anyMatch(piece -> !piece.isEmpty())
                && area.intersection(Region.union(pieces)).areaMm2() > area.areaMm2() / 2;
    }

    /** What each pull's film prints once what is wrong with it as a whole is mended: as planned where there is none. */
    private List<Region> printed(List<WholeFilm> wholes) {
        List<Region> printed = new ArrayList<>(intent.planned());
        for (int pull = 0; pull < printed.size(); pull++) {
            int asked = pull;
            Optional<Film> film = wholes.stream()
                    .filter(whole -> whole.prints() == asked && whole.fault() != Fault.EMPTY)
                    .min(Comparator.comparing(whole -> whole.pull() != asked))
                    .map(WholeFilm::mended);
            if (film.isPresent()) {
                Region own = intent.planned().get(pull);
                Region read = AsPlanned.without(
                        WholeFilm.stained(film.get()), film.get().picture(), own, intent.frame());
                printed.set(pull, AsPlanned.of(read, own, intent.frame()));
            }
        }
        return printed;
    }

    private List<String> files() {
        return films.stream().map(film -> film.map(Film::file).orElse("")).toList();
    }

    private Finding missing(int pull) {
        Finding finding = new Finding(
                        Severity.ERROR,
                        "missing film",
                        intent.middle(pull),
                        "there is no film for " + intent.inks().get(pull),
                        "one film for each ink",
                        "Put its SVG into the folder, or say under films in the job file which file it is.")
                .about(Subject.ink(intent.inks().get(pull)).withPull(pull));
        Region own = intent.planned().get(pull);
        return own.isEmpty() ? finding : finding.withArea(own);
    }
}
