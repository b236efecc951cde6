package inkstrata.underbase;

import inkstrata.job.Job;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Shaper;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;

/**
 * Chokes the ground: it stays behind the edge of all that prints, and reaches as far beneath inks that do without one; where it is
 * itself to be seen it keeps its edge.
 */
public final class Choke implements Shaper {
    @Override
    public String id() {
        return "choke";
    }

    @Override
    public String description() {
        return "the ground stays behind the edge of the inks over it (underbase.choke)";
    }

    /** After inks have grown into each other. */
    @Override
    public int rank() {
        return 150;
    }

    @Override
    public Separation shape(Separation separation, Job job) {
        if (!Underbase.isOn(job)) {
            return separation;
        }
        List<Region> printed = new ArrayList<>(separation.printed());
        for (int pull = 0; pull < printed.size(); pull++) {
            if (separation.plan().pulls().get(pull).ground()) {
                printed.set(pull, choked(pull, separation, job));
            }
        }
        return separation.withPrinted(printed);
    }

    private static Region choked(int ground, Separation separation, Job job) {
        double millimetres = Underbase.chokeMm(job);
        List<Pull> pulls = separation.plan().pulls();
        List<Region> over = new ArrayList<>();
        StackSet inked = StackSet.NONE;
        for (int pull = 0; pull < pulls.size(); pull++) {
            if (!pulls.get(pull).ground()) {
                over.add(separation.printed().get(pull));
                inked = inked.or(pulls.get(pull).prints());
            }
        }
        StackSet own = StackSet.of(separation.table().rows().stream()
                .filter(row -> row.shows(pulls.get(ground).ink()))
                .mapToInt(Row::stack));
        Region itself = separation.map().dissolve(own);
        over.add(itself);
        Region without = separation.map().dissolve(inked.minus(pulls.get(ground).prints()));
        Region beneath = Region.union(over).shrunk(millimetres).minus(without.shrunk(millimetres));
        return Region.union(
                List.of(beneath, itself, rims(ground, separation), beside(ground, itself, separation, job)));
    }

    /** Where it shows it runs on beneath its neighbours to their very ends, as a trap does; else sheet would open at these ends. */
    private static Region beside(int ground, Region itself, Separation separation, Job job) {
        return itself.grown(job.registerMm(), Corners.ROUND)
                .intersection(separation.printed().get(ground));
    }

    /** Where it runs on beneath inks that do without it, beside places where it shows. */
    private static Region rims(int ground, Separation separation) {
        return separation
                .printed()
                .get(ground)
                .minus(separation
                        .map()
                        .dissolve(separation.plan().pulls().get(ground).prints()));
    }
}
