package inkstrata.underbase;

import inkstrata.job.Job;
import inkstrata.measure.Place;
import inkstrata.plan.Ink;
import inkstrata.plan.PlannedColour;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
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
            boolean isGround = separation.isOnlyGround(pull);
            if (isGround
                    && Underbase.chokeMm(job) < job.registerMm()
                    && !separation.printed().get(pull).isEmpty()) {
                findings.add(looksOut(pull, separation, job));
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
                .map(colour -> new Finding(
                        Severity.WARNING,
                        "sheet colour",
                        place(colour, separation),
                        String.format(
                                Locale.ROOT,
                                "%s comes out as about %s on this sheet, %.1f from its colour (CIEDE2000)",
                                colour.inks().get(0).name(),
                                colour.predicted(),
                                colour.difference()),
                        String.format(Locale.ROOT, "%.1f", ANOTHER_COLOUR),
                        "Print a ground beneath it (use: underbase: {enabled: true}), or take an ink that hides more."))
                .toList();
    }

    private static Place place(PlannedColour colour, Separation separation) {
        return colour.row().pieces().largest().orElseGet(() -> {
            Region all = separation.map().dissolve(StackSet.of(colour.row().stack()));
            return all.somewhere();
        });
    }

    private static Finding looksOut(int pull, Separation separation, Job job) {
        return new Finding(
                Severity.WARNING,
                "ground looks out",
                separation.printed().get(pull).somewhere(),
                String.format(
                        Locale.ROOT,
                        "%s stays %.2f mm behind the edge of the inks over it",
                        separation.plan().pulls().get(pull).ink().name(),
                        Underbase.chokeMm(job)),
                String.format(Locale.ROOT, "%.2f mm, the register error", job.registerMm()),
                "Raise underbase.choke, or print with less register error.");
    }
}
