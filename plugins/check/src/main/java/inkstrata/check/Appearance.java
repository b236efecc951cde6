package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.plan.Overlap;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * Places where films in register would not show the artwork: ink that is missing, ink on bare sheet, over or beneath another, rims
 * that are too wide.
 */
final class Appearance {
    /** Of one kind, film and colour the largest places are named, so many. */
    private static final int MOST_PLACES = 5;

    /** Farther from its own area than so many registers, in the plan's terms, ink is no rim. */
    private static final double RIM_IN_REGISTERS = 3;

    private final Separation planned;
    private final List<Region> films;
    private final Laid laid;
    private final double registerMm;

    Appearance(Separation planned, List<Region> films, double registerMm) {
        this.planned = planned;
        this.films = films;
        this.laid = Laid.of(planned, films);
        this.registerMm = registerMm;
    }

    /** By film, then by what the artwork shows there, sheet last. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (int film = 0; film < films.size(); film++) {
            if (!films.get(film).equals(planned.printed().get(film))) {
                findings.addAll(findings(film));
            }
        }
        return findings;
    }

    private List<Finding> findings(int film) {
        List<Finding> findings = new ArrayList<>();
        Region own = planned.map().dissolve(planned.plan().pulls().get(film).prints());
        NearOutlines outlines = new NearOutlines(List.of(own), Math.max(farthestRim(), Grid.STEPS_PER_MM));
        for (int shown = 0; shown < films.size(); shown++) {
            for (Region piece : largest(laid.extra(film, OptionalInt.of(shown)))) {
                findings.add(extra(film, shown, piece, outlines));
            }
            for (Region piece : largest(laid.missing(film, OptionalInt.of(shown)))) {
                if (film == shown || isIn(own, piece)) {
                    findings.add(missing(film, shown, piece));
                }
            }
        }
        for (Region piece : largest(laid.extra(film, OptionalInt.empty()))) {
            findings.add(onSheet(film, piece));
        }
        return findings;
    }

    private static List<Region> largest(List<Region> pieces) {
        return pieces.stream()
                .sorted(Comparator.comparingDouble(piece -> -piece.areaMm2()))
                .limit(MOST_PLACES)
                .toList();
    }

    private Finding missing(int film, int shown, Region piece) {
        if (film == shown) {
            return finding(
                    Severity.ERROR,
                    "missing ink",
                    piece,
                    name(film) + " leaves out a place that shows it",
                    "ink wherever the drawing shows it",
                    "Add the place to the film.");
        }
        return finding(
                Severity.WARNING,
                "lost overprint",
                piece,
                name(film) + " is knocked out where it was to run on beneath " + name(shown),
                "as planned",
                "Let it run on: then no edge has to meet another there.");
    }

    private Finding extra(int film, int shown, Region piece, NearOutlines own) {
        double width = reachMm(piece, own);
        if (width < RIM_IN_REGISTERS * registerMm) {
            return finding(
                    Severity.WARNING,
                    "wide rim",
                    piece,
                    String.format(Locale.ROOT, "%s reaches %.2f mm into %s", name(film), width, name(shown)),
                    "the planned trap",
                    "Take the rim back to the width of the trap.");
        }
        boolean isOver = planned.isNearer(film, shown);
        if (isOver) {
            return finding(
                    Severity.ERROR,
                    "prints over",
                    piece,
                    name(film) + " covers a place that is to show " + name(shown),
                    "no ink over it",
                    "Knock the place out of the film.");
        }
        double difference = new Overlap(ink(film), ink(shown)).fromUpper();
        return finding(
                difference > Overlap.TOLERANCE ? Severity.ERROR : Severity.NOTE,
                "missing knockout",
                piece,
                String.format(
                        Locale.ROOT,
                        "%s runs on beneath %s and changes its colour by about %.1f",
                        name(film),
                        name(shown),
                        difference),
                String.format(Locale.ROOT, "%.1f (CIEDE2000)", Overlap.TOLERANCE),
                "Knock the place out of the film, unless the new colour is wanted.");
    }

    private Finding onSheet(int film, Region piece) {
        return finding(
                Severity.ERROR,
                "ink on sheet",
                piece,
                name(film) + " prints where the drawing leaves the sheet bare",
                "bare sheet",
                "Take the place out of the film.");
    }

    private static Finding finding(
            Severity severity, String rule, Region piece, String measured, String limit, String remedy) {
        return new Finding(
                severity,
                rule,
                piece.somewhere(),
                String.format(Locale.ROOT, "%s (%.2f mm²)", measured, piece.areaMm2()),
                limit,
                remedy);
    }

    private static boolean isIn(Region own, Region piece) {
        return own.covers(piece.somewhere());
    }

    /** How far the piece's farthest corner is from the pull's own area; the most a rim may have if it is farther. */
    private double reachMm(Region piece, NearOutlines own) {
        double farthest = 0;
        for (Ring ring : NearOutlines.rings(piece)) {
            for (int i = 0; i < ring.size(); i++) {
                Spot spot = new Spot(ring.x(i), ring.y(i));
                double away =
                        own.nearest(spot, farthestRim()).map(spot::distanceTo).orElse(farthestRim());
                farthest = Math.max(farthest, away);
            }
        }
        return farthest * Grid.STEP_MM;
    }

    /** In grid steps. */
    private double farthestRim() {
        return RIM_IN_REGISTERS * registerMm * Grid.STEPS_PER_MM;
    }

    private Ink ink(int pull) {
        return planned.plan().pulls().get(pull).ink();
    }

    private String name(int pull) {
        return ink(pull).name();
    }
}
