package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.plan.PlanningTable;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.planar.StackSet;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Separation;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Lines and gaps of a film that a screen may not hold: where its outline runs back along itself closer than that.
 *
 * <p>Lines below 0.2 mm and gaps below 0.25 mm are asking for trouble on a mesh of 77 threads to the centimetre; a gap fills in sooner
 * than a line breaks (common practice, no source).
 *
 * <p>Only edges that the artwork shows count: where ink ends hidden beneath another, at the end of what runs on or of a trap, nobody drew
 * anything that could be drawn wider.
 */
final class ThinParts {
    static final double LINE_MM = 0.2;
    static final double GAP_MM = 0.25;

    /** Shorter ones are tips of corners (our own choice). */
    private static final double SHORTEST_MM = 1;

    /** So long a line was drawn as one, and is no tip (our own choice). */
    private static final double LONG_MM = 5;

    /** Two stretches run back along each other if the cosine of the angle between them is below this: 26 degrees from straight back. */
    private static final double BACK = -0.9;

    /** An edge of a film lies no farther from the one that was drawn: other programs round, and curves are cut elsewhere (our own choice). */
    private static final double DRAWN_MM = 0.05;

    /** With ink between the stretches or without. */
    private enum Kind {
        LINE,
        GAP
    }

    private final Kind kind;
    private final double width;
    private final Cells<Stretch> cells;
    private final List<Stretch> all = new ArrayList<>();

    private ThinParts(Region picture, Kind kind, double widthMm, NearOutlines drawn) {
        this.kind = kind;
        this.width = widthMm * Grid.STEPS_PER_MM;
        this.cells = new Cells<>(width);
        for (Ring ring : NearOutlines.rings(picture)) {
            for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                Stretch edge = new Stretch(ring.x(j), ring.y(j), ring.x(i), ring.y(i));
                Outlines.chop(edge, width / 2, part -> {
                    if (drawn.nearest(part.middle(), DRAWN_MM * Grid.STEPS_PER_MM)
                            .isPresent()) {
                        all.add(part);
                        cells.add(part.middle().x(), part.middle().y(), part);
                    }
                });
            }
        }
    }

    /** The outlines of all that the artwork shows. */
    static NearOutlines drawn(Separation planned) {
        List<Region> shown = planned.table().inks().stream()
                .map(ink -> planned.map()
                        .dissolve(StackSet.of(planned.table().rows().stream()
                                .filter(row -> row.shows(ink))
                                .mapToInt(PlanningTable.Row::stack))))
                .toList();
        return new NearOutlines(shown, GAP_MM * Grid.STEPS_PER_MM);
    }

    /**
     * At most one finding for lines and one for gaps, at the longest of them.
     *
     * @param drawn the outlines of all that the artwork shows
     */
    static List<Finding> of(Region picture, String ink, NearOutlines drawn) {
        List<Finding> findings = new ArrayList<>();
        ThinParts lines = new ThinParts(picture, Kind.LINE, LINE_MM, drawn);
        ThinParts gaps = new ThinParts(picture, Kind.GAP, GAP_MM, drawn);
        lines.finding(lines.parts(), LINE_MM, "thin line", ink + " has lines thinner", SHORTEST_MM)
                .ifPresent(findings::add);
        gaps.finding(gaps.parts(), GAP_MM, "thin gap", ink + " has gaps narrower", SHORTEST_MM)
                .ifPresent(findings::add);
        return findings;
    }

    /**
     * A warning at the longest of lines that are finer than any screen holds, if there are any; tips of pointed shapes are none.
     *
     * @param film what prints
     * @param shown where that is to be seen: what lies beneath other inks nobody drew as a line
     */
    static Optional<Finding> finer(Region film, Region shown, String ink, double widthMm) {
        NearOutlines outlines = new NearOutlines(List.of(shown), widthMm * Grid.STEPS_PER_MM);
        ThinParts printed = new ThinParts(film, Kind.LINE, widthMm, outlines);
        ThinParts seen = new ThinParts(shown, Kind.LINE, widthMm, outlines);
        Cells<Stretch> thin = new Cells<>(seen.width);
        seen.all.stream()
                .filter(seen::isThin)
                .forEach(stretch ->
                        thin.add(stretch.middle().x(), stretch.middle().y(), stretch));
        List<List<Stretch>> parts = printed.parts().stream()
                .filter(part -> part.stream().anyMatch(stretch -> printed.isNear(stretch, thin)))
                .toList();
        return printed.finding(parts, widthMm, "fine line", ink + " has lines finer", LONG_MM)
                .map(finding -> finding.withSeverity(Severity.WARNING));
    }

    private boolean isNear(Stretch stretch, Cells<Stretch> others) {
        boolean[] found = {false};
        near(stretch, others, other -> found[0] |= stretch.distanceTo(other) <= width);
        return found[0];
    }

    private Optional<Finding> finding(
            List<List<Stretch>> among, double widthMm, String rule, String what, double shortestMm) {
        // Each is found from both of its sides.
        double shortest = 2 * shortestMm * Grid.STEPS_PER_MM;
        List<List<Stretch>> parts = among.stream()
                .filter(part -> length(part) >= shortest)
                .sorted(Comparator.comparingDouble(part -> -length(part)))
                .toList();
        return parts.stream()
                .findFirst()
                .map(longest -> new Finding(
                        Severity.NOTE,
                        rule,
                        longest.get(0).middle().place(),
                        String.format(
                                Locale.ROOT,
                                "%s than %.2f mm: %d of them, %.1f mm long in all",
                                what,
                                widthMm,
                                parts.size(),
                                parts.stream().mapToDouble(ThinParts::length).sum() / 2 * Grid.STEP_MM),
                        String.format(Locale.ROOT, "%.2f mm", widthMm),
                        "Draw them wider, or take a finer mesh and a thin, sharp stencil."));
    }

    private static double length(List<Stretch> part) {
        return part.stream().mapToDouble(Stretch::length).sum();
    }

    /** Thin stretches that lie close together. */
    private List<List<Stretch>> parts() {
        Cells<Stretch> thin = new Cells<>(width);
        List<Stretch> inOrder = all.stream().filter(this::isThin).toList();
        inOrder.forEach(
                stretch -> thin.add(stretch.middle().x(), stretch.middle().y(), stretch));
        Set<Stretch> done = new HashSet<>();
        List<List<Stretch>> parts = new ArrayList<>();
        for (Stretch first : inOrder) {
            if (done.add(first)) {
                parts.add(connected(first, thin, done));
            }
        }
        return parts;
    }

    private List<Stretch> connected(Stretch first, Cells<Stretch> thin, Set<Stretch> done) {
        List<Stretch> part = new ArrayList<>();
        Deque<Stretch> next = new ArrayDeque<>(List.of(first));
        while (!next.isEmpty()) {
            Stretch one = next.removeFirst();
            part.add(one);
            near(one, thin, other -> {
                if (one.distanceTo(other) <= width && done.add(other)) {
                    next.add(other);
                }
            });
        }
        return part;
    }

    private boolean isThin(Stretch one) {
        boolean[] found = {false};
        near(one, cells, other -> found[0] |= facesCloser(one, other));
        return found[0];
    }

    private void near(Stretch one, Cells<Stretch> from, Consumer<Stretch> taker) {
        Spot middle = one.middle();
        double reach = 2 * width;
        from.near(Box.around(middle).wider(reach), taker);
    }

    /** Whether another stretch runs back along this one, nearer than the width, with ink between them if lines are asked for. */
    private boolean facesCloser(Stretch one, Stretch other) {
        double dot =
                (one.bx() - one.ax()) * (other.bx() - other.ax()) + (one.by() - one.ay()) * (other.by() - other.ay());
        if (dot >= BACK * one.length() * other.length()) {
            return false;
        }
        Spot middle = one.middle();
        Spot across = other.nearest(middle);
        double away = middle.distanceTo(across);
        if (away >= width) {
            return false;
        }
        double ink = kind == Kind.LINE ? 1 : -1;
        // Straight across, not off the end: the way makes at most 26 degrees with the upright.
        double upright = ink * one.side(across.x(), across.y()) / one.length();
        return upright > -BACK * away && ink * other.side(middle.x(), middle.y()) > 0;
    }
}
