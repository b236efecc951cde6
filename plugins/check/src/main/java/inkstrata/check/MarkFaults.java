package inkstrata.check;

import inkstrata.check.WholeFilm.Fault;
import inkstrata.film.Film;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Register marks that are missing on a film or lie elsewhere than on the others.
 *
 * <p>A mark is a piece outside the picture that is as wide as it is high, and has its like near the same place on most of the films.
 */
final class MarkFaults {
    /** Smaller pieces, in millimetres, are letters (our own choice). */
    private static final double LEAST_MARK_MM = 4;

    /** Larger ones are backgrounds and frames (our own choice). */
    private static final double MOST_MARK_MM = 40;

    /** A piece whose sides differ by more, in millimetres, is no mark. */
    private static final double SQUARE_MM = 0.3;

    /** Marks of one place are not farther apart than this, in millimetres. */
    private static final double ONE_PLACE_MM = 5;

    /** What a film may be off before it shows in the print, in millimetres (our own choice). */
    private static final double OFF_MM = 0.02;

    /** How far marks may seem off on a film that was mended: its place is known by a picture that may be small, and marks lie far out (our own choice). */
    private static final double MENDED_OFF_MM = 0.1;

    /** More than that share of the films must agree before one is said to differ. */
    private static final double MOST = 0.5;

    private final List<WholeFilm> wholes;
    private final List<Film> films;
    private final List<List<Place>> marks;
    private final Intent intent;

    private MarkFaults(List<WholeFilm> wholes, List<Film> films, Intent intent) {
        this.wholes = wholes;
        this.films = films;
        this.intent = intent;
        this.marks = films.stream().map(film -> marks(film.around())).toList();
    }

    /**
     * By film; none for a single film. A film with nothing on it is not asked. One that is wrong as a whole may have its marks
     * with it or not: what is said is what is less.
     */
    static List<Finding> of(List<WholeFilm> all, Intent intent) {
        List<WholeFilm> wholes = all.stream()
                .filter(whole -> !isNegativeAllOver(whole))
                .filter(whole -> !whole.film().picture().isEmpty()
                        || !whole.film().around().isEmpty())
                .toList();
        if (wholes.size() < 2) {
            return List.of();
        }
        List<Film> asTheyLie = wholes.stream().map(WholeFilm::film).toList();
        List<Film> mended = wholes.stream().map(WholeFilm::mended).toList();
        List<Finding> least = new MarkFaults(wholes, asTheyLie, intent).findings();
        List<Finding> allMended = new MarkFaults(wholes, mended, intent).findings();
        List<Film> kinder = new ArrayList<>(asTheyLie);
        if (allMended.size() < least.size()) {
            kinder = new ArrayList<>(mended);
            least = allMended;
        }
        for (int film = 0; film < wholes.size() && !least.isEmpty(); film++) {
            Film other = kinder.get(film).equals(mended.get(film)) ? asTheyLie.get(film) : mended.get(film);
            if (!other.equals(kinder.get(film))) {
                List<Film> tried = new ArrayList<>(kinder);
                tried.set(film, other);
                List<Finding> findings = new MarkFaults(wholes, tried, intent).findings();
                if (findings.size() <= least.size()) {
                    least = findings;
                    kinder = tried;
                }
            }
        }
        return least;
    }

    /** Its marks are clear on black, and come right with it. */
    private static boolean isNegativeAllOver(WholeFilm whole) {
        return whole.fault() == Fault.NEGATIVE && marks(whole.film().around()).isEmpty();
    }

    private static List<Place> marks(Region around) {
        List<Place> marks = new ArrayList<>();
        for (Region.Polygon polygon : around.polygons()) {
            Frame frame = Region.of(polygon).bounds().orElseThrow();
            if (frame.width() >= LEAST_MARK_MM
                    && frame.width() <= MOST_MARK_MM
                    && Math.abs(frame.width() - frame.height()) <= SQUARE_MM) {
                marks.add(new Place(frame.x() + frame.width() / 2, frame.y() + frame.height() / 2));
            }
        }
        return marks;
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        List<Place> agreed = agreed();
        for (int film = 0; film < films.size(); film++) {
            fault(film, agreed).ifPresent(findings::add);
        }
        if (agreed.isEmpty()) {
            findings.add(new Finding(
                    Severity.WARNING,
                    "register marks",
                    new Place(0, 0),
                    "films have no register marks in common",
                    "the same marks on every film",
                    "Put crosses in the same places on all of them, outside the picture, before they are output."));
        }
        return findings;
    }

    /** Places of marks that most films agree on. */
    private List<Place> agreed() {
        List<Place> agreed = new ArrayList<>();
        for (List<Place> of : marks) {
            for (Place mark : of) {
                boolean isKnown = agreed.stream().anyMatch(known -> apart(known, mark) < ONE_PLACE_MM);
                long same = marks.stream()
                        .filter(others -> others.stream().anyMatch(other -> apart(other, mark) <= OFF_MM))
                        .count();
                if (!isKnown && same > MOST * films.size()) {
                    agreed.add(mark);
                }
            }
        }
        return agreed;
    }

    /**
     * A mark that is wrong.
     *
     * @param agreed where most films have it
     * @param offMm how far it is from there; empty if it is missing
     */
    private record Wrong(Place agreed, OptionalDouble offMm) {
        double badness() {
            return offMm.orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** All that is wrong with a film's marks, at the worst of them. */
    private Optional<Finding> fault(int film, List<Place> agreed) {
        List<Wrong> wrong = agreed.stream()
                .flatMap(place -> wrong(film, place).stream())
                .sorted(Comparator.comparingDouble((Wrong mark) -> -mark.badness()))
                .toList();
        if (wrong.isEmpty()) {
            return Optional.empty();
        }
        String file = films.get(film).file();
        long missing = wrong.stream().filter(mark -> mark.offMm().isEmpty()).count();
        double most = wrong.stream()
                .flatMapToDouble(mark -> mark.offMm().stream())
                .max()
                .orElse(0);
        long off = wrong.size() - missing;
        String lacks =
                missing == 0 ? "" : (missing == 1 ? "a mark is" : missing + " marks are") + " missing on " + file;
        String lies = off == 0
                ? ""
                : off == 1
                        ? String.format(Locale.ROOT, "a mark on %s is off by %.2f mm", file, most)
                        : String.format(Locale.ROOT, "%d marks on %s are off by up to %.2f mm", off, file, most);
        WholeFilm whole = wholes.get(film);
        return Optional.of(new Finding(
                        Severity.ERROR,
                        "register marks",
                        wrong.get(0).agreed(),
                        Stream.of(lacks, lies).filter(words -> !words.isEmpty()).collect(Collectors.joining("; ")),
                        "where most films have it",
                        "Take the marks from one film and copy them to all others, in place.")
                .about(Subject.ink(intent.inks().get(whole.pull()))
                        .withPull(whole.pull())
                        .withFile(file))
                .withQuantity(
                        missing > 0
                                ? Quantity.of((double) missing, 0, Unit.COUNT)
                                : Quantity.of(most, OFF_MM, Unit.MILLIMETRES)));
    }

    private Optional<Wrong> wrong(int film, Place agreed) {
        Optional<Place> own = marks.get(film).stream()
                .filter(mark -> apart(mark, agreed) < ONE_PLACE_MM)
                .min(Comparator.comparingDouble(mark -> apart(mark, agreed)));
        if (own.isEmpty()) {
            return Optional.of(new Wrong(agreed, OptionalDouble.empty()));
        }
        double off = apart(own.get(), agreed);
        return off <= (films.get(film).equals(wholes.get(film).film()) ? OFF_MM : MENDED_OFF_MM)
                ? Optional.empty()
                : Optional.of(new Wrong(agreed, OptionalDouble.of(off)));
    }

    private static double apart(Place one, Place other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }
}
