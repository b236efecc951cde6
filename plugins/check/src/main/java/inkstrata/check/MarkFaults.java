package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Register marks that are missing on a film or lie elsewhere than on the others.
 *
 * <p>A mark is a piece outside the picture that is as wide as it is high, and has its like near the same place on most of the films.
 */
final class MarkFaults {
    /** Smaller pieces, in millimetres, are letters (our own choice). */
    private static final double LEAST_MARK_MM = 4;

    /** A piece whose sides differ by more, in millimetres, is no mark. */
    private static final double SQUARE_MM = 0.3;

    /** Marks of one place are not farther apart than this, in millimetres. */
    private static final double ONE_PLACE_MM = 5;

    /** What a film may be off before it shows in the print, in millimetres (our own choice). */
    private static final double OFF_MM = 0.02;

    /** More than that share of the films must agree before one is said to differ. */
    private static final double MOST = 0.5;

    private final List<Film> films;
    private final List<List<Place>> marks;

    private MarkFaults(List<Film> films) {
        this.films = films;
        this.marks = films.stream().map(film -> marks(film.around())).toList();
    }

    /**
     * By place, then by film; none for a single film. A film with nothing on it is not asked. One that is wrong as a whole may have its marks
     * with it or not: what is said is what is less.
     *
     * @param films as they lie
     * @param mended the same where they would lie if what is wrong with each as a whole were mended
     */
    static List<Finding> of(List<Film> films, List<Film> mended) {
        List<Film> kinder = new ArrayList<>(films);
        List<Finding> least = of(films);
        for (int film = 0; film < films.size(); film++) {
            if (!mended.get(film).equals(films.get(film))) {
                kinder.set(film, mended.get(film));
                List<Finding> findings = of(kinder);
                if (findings.size() <= least.size()) {
                    least = findings;
                } else {
                    kinder.set(film, films.get(film));
                }
            }
        }
        return least;
    }

    private static List<Finding> of(List<Film> films) {
        List<Film> some = films.stream()
                .filter(film -> !film.picture().isEmpty() || !film.around().isEmpty())
                .toList();
        return some.size() < 2 ? List.of() : new MarkFaults(some).findings();
    }

    private static List<Place> marks(Region around) {
        List<Place> marks = new ArrayList<>();
        for (Region.Polygon polygon : around.polygons()) {
            Frame frame = Region.of(polygon).bounds().orElseThrow();
            if (frame.width() >= LEAST_MARK_MM && Math.abs(frame.width() - frame.height()) <= SQUARE_MM) {
                marks.add(new Place(frame.x() + frame.width() / 2, frame.y() + frame.height() / 2));
            }
        }
        return marks;
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        List<Place> agreed = agreed();
        for (Place place : agreed) {
            for (int film = 0; film < films.size(); film++) {
                fault(film, place).ifPresent(findings::add);
            }
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

    private Optional<Finding> fault(int film, Place agreed) {
        Optional<Place> own = marks.get(film).stream()
                .filter(mark -> apart(mark, agreed) < ONE_PLACE_MM)
                .min(Comparator.comparingDouble(mark -> apart(mark, agreed)));
        if (own.isPresent() && apart(own.get(), agreed) <= OFF_MM) {
            return Optional.empty();
        }
        String measured = own.map(mark -> String.format(
                        Locale.ROOT,
                        "a mark on %s is off by %.2f mm",
                        films.get(film).file(),
                        apart(mark, agreed)))
                .orElse("a mark is missing on " + films.get(film).file());
        return Optional.of(new Finding(
                Severity.ERROR,
                "register marks",
                agreed,
                measured,
                "where most films have it",
                "Take the marks from one film and copy them to all others, in place."));
    }

    private static double apart(Place one, Place other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }
}
