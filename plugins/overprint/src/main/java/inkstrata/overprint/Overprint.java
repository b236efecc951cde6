package inkstrata.overprint;

import inkstrata.job.Job;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.Overlap;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Claim;
import inkstrata.plugin.Option;
import inkstrata.plugin.Options;
import inkstrata.plugin.Planner;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Inks print over others that run on beneath them, wherever the colour hardly changes: what runs on needs no register.
 *
 * <p>Only what the artwork has there runs on, and only beneath what lies nearer to the eye: what is printed before it, on the back of a
 * sheet after it. Beneath a key that the job names whatever is right beneath it runs on.
 */
public final class Overprint implements Planner {
    /** More ink in one place dries slowly and cracks (our own choice). */
    private static final int MOST_FILMS = 3;

    @Override
    public String id() {
        return "overprint";
    }

    @Override
    public String description() {
        return "inks print over others that run on beneath them, where the colour hardly changes";
    }

    @Override
    public List<Option> options() {
        return List.of(
                Option.number(
                        "tolerance",
                        String.valueOf(Overlap.TOLERANCE),
                        new Option.Range(0, 100),
                        "by how much a colour may change over what runs on beneath it (CIEDE2000)"),
                Option.flag(
                        "build",
                        false,
                        "colours that overlaps of other inks make, near enough, get no screen of their own: as few screens as will do"),
                Option.number(
                        "maxFilms",
                        String.valueOf(MOST_FILMS),
                        new Option.Range(1, 8),
                        "how many films of ink may lie over each other; 1: nothing runs on"));
    }

    @Override
    public int rank() {
        return 20;
    }

    /** All of it if anything may run on: what does lies anywhere beneath, however much lies over it that does not. */
    @Override
    public int depth(Job job) {
        return mostFilms(job) > 1 ? Integer.MAX_VALUE : 1;
    }

    /** Unless nothing runs on. */
    @Override
    public Set<Claim> claims(Job job) {
        return mostFilms(job) > 1 ? Set.of(Claim.RUNNING_ON) : Set.of();
    }

    @Override
    public PrintPlan plan(PlanningTable table, PrintPlan before, Job job) {
        double tolerance = Options.of(this, job).number("tolerance").orElseThrow();
        PrintPlan soFar = Options.of(this, job).flag("build")
                ? new Building(table, before, job, tolerance, mostFilms(job)).plan()
                : before;
        List<Ink> order = soFar.pulls().stream().map(Pull::ink).toList();
        Rules rules = rules(table.sheet(), soFar.pulls(), job);
        List<RunningOn> found = table.rows().stream()
                .map(row -> printed(row, order))
                .map(row -> RunningOn.best(row, already(row, soFar), rules))
                .flatMap(Optional::stream)
                .toList();
        PrintPlan plan = soFar.withPulls(
                soFar.pulls().stream().map(pull -> runOn(pull, found)).toList());
        for (Ink top : order) {
            Optional<Decision> decision = decision(top, order, found, tolerance);
            plan = decision.isPresent() ? plan.withDecision(decision.get()) : plan;
        }
        Optional<Decision> drawings = DrawingsOver.decision(table, plan);
        return drawings.isPresent() ? plan.withDecision(drawings.get()) : plan;
    }

    Rules rules(Sheet sheet, List<Pull> pulls, Job job) {
        List<Ink> farthestFirst = sheet.farthestFirst(pulls).stream()
                .map(pull -> pulls.get(pull).ink())
                .toList();
        return new Rules(
                sheet,
                Comparator.comparingInt(farthestFirst::indexOf),
                new Prediction(sheet),
                Options.of(this, job).number("tolerance").orElseThrow(),
                mostFilms(job));
    }

    /** A row without the inks that have no pull. */
    private static Row printed(Row row, List<Ink> order) {
        List<Optional<Ink>> inks =
                row.inks().stream().map(ink -> ink.filter(order::contains)).toList();
        return new Row(row.stack(), row.paints(), inks, row.areaMm2(), row.drawings(), row.pieces());
    }

    /** What is to print at a stack already, beside the ink that shows. */
    static List<Ink> already(Row row, PrintPlan soFar) {
        return soFar.pulls().stream()
                .filter(pull -> pull.prints().contains(row.stack()))
                .map(Pull::ink)
                .filter(ink -> !row.top().equals(Optional.of(ink)))
                .toList();
    }

    private int mostFilms(Job job) {
        return (int) Math.floor(Options.of(this, job).number("maxFilms").orElseThrow());
    }

    private static Pull runOn(Pull pull, List<RunningOn> found) {
        StackSet more = StackSet.of(found.stream()
                .filter(choice -> choice.inks().contains(pull.ink()))
                .mapToInt(RunningOn::stack));
        return pull.withPrints(pull.prints().or(more));
    }

    /** What runs on beneath an ink; none if nothing does, unless the job names it key. */
    private Optional<Decision> decision(Ink top, List<Ink> order, List<RunningOn> found, double tolerance) {
        List<RunningOn> beneath =
                found.stream().filter(choice -> choice.top().equals(top)).toList();
        List<String> names = order.stream()
                .filter(ink -> beneath.stream().anyMatch(choice -> choice.inks().contains(ink)))
                .map(Ink::name)
                .toList();
        if (names.isEmpty() && !top.key()) {
            return Optional.empty();
        }
        double change = beneath.stream().mapToDouble(RunningOn::change).max().orElse(0);
        String why;
        if (names.isEmpty()) {
            why = "The job names it key, but the drawing has nothing beneath it that is farther from the eye.";
        } else if (change <= tolerance) {
            why = String.format(
                    Locale.ROOT,
                    "Its colour comes out %.1f from the artwork's at most (CIEDE2000), %.1f is allowed.",
                    change,
                    tolerance);
        } else if (top.key()) {
            why = String.format(
                    Locale.ROOT,
                    "The job names it key; its colour comes out up to %.1f from the artwork's (CIEDE2000), more than the %.1f"
                            + " allowed elsewhere.",
                    change,
                    tolerance);
        } else {
            why = String.format(
                    Locale.ROOT,
                    "Its colour comes out up to %.1f from the artwork's (CIEDE2000), no farther than alone on this sheet.",
                    change);
        }
        String limits = beneath.stream().allMatch(RunningOn::isWhole)
                ? ""
                : " So many inks lie beneath it that not every set of them was tried.";
        return Optional.of(new Decision(id(), top.name(), what(names), why + limits));
    }

    private static String what(List<String> runningOn) {
        return switch (runningOn.size()) {
            case 0 -> "Nothing runs on beneath it.";
            case 1 -> "It prints over " + runningOn.get(0) + ", which runs on beneath it.";
            default -> {
                List<String> others = new ArrayList<>(runningOn.subList(0, runningOn.size() - 1));
                yield "It prints over " + String.join(", ", others) + " and " + runningOn.get(runningOn.size() - 1)
                        + ", which run on beneath it.";
            }
        };
    }
}
