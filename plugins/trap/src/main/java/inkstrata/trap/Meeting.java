package inkstrata.trap;

import inkstrata.plan.PrintPlan;
import inkstrata.planar.Neighbours;
import inkstrata.planar.Spread;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Two areas that share edges and would part if a print were off register.
 *
 * @param giving position of the pull that gives way
 * @param into what the other area shows; its pull does not give way
 * @param from the stacks that show the giving pull, without those the other pull runs on beneath
 * @param receiver the stacks of that one look, without those the giving pull runs on beneath
 */
record Meeting(int giving, Look into, StackSet from, StackSet receiver) {
    /** Every meeting of a separation, by giving pull and then by receiving look. */
    static List<Meeting> of(Separation separation) {
        SortedMap<Look, StackSet> looks = Look.of(separation);
        List<Meeting> meetings = new ArrayList<>();
        neighbours(separation, looks).forEach((giving, receiving) -> {
            StackSet shown = shownBy(giving, looks);
            for (Look into : receiving) {
                StackSet from = shown.minus(prints(separation.plan(), into.pull()));
                StackSet receiver = looks.get(into).minus(prints(separation.plan(), giving));
                if (!from.isEmpty() && !receiver.isEmpty()) {
                    meetings.add(new Meeting(giving, into, from, receiver));
                }
            }
        });
        return meetings;
    }

    Spread spread() {
        return new Spread(giving, from, receiver);
    }

    /** For each pull the looks it gives way to somewhere. */
    private static SortedMap<Integer, SortedSet<Look>> neighbours(
            Separation separation, SortedMap<Look, StackSet> looks) {
        Map<Integer, Look> lookOf = new HashMap<>();
        looks.forEach((look, stacks) -> stacks.numbers().forEach(stack -> lookOf.put(stack, look)));
        SortedMap<Integer, SortedSet<Look>> receiving = new TreeMap<>();
        for (Neighbours pair : separation.map().neighbours()) {
            Look one = lookOf.get(pair.one());
            Look other = lookOf.get(pair.other());
            if (one != null && other != null && one.pull() != other.pull()) {
                boolean gives = GivingWay.gives(
                        separation.plan(), separation.table().sheet().side(), one.pull(), other.pull());
                receiving
                        .computeIfAbsent(gives ? one.pull() : other.pull(), pull -> new TreeSet<>())
                        .add(gives ? other : one);
            }
        }
        return receiving;
    }

    private static StackSet shownBy(int pull, SortedMap<Look, StackSet> looks) {
        return looks.entrySet().stream()
                .filter(look -> look.getKey().pull() == pull)
                .map(Map.Entry::getValue)
                .reduce(StackSet.NONE, StackSet::or);
    }

    private static StackSet prints(PrintPlan plan, int pull) {
        return plan.pulls().get(pull).prints();
    }
}
