package inkstrata.reduction;

import inkstrata.job.Job;
import inkstrata.plan.Decision;
import inkstrata.plan.Overlap;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Claim;
import inkstrata.plugin.Option;
import inkstrata.plugin.Options;
import inkstrata.plugin.Planner;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One screen altered from pull to pull: each ink prints wherever it shows and wherever an ink shows that lies nearer to the eye.
 *
 * <p>So prints nest, and need no traps: beneath each lies all of the next (common practice, no source).
 */
public final class Reduction implements Planner {
    @Override
    public String id() {
        return "reduction";
    }

    @Override
    public String description() {
        return "one screen altered from pull to pull: each print lies within the one before it";
    }

    @Override
    public List<Option> options() {
        return List.of(
                Option.flag("on", false, "print this picture as a reduction"),
                Option.number(
                        "tolerance",
                        String.valueOf(Overlap.TOLERANCE),
                        new Option.Range(0, 100),
                        "by how much a step's colour may change over the steps beneath it (CIEDE2000) before a finding says so"));
    }

    @Override
    public int rank() {
        return 30;
    }

    @Override
    public int depth(Job job) {
        return 1;
    }

    @Override
    public Set<Claim> claims(Job job) {
        return isOn(job) ? Set.of(Claim.RUNNING_ON) : Set.of();
    }

    static boolean isOn(Job job) {
        return Options.of(new Reduction(), job).flag("on");
    }

    static double tolerance(Job job) {
        return Options.of(new Reduction(), job).number("tolerance").orElseThrow();
    }

    @Override
    public PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job) {
        if (!isOn(job) || soFar.pulls().isEmpty()) {
            return soFar;
        }
        List<Pull> pulls = soFar.pulls();
        List<Pull> nested = new ArrayList<>();
        for (int step = 0; step < pulls.size(); step++) {
            int lowest = step;
            StackSet prints = IntStream.range(0, pulls.size())
                    .filter(other -> other == lowest || table.sheet().isNearer(pulls, other, lowest))
                    .mapToObj(other -> shownBy(pulls.get(other), table))
                    .reduce(StackSet.NONE, StackSet::or);
            nested.add(pulls.get(step).withPrints(pulls.get(step).prints().or(prints)));
        }
        return soFar.withPulls(nested).withDecision(new Decision(id(), "", what(nested), why(nested, table)));
    }

    private static StackSet shownBy(Pull pull, PlanningTable table) {
        return StackSet.of(
                table.rows().stream().filter(row -> row.shows(pull.ink())).mapToInt(PlanningTable.Row::stack));
    }

    private static String what(List<Pull> pulls) {
        return "Each of " + pulls.stream().map(pull -> pull.ink().name()).collect(Collectors.joining(", "))
                + " prints beneath all steps that lie over it.";
    }

    /** How many films lie over each other, and on how much of the picture. */
    private static String why(List<Pull> pulls, PlanningTable table) {
        double picture =
                table.rows().stream().mapToDouble(PlanningTable.Row::areaMm2).sum();
        double[] byHeight = new double[pulls.size() + 1];
        for (PlanningTable.Row row : table.rows()) {
            int height = (int) pulls.stream()
                    .filter(pull -> pull.prints().contains(row.stack()))
                    .count();
            byHeight[height] += row.areaMm2();
        }
        String heights = IntStream.range(0, byHeight.length)
                .filter(height -> byHeight[height] > 0)
                .mapToObj(
                        height -> String.format(Locale.ROOT, "%d on %.1f %%", height, 100 * byHeight[height] / picture))
                .collect(Collectors.joining(", "));
        return "The job asks for a reduction. Films over each other: " + heights + " of the picture.";
    }
}
