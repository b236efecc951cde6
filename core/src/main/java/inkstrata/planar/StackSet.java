package inkstrata.planar;

import java.util.BitSet;
import java.util.stream.IntStream;

/** A set of stacks by their numbers in a {@link PlanarMap}; never changes, equal by value. */
public final class StackSet {
    public static final StackSet NONE = new StackSet(new BitSet());

    private final BitSet numbers;

    private StackSet(BitSet numbers) {
        this.numbers = numbers;
    }

    public static StackSet of(int... numbers) {
        return of(IntStream.of(numbers));
    }

    public static StackSet of(IntStream numbers) {
        BitSet bits = new BitSet();
        numbers.forEach(bits::set);
        return new StackSet(bits);
    }

    public boolean contains(int number) {
        return numbers.get(number);
    }

    public boolean isEmpty() {
        return numbers.isEmpty();
    }

    public int size() {
        return numbers.cardinality();
    }

    /** In rising order. */
    public IntStream numbers() {
        return numbers.stream();
    }

    public StackSet and(StackSet other) {
        BitSet both = (BitSet) numbers.clone();
        both.and(other.numbers);
        return new StackSet(both);
    }

    public StackSet or(StackSet other) {
        BitSet either = (BitSet) numbers.clone();
        either.or(other.numbers);
        return new StackSet(either);
    }

    public StackSet minus(StackSet other) {
        BitSet rest = (BitSet) numbers.clone();
        rest.andNot(other.numbers);
        return new StackSet(rest);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StackSet that && numbers.equals(that.numbers);
    }

    @Override
    public int hashCode() {
        return numbers.hashCode();
    }

    @Override
    public String toString() {
        return numbers.toString();
    }
}
