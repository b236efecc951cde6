package inkstrata.planar;

import inkstrata.planar.PlanarMapper.Noded;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/** Maps whose faces have got other stacks. */
final class Relabelling {
    private Relabelling() {}

    /**
     * Edges with other stacks at their sides, without those that have one on both, and without vertices at which none ends.
     *
     * @param left stack of each edge on the side of positive cross products
     * @param right stack of each edge on the other side
     */
    static EdgeTable of(EdgeTable edges, int[] left, int[] right) {
        int[] vertex = new int[edges.x().length];
        Arrays.fill(vertex, -1);
        Ints x = new Ints(vertex.length);
        Ints y = new Ints(vertex.length);
        Ints kept = new Ints(left.length);
        for (int e = 0; e < left.length; e++) {
            if (left[e] != right[e]) {
                kept.add(e);
                for (int v : new int[] {edges.from()[e], edges.to()[e]}) {
                    if (vertex[v] < 0) {
                        vertex[v] = x.size();
                        x.add(edges.x()[v]);
                        y.add(edges.y()[v]);
                    }
                }
            }
        }
        int[] all = kept.toArray();
        return new EdgeTable(
                x.toArray(),
                y.toArray(),
                Arrays.stream(all).map(e -> vertex[edges.from()[e]]).toArray(),
                Arrays.stream(all).map(e -> vertex[edges.to()[e]]).toArray(),
                Arrays.stream(all).map(e -> left[e]).toArray(),
                Arrays.stream(all).map(e -> right[e]).toArray(),
                Arrays.stream(all).map(e -> edges.source()[e]).toArray());
    }

    /** The map as it would be with stacks no deeper than so many paints; they keep the order of {@link MapStacks}. */
    static Noded cut(Noded map, int depth, Paints paints) {
        List<int[]> cut = map.stacks().stream()
                .map(stack -> stack.paints().stream()
                        .limit(depth)
                        .mapToInt(paints::packed)
                        .toArray())
                .toList();
        TreeSet<int[]> distinct = new TreeSet<>(Arrays::compare);
        distinct.addAll(cut);
        List<int[]> order = List.copyOf(distinct);
        int[] number = new int[cut.size()];
        for (int i = 0; i < number.length; i++) {
            number[i] = Collections.binarySearch(order, cut.get(i), Arrays::compare);
        }
        EdgeTable edges = map.edges();
        EdgeTable relabelled = of(edges, renumbered(edges.left(), number), renumbered(edges.right(), number));
        List<PaintStack> stacks = order.stream()
                .map(stack -> new PaintStack(
                        Arrays.stream(stack).mapToObj(paints::paint).toList()))
                .toList();
        return new Noded(relabelled, map.segments(), map.frame(), stacks);
    }

    private static int[] renumbered(int[] stacks, int[] number) {
        return Arrays.stream(stacks)
                .map(stack -> stack == EdgeTable.OUTSIDE ? stack : number[stack])
                .toArray();
    }
}
