package inkstrata.planar;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Stacks that some sets do not tell apart, taken together.
 *
 * @param kindOfStack for each stack its kind, or {@link Borderlines#NONE} if it is in none of the sets
 * @param samples for each kind one of its stacks: a set contains all of them or none
 */
record StackKinds(int[] kindOfStack, List<Integer> samples) {
    static StackKinds of(int stacks, List<StackSet> sets) {
        BitSet[] memberships = new BitSet[stacks];
        for (int set = 0; set < sets.size(); set++) {
            for (int stack : sets.get(set).numbers().toArray()) {
                memberships[stack] = memberships[stack] == null ? new BitSet() : memberships[stack];
                memberships[stack].set(set);
            }
        }
        int[] kindOfStack = new int[stacks];
        Map<BitSet, Integer> numbers = new HashMap<>();
        List<Integer> samples = new ArrayList<>();
        for (int stack = 0; stack < stacks; stack++) {
            kindOfStack[stack] = Borderlines.NONE;
            if (memberships[stack] != null) {
                Integer known = numbers.putIfAbsent(memberships[stack], samples.size());
                kindOfStack[stack] = known == null ? samples.size() : known;
                if (known == null) {
                    samples.add(stack);
                }
            }
        }
        return new StackKinds(kindOfStack, List.copyOf(samples));
    }

    int count() {
        return samples.size();
    }

    /** Whether a set contains the stacks of a kind. */
    boolean isIn(StackSet set, int kind) {
        return kind != Borderlines.NONE && set.contains(samples.get(kind));
    }
}
