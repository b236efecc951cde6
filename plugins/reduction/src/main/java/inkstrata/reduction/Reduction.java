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
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One screen altered from pull to pull: each ink prints wherever it shows and wherever an ink shows that lies nearer to the eye.
 *
 * <p>So prints nest, and need no traps: beneath each lies all of the next (common practice, no source). What the job keeps is masked off
 * all pulls but its own; beside it prints nest all the same, so that one screen can be altered for them ({@link Kept}). A ground that
 * is to be seen is the first step like any other, for one that is choked could not be altered into the next.
 */
public final class Reduction implements Planner {
    private static final String NOTHING = "nothing";

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
                Option.flag("enabled", false, "print this picture as a reduction")
                        .formerly("on"),
                Option.text(
                        "keep",
                        NOTHING,
                        "layers or elements (#name) and SVG files, parted by commas: only their own colour prints there, masked off other pulls"),
                Option.number(
                        "film",
                        "8",
                        new Option.Range(0.1, 500),
                        "thickness of one dry film in micrometres, where no mesh is known"),
                Option.number(
                        "highest",
                        "60",
                        new Option.Range(1, 10_000),
                        "micrometres of dry ink above which a finding warns"),
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

    /** Drawings that later pulls spare. */
    @Override
    public Set<String> drawings(Job job) {
        return isOn(job) ? kept(job) : Set.of();
    }

    private static Set<String> kept(Job job) {
        String text = Options.of(new Reduction(), job).text("keep");
        return text.equals(NOTHING)
                ? Set.of()
                : Arrays.stream(text.split(",", -1))
                        .map(String::strip)
                        .filter(name -> !name.isEmpty())
                        .collect(Collectors.toCollection(TreeSet::new));
    }

    static double filmMicrometres(Job job) {
        return Options.of(new Reduction(), job).number("film").orElseThrow();
    }

    static double highestMicrometres(Job job) {
        return Options.of(new Reduction(), job).number("highest").orElseThrow();
    }

    static boolean isOn(Job job) {
        return Options.of(new Reduction(), job).flag("enabled");
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
        Set<String> keep = kept(job);
        StackSet kept = StackSet.of(table.rows().stream()
                .filter(row -> row.drawings().stream().anyMatch(keep::contains))
                .mapToInt(PlanningTable.Row::stack));
        List<Pull> nested = new ArrayList<>();
        for (int step = 0; step < pulls.size(); step++) {
            int lowest = step;
            StackSet prints = IntStream.range(0, pulls.size())
                    .filter(other -> other == lowest || table.sheet().isNearer(pulls, other, lowest))
                    .mapToObj(other -> shownBy(pulls.get(other), table))
                    .reduce(StackSet.NONE, StackSet::or);
            Pull pull = pulls.get(step);
            StackSet own = shownBy(pull, table);
            if (pull.ground() && own.isEmpty()) {
                nested.add(pull);
                continue;
            }
            StackSet needed = pull.ground() ? pull.prints() : own.and(kept);
            nested.add(new Pull(pull.ink(), pull.prints().or(prints).minus(kept).or(needed)));
        }
        PrintPlan plan =
                soFar.withPulls(nested).withDecision(new Decision(id(), "", what(nested), why(nested, table, job)));
        for (Decision decision : Kept.decisions(id(), keep, nested, table)) {
            plan = plan.withDecision(decision);
        }
        return plan;
    }

    private static StackSet shownBy(Pull pull, PlanningTable table) {
        return StackSet.of(
                table.rows().stream().filter(row -> row.shows(pull.ink())).mapToInt(PlanningTable.Row::stack));
    }

    private static String what(List<Pull> pulls) {
        return "Each of " + pulls.stream().map(pull -> pull.ink().name()).collect(Collectors.joining(", "))
                + " prints beneath all steps that lie over it.";
    }

    /** How many films lie over each other, how thick, and on how much of the picture. */
    private static String why(List<Pull> pulls, PlanningTable table, Job job) {
        double picture =
                table.rows().stream().mapToDouble(PlanningTable.Row::areaMm2).sum();
        double[] byHeight = new double[pulls.size() + 1];
        double[] ink = new double[byHeight.length];
        for (PlanningTable.Row row : table.rows()) {
            int height = (int) pulls.stream()
                    .filter(pull -> pull.prints().contains(row.stack()))
                    .count();
            byHeight[height] += row.areaMm2();
            ink[height] += row.areaMm2() * InkHeight.micrometres(row.stack(), pulls, job);
        }
        String heights = IntStream.range(0, byHeight.length)
                .filter(height -> byHeight[height] > 0)
                .mapToObj(height -> String.format(
                        Locale.ROOT,
                        "%d (%.0f µm) on %.1f %%",
                        height,
                        ink[height] / byHeight[height],
                        100 * byHeight[height] / picture))
                .collect(Collectors.joining(", "));
        return "The job asks for a reduction. Films over each other, and how high dry ink stands: " + heights
                + " of the picture.";
    }
}
