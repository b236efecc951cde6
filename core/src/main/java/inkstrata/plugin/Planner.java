package inkstrata.plugin;

import inkstrata.job.Job;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import java.util.Set;

/** Decides which pulls print on which stacks of paint, and in what order; has no geometry in its hands. */
public non-sealed interface Planner extends Plugin {
    /** How many paints of a stack, from the top, this planner looks at; all of them by default. The map is cheaper for few. */
    default int depth(Job job) {
        return Integer.MAX_VALUE;
    }

    /**
     * Decisions that no other planner may take beside this one. Where several claim one, that to which the job speaks takes part and the
     * others do not.
     */
    default Set<Claim> claims(Job job) {
        return Set.of();
    }

    /**
     * Elements of the artwork, {@code #name}, or files, whose drawings this planner wants to know the place of: a row of the table names
     * those that have paint there; elements where nothing hides it.
     */
    default Set<String> drawings(Job job) {
        return Set.of();
    }

    /**
     * Adds this planner's decisions to the plan.
     *
     * @param table the artwork's stacks
     * @param soFar what earlier planners left; at first every ink has a pull that prints nowhere
     * @param job what the printmaker asks for
     * @return the plan with this planner's decisions in it
     */
    PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job);
}
