package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The stacks of a map, numbered by their colours, so that numbers do not depend on who found them first.
 *
 * @param stacks the bare one first, then in the order of their colours; each is somewhere in the map, the bare one perhaps
 *     not
 * @param numbers for each table of the tiles' threads the numbers of its stacks in the map
 */
record MapStacks(List<PaintStack> stacks, Map<StackTable, int[]> numbers) {
    static MapStacks of(List<MappedTile> tiles, Paints paints) {
        Map<StackTable, BitSet> somewhere = new LinkedHashMap<>();
        tiles.forEach(tile -> findStacks(tile, somewhere.computeIfAbsent(tile.stacks(), table -> new BitSet())));
        Map<StackTable, int[]> numbers = new LinkedHashMap<>();
        StackTable all = new StackTable();
        somewhere.forEach((table, stacks) -> {
            int[] found = new int[table.size()];
            stacks.stream().forEach(stack -> found[stack] = all.number(table.colours(stack)));
            numbers.put(table, found);
        });
        int[][] sorted = new int[all.size()][];
        for (int stack = 0; stack < sorted.length; stack++) {
            sorted[stack] = all.colours(stack);
        }
        Arrays.sort(sorted, Arrays::compare);
        int[] rank = new int[sorted.length];
        for (int place = 0; place < rank.length; place++) {
            rank[all.number(sorted[place])] = place;
        }
        numbers.values().forEach(found -> Arrays.setAll(found, stack -> rank[found[stack]]));
        List<PaintStack> stacks = new ArrayList<>(sorted.length);
        for (int[] colours : sorted) {
            stacks.add(new PaintStack(
                    Arrays.stream(colours).mapToObj(paints::paint).toList()));
        }
        return new MapStacks(List.copyOf(stacks), numbers);
    }

    private static void findStacks(MappedTile tile, BitSet found) {
        int[] edges = tile.edges();
        for (int k = 0; k < edges.length; k += MappedTile.STRIDE) {
            found.set(edges[k + 2]);
            found.set(edges[k + 3]);
        }
        for (int[] side : List.of(tile.left(), tile.low(), tile.right(), tile.high())) {
            for (int k = 1; k < side.length; k += MappedTile.SIDE_STRIDE) {
                found.set(side[k]);
            }
        }
    }

    /** The map's numbers for the stacks of a tile. */
    int[] of(MappedTile tile) {
        return numbers.get(tile.stacks());
    }
}
