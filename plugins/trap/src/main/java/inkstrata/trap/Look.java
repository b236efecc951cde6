package inkstrata.trap;

import inkstrata.colour.Rgb;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Side;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.Comparator;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * What the eye sees of a stack.
 *
 * @param pull position in the plan of the pull that lies nearest to the eye there
 * @param colour the artwork's colour there; a pull may show several over others that shine through
 */
record Look(int pull, Rgb colour) implements Comparable<Look> {
    private static final Comparator<Look> ORDER =
            Comparator.comparingInt(Look::pull).thenComparing(Look::colour);

    /** Every look of a separation with its stacks; bare sheet has none. */
    static SortedMap<Look, StackSet> of(Separation separation) {
        SortedMap<Look, StackSet> looks = new TreeMap<>();
        for (Row row : separation.table().rows()) {
            nearest(separation, row.stack())
                    .ifPresent(pull -> looks.merge(
                            new Look(pull, row.paints().paints().get(0).colour()),
                            StackSet.of(row.stack()),
                            StackSet::or));
        }
        return looks;
    }

    private static OptionalInt nearest(Separation separation, int stack) {
        Side side = separation.table().sheet().side();
        return IntStream.range(0, separation.plan().pulls().size())
                .filter(pull -> separation.plan().pulls().get(pull).prints().contains(stack))
                .reduce((one, other) -> side.isNearer(one, other) ? one : other);
    }

    @Override
    public int compareTo(Look other) {
        return ORDER.compare(this, other);
    }
}
