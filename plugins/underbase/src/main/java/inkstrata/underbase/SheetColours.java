package inkstrata.underbase;

import inkstrata.job.Job;
import inkstrata.measure.Place;
import inkstrata.plan.Ink;
import inkstrata.plan.PlannedColour;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Separation;
import inkstrata.separation.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Finds inks that the sheet changes to another colour, and a ground that looks out as soon as it is off register. */
public final class SheetColours implements Inspector {
    /** Farther apart (CIEDE2000) two colours are two (common practice, no source). */
    private static final double ANOTHER_COLOUR = 5;

    /** Lengths of a job file that differ by less are the same one in other units. */
    private static final double EXACT_MM = 1e-9;

    @Override
    public String id() {
        return "sheet-colours";
    }

    @Override
    public String description() {
        return "inks that the sheet changes to another colour, and grounds that would look out";
    }

    @Override
    public Inspection inspect(Separation separation, Job job) {
        List<Finding> findings = new ArrayList<>(changed(separation));
        for (int pull = 0; pull < separation.printed().size(); pull++) {
            if (separation.plan().pulls().get(pull).ground() && job.registerMm() - Underbase.chokeMm(job) > EXACT_MM) {
                Region hidden = hidden(pull, separation);
                if (!hidden.isEmpty()) {
                    findings.add(looksOut(pull, hidden, separation, job));
                }
            }
        }
        return Inspection.of(findings);
    }

    /** For each ink that lies alone on the sheet the place where most of it does. */
    private static List<Finding> changed(Separation separation) {
        Map<Ink, PlannedColour> largest = new HashMap<>();
        for (PlannedColour colour : PlannedColour.of(separation.table(), separation.plan())) {
            if (colour.inks().size() == 1
                    && colour.difference() > ANOTHER_COLOUR
                    && colour.row().areaMm2() > 0) {
                largest.merge(
                        colour.inks().get(0),
                        colour,
                        (one, other) -> other.row().areaMm2() > one.row().areaMm2() ? other : one);
            }
        }
        return largest.values().stream()
                .sorted(Comparator.comparing(colour -> colour.inks().get(0).name()))
                .map(colour -> changed(colour, separation))
                .toList();
    }

    private static Finding changed(PlannedColour colour, Separation separation) {
        Ink ink = colour.inks().get(0);
        return new Finding(
                        Severity.WARNING,
                        "sheet colour",
                        place(colour, separation),
                        String.format(
                                Locale.ROOT,
                                "%s comes out as about %s on this sheet, %.1f from its colour (CIEDE2000)",
                                ink.name(),
                                colour.predicted(),
                                colour.difference()),
                        String.format(Locale.ROOT, "%.1f", ANOTHER_COLOUR),
                        "Print a ground beneath it (use: underbase: {enabled: true}), or take an ink that hides more.")
                .about(Subject.ink(ink.name()))
                .withQuantity(Quantity.of(colour.difference(), ANOTHER_COLOUR, Unit.CIEDE2000))
                .withArea(separation.map().dissolve(StackSet.of(colour.row().stack())));
    }

    private static Place place(PlannedColour colour, Separation separation) {
        return colour.row().pieces().largest().orElseGet(() -> {
            Region all = separation.map().dissolve(StackSet.of(colour.row().stack()));
            return all.somewhere();
        });
    }

    /** Where a ground prints without being seen itself. */
    private static Region hidden(int pull, Separation separation) {
        Ink ink = separation.plan().pulls().get(pull).ink();
        return separation
                .printed()
                .get(pull)
                .minus(separation
                        .map()
                        .dissolve(StackSet.of(separation.table().rows().stream()
                                .filter(row -> row.shows(ink))
                                .mapToInt(Row::stack))));
    }

    private static Finding looksOut(int pull, Region hidden, Separation separation, Job job) {
        String ink = separation.plan().pulls().get(pull).ink().name();
        double choke = Underbase.chokeMm(job);
        return new Finding(
                        Severity.WARNING,
                        "ground looks out",
                        hidden.somewhere(),
                        String.format(Locale.ROOT, "%s stays %.2f mm behind the edge of the inks over it", ink, choke),
                        String.format(Locale.ROOT, "%.2f mm, the register error", job.registerMm()),
                        String.format(
                                Locale.ROOT,
                                "Set underbase.choke to %.2f mm or leave it out, or keep pulls closer to each other.",
                                Math.ceil(job.registerMm() * 100 - EXACT_MM) / 100))
                .about(Subject.ink(ink).withPull(pull))
                .withQuantity(Quantity.of(choke, job.registerMm(), Unit.MILLIMETRES));
    }
}
