package inkstrata.underbase;

import inkstrata.job.Job;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
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
                printed.set(pull, choked(pull, separation, Underbase.chokeMm(job)));
            }
        }
        return separation.withPrinted(printed);
    }

    private static Region choked(int ground, Separation separation, double millimetres) {
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
        Region itself = separation.map().dissolve(own).union(rims(ground, separation));
        over.add(itself);
        Region without = separation.map().dissolve(inked.minus(pulls.get(ground).prints()));
        Region beneath = Region.union(over).shrunk(millimetres).minus(without.shrunk(millimetres));
        return beneath.union(itself);
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
