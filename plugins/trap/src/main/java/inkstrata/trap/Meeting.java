package inkstrata.trap;

import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * Two areas that would part if a print were off register, should they share edges.
 *
 * @param giving position of the pull that gives way
 * @param into what the other area shows; its pull does not give way
 * @param from the stacks that show the giving pull, without those the other pull runs on beneath
 * @param receiver the stacks of that one look, without those the giving pull runs on beneath
 */
record Meeting(int giving, Look into, StackSet from, StackSet receiver) {
    /** Every meeting of a separation, by giving pull and then by receiving look. */
    static List<Meeting> of(Separation separation) {
        PrintPlan plan = separation.plan();
        SortedMap<Look, StackSet> looks = Look.of(separation);
        List<Meeting> meetings = new ArrayList<>();
        for (int giving = 0; giving < plan.pulls().size(); giving++) {
            StackSet shown = shownBy(giving, looks);
            for (Map.Entry<Look, StackSet> other : looks.entrySet()) {
                int receiving = other.getKey().pull();
                if (receiving == giving || !GivingWay.gives(plan, giving, receiving)) {
                    continue;
                }
                StackSet from = shown.minus(prints(plan, receiving));
                StackSet receiver = other.getValue().minus(prints(plan, giving));
                if (!from.isEmpty() && !receiver.isEmpty()) {
                    meetings.add(new Meeting(giving, other.getKey(), from, receiver));
                }
            }
        }
        return meetings;
    }

    private static StackSet shownBy(int pull, SortedMap<Look, StackSet> looks) {
        return looks.entrySet().stream()
                .filter(look -> look.getKey().pull() == pull)
                .map(Map.Entry::getValue)
                .reduce(StackSet.NONE, StackSet::or);
    }

    private static StackSet prints(PrintPlan plan, int pull) {
        Pull asked = plan.pulls().get(pull);
        return asked.prints();
    }
}
