package inkstrata.trap;

import inkstrata.plan.PrintPlan;
import inkstrata.plan.Side;
import inkstrata.planar.Neighbours;
import inkstrata.planar.Spread;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Two areas that share edges and would part if a print were off register.
 *
 * @param giving position of the pull that gives way
 * @param into what the other area shows; its pull does not give way
 * @param from the stacks that show the giving pull or hold it beneath others, without those the other pull runs on beneath
 * @param receiver the stacks of that one look, seen or beneath others; without those the giving pull runs on beneath, unless its rim is
 *     nearer to the eye: beneath the other it grows on from where it ends
 * @param cover the stacks that some pull nearer to the eye covers: beneath it the rim may go on where a receiver is narrower
 *     than the trap
 * @param widthMm how far the giving pull grows; 0 where a rim would show a third colour and nobody asked for it
 * @param rim how the rim looks; where it takes from what is seen, at least half of that stays
 */
record Meeting(int giving, Look into, StackSet from, StackSet receiver, StackSet cover, double widthMm, RimColour rim) {
    /**
     * Every meeting of a separation: where several could spread across an edge the one whose giving pull is nearest to the eye comes first,
     * since that is what parts there.
     */
    static List<Meeting> of(Separation separation, TrapWidths widths, double alike) {
        Map<Integer, List<Look>> byStack = Look.byStack(separation);
        NavigableMap<Look, StackSet> looks = new TreeMap<>();
        byStack.forEach((stack, there) -> there.forEach(look -> looks.merge(look, StackSet.of(stack), StackSet::or)));
        List<Meeting> meetings = new ArrayList<>();
        neighbours(separation, byStack, alike).forEach((giving, receiving) -> {
            StackSet shown = shownBy(giving, looks);
            StackSet cover = looks.entrySet().stream()
                    .filter(look -> separation.isNearer(look.getKey().pull(), giving))
                    .map(Map.Entry::getValue)
                    .reduce(StackSet.NONE, StackSet::or)
                    .minus(prints(separation.plan(), giving));
            Map<Look, StackSet> received = received(receiving, byStack);
            for (Look into : receiving) {
                StackSet from = shown.minus(prints(separation.plan(), into.pull()));
                RimColour rim = RimColour.of(separation, giving, into.pull());
                StackSet all = received.getOrDefault(into, StackSet.NONE);
                StackSet receiver = rim.isNearer() ? all.minus(prints(separation.plan(), giving)) : all;
                boolean isButted = rim.isThirdColour() && !widths.isAsked(giving, into.pull());
                double share = GivingWay.share(separation.plan(), giving, into.pull(), alike);
                double width = isButted ? 0 : widths.of(giving, into.pull()) * share;
                if (!from.isEmpty() && !receiver.isEmpty() && (width > 0 || isButted)) {
                    meetings.add(new Meeting(giving, into, from, receiver, cover, width, rim));
                }
            }
        });
        if (separation.table().sheet().side() == Side.FRONT) {
            Collections.reverse(meetings);
        }
        List<Integer> farthestFirst =
                separation.table().sheet().farthestFirst(separation.plan().pulls());
        meetings.sort(Comparator.comparingInt(meeting -> -farthestFirst.indexOf(meeting.giving())));
        return meetings;
    }

    /** Whether the two only touch, since a rim would show a third colour. */
    boolean isButted() {
        return widthMm == 0;
    }

    Spread spread() {
        return new Spread(giving, from, receiver, cover, widthMm, rim.takes());
    }

    /** For each pull the looks it gives way to somewhere. */
    private static SortedMap<Integer, SortedSet<Look>> neighbours(
            Separation separation, Map<Integer, List<Look>> byStack, double alike) {
        SortedMap<Integer, SortedSet<Look>> receiving = new TreeMap<>();
        for (Neighbours pair : separation.table().neighbours()) {
            Optional<Look> one = parting(byStack.get(pair.one()), pair.other(), separation.plan());
            Optional<Look> other = parting(byStack.get(pair.other()), pair.one(), separation.plan());
            if (one.isPresent() && other.isPresent()) {
                Look a = one.get();
                Look b = other.get();
                boolean gives = GivingWay.gives(separation.table().sheet(), separation.plan(), a.pull(), b.pull());
                boolean both = GivingWay.share(separation.plan(), a.pull(), b.pull(), alike) < 1;
                if (gives || both) {
                    receiving.computeIfAbsent(a.pull(), pull -> new TreeSet<>()).add(b);
                }
                if (!gives || both) {
                    receiving.computeIfAbsent(b.pull(), pull -> new TreeSet<>()).add(a);
                }
            }
            addEndings(pair.one(), pair.other(), separation, byStack, receiving);
            addEndings(pair.other(), pair.one(), separation, byStack, receiving);
        }
        return receiving;
    }

    /** What runs on beneath something that begins at the stack beside may end there sooner than the trap is wide. */
    private static void addEndings(
            int stack,
            int beside,
            Separation separation,
            Map<Integer, List<Look>> byStack,
            Map<Integer, SortedSet<Look>> receiving) {
        for (Look giving : byStack.get(stack)) {
            for (Look over : byStack.get(beside)) {
                boolean runsOn = prints(separation.plan(), giving.pull()).contains(beside);
                boolean begins = !prints(separation.plan(), over.pull()).contains(stack);
                if (runsOn && begins && separation.isNearer(over.pull(), giving.pull())) {
                    receiving
                            .computeIfAbsent(giving.pull(), pull -> new TreeSet<>())
                            .add(over);
                }
            }
        }
    }

    /** What is nearest to the eye of what does not run on at the stack beside. */
    private static Optional<Look> parting(List<Look> looks, int beside, PrintPlan plan) {
        return looks.stream()
                .filter(look -> !prints(plan, look.pull()).contains(beside))
                .findFirst();
    }

    /** For each look the stacks in which none of the others received there lies beneath it: no stack is received twice. */
    private static Map<Look, StackSet> received(Set<Look> receiving, Map<Integer, List<Look>> byStack) {
        Map<Look, BitSet> received = new HashMap<>();
        byStack.forEach((stack, looks) -> looks.stream()
                .filter(receiving::contains)
                .reduce((nearer, farther) -> farther)
                .ifPresent(look ->
                        received.computeIfAbsent(look, none -> new BitSet()).set(stack)));
        Map<Look, StackSet> sets = new HashMap<>();
        received.forEach((look, stacks) -> sets.put(look, StackSet.of(stacks.stream())));
        return sets;
    }

    private static StackSet shownBy(int pull, Map<Look, StackSet> looks) {
        return looks.entrySet().stream()
                .filter(look -> look.getKey().pull() == pull)
                .map(Map.Entry::getValue)
                .reduce(StackSet.NONE, StackSet::or);
    }

    private static StackSet prints(PrintPlan plan, int pull) {
        return plan.pulls().get(pull).prints();
    }
}
