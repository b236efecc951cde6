package inkstrata.planar;

import inkstrata.planar.PlanarMapper.FlatDrawing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * Marks over a drawing that close its strips: where a mark lies over just the stack that it is for, the stack of one side stands there;
 * over anything else it means nothing. So marks may go on beyond the sides of a strip; only their ends across it count.
 *
 * <p>A mark runs along a strip between two outlines ({@link SeamRuns}, {@link SeamOutline}).
 */
final class SeamMarks {
    /** As often as some were added: first come those that were there before. */
    private final List<Kind> kinds = new ArrayList<>();

    private final List<List<int[]>> polygons = new ArrayList<>();

    /** How many kinds there were after each time that some were added. */
    private final List<Integer> rounds = new ArrayList<>();

    /**
     * What a kind of mark says.
     *
     * @param strip packed paints, top first
     * @param becomes likewise
     */
    private record Kind(int[] strip, int[] becomes) implements Comparable<Kind> {
        private static final Comparator<Kind> ORDER =
                Comparator.comparing(Kind::strip, Arrays::compare).thenComparing(Kind::becomes, Arrays::compare);

        @Override
        public int compareTo(Kind that) {
            return ORDER.compare(this, that);
        }
    }

    /**
     * Adds marks along runs, kinds in the order of their stacks, which does not depend on who found them first.
     *
     * @param edges of the map in which they were found
     * @param stacks that they name
     */
    void add(List<List<SeamStretch>> runs, EdgeTable edges, SeamStacks stacks, Paints paints) {
        TreeMap<Kind, List<int[]>> added = new TreeMap<>();
        for (List<SeamStretch> run : runs) {
            SeamStretch any = run.get(0);
            Kind kind = new Kind(
                    packed(stacks.stack(any.strip()), paints),
                    packed(stacks.stack(stacks.lighter(any.one(), any.other())), paints));
            added.computeIfAbsent(kind, k -> new ArrayList<>()).add(SeamOutline.of(run, edges));
        }
        kinds.addAll(added.keySet());
        polygons.addAll(added.values());
        rounds.add(kinds.size());
    }

    private static int[] packed(PaintStack stack, Paints paints) {
        return stack.paints().stream().mapToInt(paints::packed).toArray();
    }

    /** A drawing beneath them; each of their outlines' parts counts as a command. */
    FlatDrawing over(FlatDrawing flat, Crew crew) {
        return flat.under(polygons.size(), segments(flat.drawing().areas().size()), crew);
    }

    private Segments segments(int outlines) {
        Segments segments = new Segments();
        int outline = outlines;
        for (List<int[]> kind : polygons) {
            int command = 0;
            for (int[] p : kind) {
                for (int i = 0; i < p.length; i += 2) {
                    int next = (i + 2) % p.length;
                    segments.add(p[i], p[i + 1], p[next], p[next + 1], outline, command, 0, 1);
                }
                command++;
            }
            outline++;
        }
        return segments;
    }

    /**
     * What a stack comes to: marks first, as {@link Paints} packs them, then paints. Of those that were added together one counts at most, and
     * those added later are asked about what the earlier ones made of it.
     */
    UnaryOperator<int[]> meaning() {
        List<Kind> all = List.copyOf(kinds);
        List<Integer> ends = List.copyOf(rounds);
        return stack -> {
            int marks = 0;
            while (marks < stack.length && stack[marks] < 0) {
                marks++;
            }
            if (marks == 0) {
                return stack;
            }
            int[] paints = Arrays.copyOfRange(stack, marks, stack.length);
            int from = 0;
            for (int end : ends) {
                paints = meaning(all.subList(from, end), from, stack, marks, paints);
                from = end;
            }
            return paints;
        };
    }

    /** @param first the number of the first of those kinds */
    private static int[] meaning(List<Kind> together, int first, int[] stack, int marks, int[] paints) {
        for (int i = 0; i < marks; i++) {
            int kind = ~stack[i] - first;
            if (kind >= 0 && kind < together.size() && Arrays.equals(together.get(kind).strip, paints)) {
                return together.get(kind).becomes;
            }
        }
        return paints;
    }
}
