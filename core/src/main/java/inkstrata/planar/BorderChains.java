package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The border between two kinds: walks around the first, cut where something else than the second lies beyond.
 *
 * <p>So a chain stays at one interior of the first kind, and passes a vertex where others only touch. Chains are in the
 * order of their vertices; a closed one starts at its leftmost edge.
 */
final class BorderChains {
    private final Borderlines lines;
    private final boolean[] done;
    private final List<int[]> chains = new ArrayList<>();

    private BorderChains(Borderlines lines) {
        this.lines = lines;
        this.done = new boolean[lines.size()];
    }

    /**
     * Joins the edges with {@code one} on the left and {@code other} on the right.
     *
     * @param kindOfStack as for {@link Borderlines#of}; edges between any two different kinds end a chain
     */
    static Border between(EdgeTable table, int[] kindOfStack, int one, int other) {
        BorderChains border = new BorderChains(Borderlines.of(table, kindOfStack));
        border.collect(one, other);
        border.chains.sort(Arrays::compare);
        return new Border(border.chains);
    }

    private void collect(int one, int other) {
        for (int h = 0; h < lines.size(); h++) {
            if (!done[h] && lines.kind(h) == one) {
                int start = chainStart(h, other);
                int at = start;
                do {
                    at = isBorder(at, other) ? chain(at, other) : passed(at);
                } while (at != start);
            }
        }
    }

    /** A half-edge of the walk with which a chain or none begins: the leftmost one if it is all one chain. */
    private int chainStart(int half, int other) {
        int leftmost = half;
        int h = half;
        do {
            if (!isBorder(h, other)) {
                return h;
            }
            leftmost = isLeftOf(h, leftmost) ? h : leftmost;
            h = lines.next(h);
        } while (h != half);
        return leftmost;
    }

    private boolean isBorder(int half, int other) {
        return lines.kind(half ^ 1) == other;
    }

    private int passed(int half) {
        done[half] = true;
        return lines.next(half);
    }

    private int chain(int start, int other) {
        Ints xy = new Ints(32);
        int at = start;
        addOrigin(at, xy);
        do {
            at = passed(at);
            addOrigin(at, xy);
        } while (at != start && isBorder(at, other));
        chains.add(xy.toArray());
        return at;
    }

    private void addOrigin(int half, Ints xy) {
        xy.add(lines.x(lines.origin(half)));
        xy.add(lines.y(lines.origin(half)));
    }

    private boolean isLeftOf(int one, int other) {
        int[] a = edge(one);
        int[] b = edge(other);
        return Arrays.compare(a, b) < 0;
    }

    private int[] edge(int half) {
        int from = lines.origin(half);
        int to = lines.origin(half ^ 1);
        return new int[] {lines.x(from), lines.y(from), lines.x(to), lines.y(to)};
    }
}
