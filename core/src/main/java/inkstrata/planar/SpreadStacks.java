package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** What the stacks of a mapped {@link SpreadDrawing} stand for: the kind that was there and what has spread over it. */
final class SpreadStacks {
    private final StackKinds kinds;
    private final List<StackSet> areas;
    private final List<Spread> spreads;
    private final List<Integer> kindOf = new ArrayList<>();
    private final List<BitSet> spreadsOver = new ArrayList<>();
    private final Map<Meaning, Integer> numbers = new HashMap<>();
    /** For each area its spreads. */
    private final List<BitSet> ofArea = new ArrayList<>();

    /** What a stack stands for: a kind, and spreads that lie over it. */
    private record Meaning(int kind, BitSet over) {}

    /** @param stacks of a map whose stacks were put into their {@link #meaning} */
    SpreadStacks(List<PaintStack> stacks, StackKinds kinds, List<StackSet> areas, List<Spread> spreads) {
        this.kinds = kinds;
        this.areas = areas;
        this.spreads = spreads;
        areas.forEach(area -> ofArea.add(new BitSet()));
        for (int spread = 0; spread < spreads.size(); spread++) {
            ofArea.get(spreads.get(spread).area()).set(spread);
        }
        for (PaintStack stack : stacks) {
            int kind = Borderlines.NONE;
            BitSet over = new BitSet();
            for (Paint paint : stack.paints()) {
                int number = paint.colour().packed();
                if (number < kinds.count()) {
                    kind = number;
                } else {
                    over.set(number - kinds.count());
                }
            }
            add(kind, over);
        }
    }

    private void add(int kind, BitSet over) {
        numbers.putIfAbsent(new Meaning(kind, over), kindOf.size());
        kindOf.add(kind);
        spreadsOver.add(over);
    }

    /**
     * Takes corridors out of a stack that do not count: one counts only where it lies over what it may spread over, and what spreads does not
     * lie already. Kinds lie beside each other; where tiles are cut, rounding may bend one over another by less than a grid step, and the first counts.
     */
    static UnaryOperator<int[]> meaning(StackKinds kinds, List<StackSet> areas, List<Spread> spreads) {
        boolean[][] counts = new boolean[kinds.count()][spreads.size()];
        for (int kind = 0; kind < counts.length; kind++) {
            for (int spread = 0; spread < spreads.size(); spread++) {
                counts[kind][spread] = kinds.isIn(spreads.get(spread).over(), kind)
                        && !kinds.isIn(areas.get(spreads.get(spread).area()), kind);
            }
        }
        return colours -> {
            int kind = colours.length == 0 ? kinds.count() : colours[colours.length - 1];
            return kind >= kinds.count()
                    ? new int[0]
                    : Arrays.stream(colours)
                            .filter(colour ->
                                    colour == kind || (colour >= kinds.count() && counts[kind][colour - kinds.count()]))
                            .toArray();
        };
    }

    /** 0 for each stack over which an area has spread, else {@link Borderlines#NONE}. */
    int[] gained(int area) {
        int[] found = new int[kindOf.size()];
        for (int stack = 0; stack < found.length; stack++) {
            found[stack] = spreadsOver.get(stack).intersects(ofArea.get(area)) ? 0 : Borderlines.NONE;
        }
        return found;
    }

    /** The spreads of an area that lie over a stack. */
    IntStream spreadsOver(int stack, int area) {
        BitSet over = (BitSet) spreadsOver.get(stack).clone();
        over.and(ofArea.get(area));
        return over.stream();
    }

    /** 0 for each stack that is in a set or that an area has spread over, else {@link Borderlines#NONE}. */
    int[] grown(int area, StackSet set) {
        int[] kind = gained(area);
        for (int stack = 0; stack < kind.length; stack++) {
            boolean covered = kind[stack] != Borderlines.NONE || kinds.isIn(set, kindOf.get(stack));
            kind[stack] = covered ? 0 : Borderlines.NONE;
        }
        return kind;
    }

    /** Whether a spread comes from there: from what gives way, or on from where that ends beneath what it spreads into. */
    boolean isFrom(int spread, int stack) {
        if (stack == EdgeTable.OUTSIDE) {
            return false;
        }
        int kind = kindOf.get(stack);
        Spread from = spreads.get(spread);
        return kinds.isIn(from.from(), kind)
                || (kinds.isIn(from.into(), kind) && kinds.isIn(areas.get(from.area()), kind));
    }

    /** The number of a stack like that one, over which that area has not spread. */
    int without(int stack, int area) {
        BitSet over = (BitSet) spreadsOver.get(stack).clone();
        over.andNot(ofArea.get(area));
        Integer known = numbers.get(new Meaning(kindOf.get(stack), over));
        if (known != null) {
            return known;
        }
        add(kindOf.get(stack), over);
        return kindOf.size() - 1;
    }
}
