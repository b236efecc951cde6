package inkstrata.overprint;

import inkstrata.job.Job;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Option;
import inkstrata.plugin.Options;
import inkstrata.plugin.Planner;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The key prints over everything; what the artwork has right beneath it runs on there.
 *
 * <p>The key is the ink the job names, else the darkest one if it is dark. An ink runs on only where the key lies nearer
 * to the eye: when it is printed before the key, on the back of a sheet after it.
 */
public final class Overprint implements Planner {
    /** An ink lighter than this would visibly change over another (our own choice; a prediction replaces it one day). */
    private static final double DARK_ENOUGH = 35;

    @Override
    public String id() {
        return "overprint";
    }

    @Override
    public String description() {
        return "the key prints over everything, what lies beneath it runs on";
    }

    @Override
    public List<Option> options() {
        return List.of(
                Option.number(
                        "darkest",
                        String.format(Locale.ROOT, "%.0f", DARK_ENOUGH),
                        new Option.Range(0, 100),
                        "highest lightness L* at which the darkest ink is taken for the key; 100 takes it in any case, 0 never"));
    }

    @Override
    public int rank() {
        return 20;
    }

    /** The key and what is right beneath it. */
    @Override
    public int depth() {
        return 2;
    }

    @Override
    public PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job) {
        double darkEnough = Options.of(this, job).number("darkest").orElseThrow();
        PrintPlan plan = soFar;
        for (Key key : Key.of(table, darkEnough)) {
            plan = runOnBeneath(key, table, plan);
        }
        return plan;
    }

    private PrintPlan runOnBeneath(Key key, PlanningTable table, PrintPlan soFar) {
        List<Pull> pulls = new ArrayList<>();
        List<String> runningOn = new ArrayList<>();
        int keyPosition = soFar.pulls().stream().map(Pull::ink).toList().indexOf(key.ink());
        for (int position = 0; position < soFar.pulls().size(); position++) {
            Pull pull = soFar.pulls().get(position);
            StackSet beneath = table.sheet().side().isNearer(keyPosition, position)
                    ? rightBeneath(key.ink(), pull.ink(), table)
                    : StackSet.NONE;
            pulls.add(pull.withPrints(pull.prints().or(beneath)));
            if (!beneath.isEmpty()) {
                runningOn.add(pull.ink().name());
            }
        }
        return soFar.withPulls(pulls).withDecision(new Decision(id(), key.ink().name(), what(runningOn), key.why()));
    }

    private static String what(List<String> runningOn) {
        return switch (runningOn.size()) {
            case 0 -> "Nothing runs on beneath it.";
            case 1 -> "It prints over " + runningOn.get(0) + ", which runs on beneath it.";
            default ->
                "It prints over " + String.join(", ", runningOn.subList(0, runningOn.size() - 1)) + " and "
                        + runningOn.get(runningOn.size() - 1) + ", which run on beneath it.";
        };
    }

    /** The stacks whose top is the key and whose next paint is printed with that ink. */
    private static StackSet rightBeneath(Ink key, Ink ink, PlanningTable table) {
        return StackSet.of(table.rows().stream()
                .filter(row -> row.top().equals(Optional.of(key)) && isNext(row, ink))
                .flatMapToInt(row -> IntStream.of(row.stack())));
    }

    private static boolean isNext(Row row, Ink ink) {
        return row.inks().size() > 1 && row.inks().get(1).equals(Optional.of(ink));
    }
}
