package inkstrata.knockout;

import inkstrata.job.Job;
import inkstrata.plan.Decision;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Planner;
import java.util.List;
import java.util.stream.IntStream;

/** Each stack prints its top colour alone. */
public final class Knockout implements Planner {
    @Override
    public String id() {
        return "knockout";
    }

    @Override
    public String description() {
        return "each place prints its top colour alone";
    }

    @Override
    public int rank() {
        return 10;
    }

    @Override
    public int depth(Job job) {
        return 1;
    }

    @Override
    public PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job) {
        List<Pull> pulls = soFar.pulls().stream()
                .map(pull -> pull.withPrints(pull.prints().or(topped(table, pull))))
                .toList();
        return soFar.withPulls(pulls)
                .withDecision(new Decision(
                        id(), "", "Each place prints its top colour alone.", "On bare sheet an ink keeps its colour."));
    }

    private static StackSet topped(PlanningTable table, Pull pull) {
        return StackSet.of(table.rows().stream()
                .filter(row -> row.shows(pull.ink()))
                .flatMapToInt(row -> IntStream.of(row.stack())));
    }
}
