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
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Separation;
import inkstrata.separation.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

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

    /** A warning for each ink that changes, where most of it shows that does; with the colour that would be printed instead. */
    @Override
    public Inspection inspect(Separation separation, Job job) {
        if (!Reduction.isOn(job)) {
            return Inspection.NOTHING;
        }
        double tolerance = Reduction.tolerance(job);
        Prediction prediction = new Prediction(separation.table().sheet());
        List<Finding> findings = new ArrayList<>();
        for (int pull = 0; pull < separation.plan().pulls().size(); pull++) {
            Ink ink = separation.plan().pulls().get(pull).ink();
            List<Step> changed = separation.table().rows().stream()
                    .filter(row ->
                            row.areaMm2() > 0 && row.top().filter(ink::equals).isPresent())
                    .map(row -> step(row, ink, prediction, separation))
                    .filter(step -> step.change() > tolerance)
                    .toList();
            if (!changed.isEmpty()) {
                findings.add(finding(pull, changed, tolerance, separation));
            }
        }
        return Inspection.of(findings);
    }

    /**
     * A place where an ink shows.
     *
     * @param seen what it comes out as
     * @param change how far that is from the ink alone (CIEDE2000)
     */
    private record Step(Row row, Spectrum seen, double change) {}

    private static Step step(Row row, Ink ink, Prediction prediction, Separation separation) {
        Spectrum seen = seen(row.stack(), prediction, separation);
        return new Step(row, seen, Ciede2000.difference(prediction.lab(List.of(ink)), seen.lab()));
    }

    private static Finding finding(int pull, List<Step> changed, double tolerance, Separation separation) {
        String ink = separation.plan().pulls().get(pull).ink().name();
        Step largest = changed.stream()
                .max(Comparator.comparingDouble(step -> step.row().areaMm2()))
                .orElseThrow();
        return new Finding(
                        Severity.WARNING,
                        "step colour",
                        separation
                                .map()
                                .dissolve(StackSet.of(largest.row().stack()))
                                .somewhere(),
                        String.format(
                                Locale.ROOT,
                                "%s comes out as about %s over the steps beneath it, %.1f from its colour (CIEDE2000)",
                                ink,
                                largest.seen().rgb(),
                                largest.change()),
                        String.format(Locale.ROOT, "%.1f", tolerance),
                        "Take an ink that hides more, print it earlier, or print the picture without a reduction.")
                .about(Subject.ink(ink).withPull(pull))
                .withQuantity(Quantity.of(largest.change(), tolerance, Unit.CIEDE2000))
                .withArea(separation
                        .map()
                        .dissolve(StackSet.of(
                                changed.stream().mapToInt(step -> step.row().stack()))));
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
