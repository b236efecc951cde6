package inkstrata.check;

import inkstrata.measure.LengthText;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Subject;
import inkstrata.separation.Verdict;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A limit in words.
 *
 * @param counted which films it is a limit of
 * @param lost where films hold less than was planned
 */
record LimitFindings(RegisterLimit limit, Counted counted, LostRegister lost) {
    /** The rule by which films hold less than was planned. */
    static final String LOST = "register lost";

    /** So many places are named where the same inks part; the worst come first. */
    private static final int MOST_PLACES = 5;

    /** Of places nearer to each other than this, in millimetres, the worst is named. */
    private static final double ONE_PLACE_MM = 10;

    /** Gaps; what was lost; then openings that the plan has as well, by inks and then the smallest first. */
    List<Finding> findings() {
        Map<String, List<Opening>> byInks = new TreeMap<>();
        limit.openings().stream()
                .filter(opening -> !lost.openings().contains(opening))
                .sorted(Comparator.comparingDouble(Opening::size))
                .forEach(opening ->
                        addIfApart(opening, byInks.computeIfAbsent(between(opening), between -> new ArrayList<>())));
        List<Finding> findings = new ArrayList<>();
        limit.gaps().forEach(gap -> findings.add(finding(gap)));
        lost.pieces().forEach(piece -> findings.add(finding(piece)));
        byInks.values().forEach(openings -> openings.forEach(opening -> findings.add(finding(opening))));
        return findings;
    }

    /** @param obstacles what must be mended first */
    Verdict verdict(List<String> obstacles) {
        boolean canPart = counted.pulls().size() > 1;
        return new Verdict(
                limit.asked(),
                canPart ? OptionalDouble.of(limit.heldMm()) : OptionalDouble.empty(),
                lost.plannedMm(),
                limit.smallest().map(opening -> new Verdict.Parting(place(opening), betweenEach(opening))),
                obstacles,
                counted.inks(),
                counted.namesPassedOver());
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

    private static Finding finding(Region gap) {
        return new Finding(
                        Severity.ERROR,
                        "gap",
                        gap.somewhere(),
                        String.format(Locale.ROOT, "no film covers this place (%.2f mm²)", gap.areaMm2()),
                        "a film wherever the drawing has ink",
                        "Let an ink print there, or leave the place out of the drawing.")
                .withQuantity(Quantity.of(gap.areaMm2(), 0, Unit.SQUARE_MILLIMETRES))
                .withArea(gap);
    }

    private Finding finding(LostRegister.Piece piece) {
        double held = RegisterLimit.heldMm(piece.worst());
        String ink = counted.inks().get(piece.film());
        String more = piece.more() == 0 ? "" : ", and likewise in " + piece.more() + " smaller places";
        return new Finding(
                        Severity.ERROR,
                        LOST,
                        place(piece.worst()),
                        "paper shows between " + between(piece.worst()) + " " + onceOff(held) + ", because " + ink
                                + " is cut back here" + more,
                        LengthText.down(piece.plannedMm()) + " mm, as planned",
                        "Let " + ink + " reach as far as it was planned to.")
                .about(Subject.ink(ink).withPull(counted.pulls().get(piece.film())))
                .withQuantity(Quantity.of(held, piece.plannedMm(), Unit.MILLIMETRES))
                .withArea(piece.lacking());
    }

    private Finding finding(Opening opening) {
        double held = RegisterLimit.heldMm(opening);
        return new Finding(
                        Severity.WARNING,
                        "register",
                        place(opening),
                        "paper " + (opening.isFound() ? "shows" : "may show") + " between " + between(opening) + " "
                                + onceOff(held)
                                + (opening.isFound()
                                        ? ""
                                        : "; too many edges lie close together here to tell, so the least is said that it can be"),
                        "register " + LengthText.asked(limit.asked()) + " mm",
                        remedy(opening))
                .withQuantity(Quantity.of(held, limit.asked(), Unit.MILLIMETRES));
    }

    private static String onceOff(double held) {
        String down = LengthText.down(held);
        return down.equals("0.00") ? "as soon as pulls are off" : "once pulls are off by " + down + " mm";
    }

    private static String remedy(Opening opening) {
        return opening.films().size() > 2
                ? "Three inks meet here: print one of them beneath the others, or draw the corner simpler."
                : "Let the lighter run farther beneath the darker, or print the darker later; where their edges cross at a flat"
                        + " angle, draw them steeper or put a darker line over them.";
    }

    /** The inks of each place, those of one place joined by a plus sign. */
    private String between(Opening opening) {
        return String.join(" and ", betweenEach(opening));
    }

    private List<String> betweenEach(Opening opening) {
        return opening.films().stream().map(this::names).sorted().toList();
    }

    private String names(BitSet films) {
        return films.stream().mapToObj(counted.inks()::get).collect(Collectors.joining(" + "));
    }
}
