package inkstrata.reduction;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Spectrum;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
import inkstrata.plan.Pull;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds steps of a reduction whose colour does not bear being printed over the steps beneath it: colours that form no chain. */
public final class StepColours implements Inspector {
    @Override
    public String id() {
        return "step-colours";
    }

    @Override
    public String description() {
        return "steps of a reduction that look wrong over the steps beneath them";
    }

    /** A warning for each ink that changes, where most of it shows; with the colour that would be printed instead. */
    @Override
    public Inspection inspect(Separation separation, Job job) {
        if (!Reduction.isOn(job)) {
            return Inspection.NOTHING;
        }
        double tolerance = Reduction.tolerance(job);
        Prediction prediction = new Prediction(separation.table().sheet());
        List<Finding> findings = new ArrayList<>();
        for (Pull pull : separation.plan().pulls()) {
            largest(pull.ink(), separation).ifPresent(row -> {
                Spectrum seen = seen(row.stack(), prediction, separation);
                double change = Ciede2000.difference(prediction.lab(List.of(pull.ink())), seen.lab());
                if (change > tolerance) {
                    findings.add(
                            new Finding(
                                    Severity.WARNING,
                                    "step colour",
                                    separation
                                            .map()
                                            .dissolve(StackSet.of(row.stack()))
                                            .somewhere(),
                                    String.format(
                                            Locale.ROOT,
                                            "%s comes out as about %s over the steps beneath it, %.1f from its colour (CIEDE2000)",
                                            pull.ink().name(),
                                            seen.rgb(),
                                            change),
                                    String.format(Locale.ROOT, "%.1f", tolerance),
                                    "Take an ink that hides more, print it earlier, or print the picture without a reduction."));
                }
            });
        }
        return Inspection.of(findings);
    }

    private static Optional<Row> largest(Ink ink, Separation separation) {
        return separation.table().rows().stream()
                .filter(row -> row.top().filter(ink::equals).isPresent())
                .filter(row -> row.areaMm2() > 0)
                .max(Comparator.comparingDouble(Row::areaMm2));
    }

    /** What all inks that print at a stack look like over each other. */
    private static Spectrum seen(int stack, Prediction prediction, Separation separation) {
        List<Pull> pulls = separation.plan().pulls();
        return prediction.seen(separation.table().sheet().farthestFirst(pulls).stream()
                .map(pulls::get)
                .filter(pull -> pull.prints().contains(stack))
                .map(Pull::ink)
                .toList());
    }
}
