package inkstrata.check;

import inkstrata.measure.Place;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A limit in words.
 *
 * @param inks name of each film's ink, by position
 * @param isOnceMended whether it holds only once films that are missing or wrong as a whole are mended
 */
record LimitFindings(RegisterLimit limit, List<String> inks, boolean isOnceMended) {
    /** So many places are named where the same inks part; the worst come first. */
    private static final int MOST_PLACES = 5;

    /** Of places nearer to each other than this, in millimetres, the worst is named. */
    private static final double ONE_PLACE_MM = 10;

    LimitFindings {
        inks = List.copyOf(inks);
    }

    LimitFindings(RegisterLimit limit, List<String> inks) {
        this(limit, inks, false);
    }

    /** The same where films are missing or wrong as a whole, and were taken as if that were mended. */
    LimitFindings onceMended() {
        return new LimitFindings(limit, inks, true);
    }

    /** Openings, by inks and then the smallest first; then the limit itself. */
    List<Finding> findings() {
        Map<String, List<Opening>> byInks = new TreeMap<>();
        limit.openings().stream()
                .sorted(Comparator.comparingDouble(Opening::size))
                .forEach(opening ->
                        addIfApart(opening, byInks.computeIfAbsent(between(opening), between -> new ArrayList<>())));
        List<Finding> findings = new ArrayList<>();
        byInks.values().forEach(openings -> openings.forEach(opening -> findings.add(finding(opening))));
        findings.add(limitFinding());
        return findings;
    }

    private static void addIfApart(Opening opening, List<Opening> known) {
        Place place = place(opening);
        boolean isNear = known.stream()
                .map(LimitFindings::place)
                .anyMatch(other -> Math.hypot(other.x() - place.x(), other.y() - place.y()) < ONE_PLACE_MM);
        if (!isNear && known.size() < MOST_PLACES) {
            known.add(opening);
        }
    }

    private static Place place(Opening opening) {
        return opening.middle().place();
    }

    private Finding finding(Opening opening) {
        if (isGap(opening)) {
            return new Finding(
                    Severity.ERROR,
                    "gap",
                    place(opening),
                    "no film covers this place",
                    "a film wherever the drawing has ink",
                    "Let an ink print there, or leave the place out of the drawing.");
        }
        return new Finding(
                Severity.WARNING,
                "register",
                place(opening),
                "sheet shows between " + between(opening) + " once pulls are off by " + millimetres(opening.sizeMm()),
                "register " + millimetres(limit.asked()),
                remedy(opening));
    }

    private static String remedy(Opening opening) {
        return opening.films().size() > 2
                ? "Three inks meet here: print one of them beneath the others, or draw the corner simpler."
                : "Let the lighter run farther beneath the darker, or print the darker later; where their edges cross at a flat"
                        + " angle, draw them steeper or put a darker line over them.";
    }

    private Finding limitFinding() {
        return new Finding(
                Severity.NOTE,
                "register limit",
                limit.smallest().map(LimitFindings::place).orElse(new Place(0, 0)),
                "holds to " + millimetres(limit.limitMm())
                        + limit.smallest()
                                .map(opening -> isGap(opening) ? " (gap)" : " (" + between(opening) + ")")
                                .orElse(" and more")
                        + (isOnceMended ? ", once films that are missing or wrong as a whole are mended" : ""),
                "register " + millimetres(limit.asked()),
                isOnceMended
                        ? "Mend them first, and check again."
                        : "Nothing to do if pulls are closer to each other than that.");
    }

    private static boolean isGap(Opening opening) {
        return opening.films().size() == 1;
    }

    /** The inks of each place, those of one place joined by a plus sign. */
    private String between(Opening opening) {
        return opening.films().stream().map(this::names).sorted().collect(Collectors.joining(" and "));
    }

    private String names(BitSet films) {
        return films.stream().mapToObj(inks::get).collect(Collectors.joining(" + "));
    }

    /** Down to a hundredth, so that what is said to hold does. */
    static String millimetres(double length) {
        return String.format(Locale.ROOT, "%.2f mm", Math.floor(length * 100 + 0.2) / 100);
    }
}
