package inkstrata.planar;

import inkstrata.colour.Lab;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Which stacks may lie beside a strip that nobody drew, given the strip's own.
 *
 * <p>What shows in such a strip lies beneath both sides: its stack is bare, or its top paint is in theirs, below their tops, and
 * so are all its others. A line that somebody drew on top is in neither. Stacks may be cut off at a depth; what would lie farther
 * down counts as there once the top paint was found.
 */
final class SeamStacks {
    /** Whether a stack lies over another. */
    enum Over {
        NO,
        YES,
        /** It is cut off before the other's top paint is found. */
        UNKNOWN
    }

    private final List<PaintStack> stacks;
    private final int depth;
    private final Map<Long, Over> known = new ConcurrentHashMap<>();
    private final double[] lightness;

    /** @param depth at which stacks are cut off */
    SeamStacks(List<PaintStack> stacks, int depth) {
        this.stacks = stacks;
        this.depth = depth;
        this.lightness = new double[stacks.size()];
        for (int i = 0; i < lightness.length; i++) {
            lightness[i] =
                    picture(i).map(paint -> Lab.of(paint.colour()).lightness()).orElse(100.0);
        }
    }

    /**
     * Whether one stack is another with more on top, seen as another colour; whatever lies beyond the picture's edge is.
     *
     * @param over a stack's number or {@link EdgeTable#OUTSIDE}
     * @param strip a stack's number
     */
    Over over(int over, int strip) {
        if (over == EdgeTable.OUTSIDE) {
            return Over.YES;
        }
        return known.computeIfAbsent((long) over << 32 | strip, pair -> find(over, strip));
    }

    /** What shows there; empty for bare sheet, and beyond the picture's edge. */
    Optional<Paint> shows(int stack) {
        return stack == EdgeTable.OUTSIDE || stacks.get(stack).isBare()
                ? Optional.empty()
                : Optional.of(stacks.get(stack).paints().get(0));
    }

    /**
     * What shows of the picture without drawings of their own, which repeat a part of it or lie over it; of those alone what shows of them, and
     * empty for bare sheet.
     */
    Optional<Paint> picture(int stack) {
        if (stack == EdgeTable.OUTSIDE) {
            return Optional.empty();
        }
        return stacks.get(stack).paints().stream()
                .filter(paint -> paint.drawing().isEmpty())
                .findFirst()
                .or(() -> shows(stack));
    }

    /** The one of two that shows the lighter colour (L*), which is the one that would grow under the other; of equals the first in order. */
    int lighter(int one, int other) {
        if (one == EdgeTable.OUTSIDE || other == EdgeTable.OUTSIDE) {
            return Math.max(one, other);
        }
        int order = Double.compare(lightness[other], lightness[one]);
        return order < 0 || (order == 0 && one < other) ? one : other;
    }

    PaintStack stack(int number) {
        return stacks.get(number);
    }

    private Over find(int over, int strip) {
        List<Paint> above = stacks.get(over).paints();
        List<Paint> below = stacks.get(strip).paints();
        if (above.isEmpty() || tops(above).equals(tops(below))) {
            return Over.NO;
        }
        if (below.isEmpty()) {
            return Over.YES;
        }
        boolean isCut = above.size() >= depth;
        int found = above.lastIndexOf(below.get(0));
        if (found < 0) {
            return isCut ? Over.UNKNOWN : Over.NO;
        }
        boolean isDrawnOnTop = found == 0 && below.get(0).drawing().isEmpty();
        return !isDrawnOnTop && (isCut || new HashSet<>(above).containsAll(below)) ? Over.YES : Over.NO;
    }

    /** The topmost paint of the picture and of each drawing of its own. */
    private static List<Paint> tops(List<Paint> paints) {
        Map<String, Paint> tops = new HashMap<>();
        List<Paint> result = new ArrayList<>();
        for (Paint paint : paints) {
            if (tops.putIfAbsent(paint.drawing(), paint) == null) {
                result.add(paint);
            }
        }
        return result;
    }
}
