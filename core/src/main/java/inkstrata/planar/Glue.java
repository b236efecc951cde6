package inkstrata.planar;

import inkstrata.colour.Rgb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Joins finished tiles, in their order, to the edges of one map. */
final class Glue {
    private final StackTable stacks = new StackTable();
    private final PointTable vertices;
    private final Ints from;
    private final Ints to;
    private final Ints left;
    private final Ints right;
    private final Ints source;
    private final Seams seams = new Seams();

    private Glue(int expected) {
        vertices = new PointTable(expected);
        from = new Ints(expected);
        to = new Ints(expected);
        left = new Ints(expected);
        right = new Ints(expected);
        source = new Ints(expected);
    }

    /**
     * A map's edges and the stacks they name.
     *
     * @param edges with stack numbers by position in the list
     * @param stacks the bare one first, then in the order of their colours
     */
    record Glued(EdgeTable edges, List<PaintStack> stacks) {}

    /**
     * Glues.
     *
     * @param tiles all tiles of the frame
     * @param onLines pieces that lie on tile lines, as in {@link Tile}
     */
    static Glued glue(List<MappedTile> tiles, Iterable<int[]> onLines) {
        int expected = 64;
        for (MappedTile tile : tiles) {
            expected += tile.edges().length / MappedTile.STRIDE;
        }
        Glue glue = new Glue(expected);
        tiles.forEach(glue::add);
        for (int[] p : onLines) {
            for (int k = 0; k < p.length; k += Tile.STRIDE) {
                glue.seams.addPiece(p[k], p[k + 1], p[k + 2], p[k + 3], p[k + 4]);
            }
        }
        glue.seams.sendTo(glue::seamEdge);
        return glue.finish();
    }

    private void add(MappedTile tile) {
        int[] stackNumber = new int[tile.stacks().size()];
        for (int s = 0; s < stackNumber.length; s++) {
            stackNumber[s] = stacks.number(tile.stacks().colours(s));
        }
        int[] number = new int[tile.x().length];
        Arrays.fill(number, -1);
        int[] edges = tile.edges();
        for (int k = 0; k < edges.length; k += MappedTile.STRIDE) {
            from.add(vertex(tile, edges[k], number));
            to.add(vertex(tile, edges[k + 1], number));
            left.add(stackNumber[edges[k + 2]]);
            right.add(stackNumber[edges[k + 3]]);
            source.add(edges[k + 4]);
        }
        Box box = tile.box();
        seams.add(true, box.left(), true, tile.left(), tile.y(), stackNumber);
        seams.add(false, box.low(), true, tile.low(), tile.x(), stackNumber);
        seams.add(true, box.right(), false, tile.right(), tile.y(), stackNumber);
        seams.add(false, box.high(), false, tile.high(), tile.x(), stackNumber);
    }

    /** Vertices on a tile's frame are looked up, those inside are new. */
    private int vertex(MappedTile tile, int v, int[] number) {
        if (number[v] < 0) {
            int x = tile.x()[v];
            int y = tile.y()[v];
            Box box = tile.box();
            boolean onFrame = x == box.left() || x == box.right() || y == box.low() || y == box.high();
            number[v] = onFrame ? vertices.number(x, y) : vertices.append(x, y);
        }
        return number[v];
    }

    private void seamEdge(int x0, int y0, int x1, int y1, int leftStack, int rightStack, int segment) {
        from.add(vertices.number(x0, y0));
        to.add(vertices.number(x1, y1));
        left.add(leftStack);
        right.add(rightStack);
        source.add(segment);
    }

    /** Numbers the stacks that are really there by their colours, so that the numbers do not depend on tiles. */
    private Glued finish() {
        boolean[] used = new boolean[stacks.size()];
        used[StackTable.BARE] = true;
        for (int e = 0; e < from.size(); e++) {
            use(left.get(e), used);
            use(right.get(e), used);
        }
        List<Integer> order = new ArrayList<>();
        for (int s = 0; s < used.length; s++) {
            if (used[s]) {
                order.add(s);
            }
        }
        order.sort((a, b) -> Arrays.compare(stacks.colours(a), stacks.colours(b)));
        int[] number = new int[used.length];
        List<PaintStack> sorted = new ArrayList<>();
        for (int s : order) {
            number[s] = sorted.size();
            sorted.add(new PaintStack(Arrays.stream(stacks.colours(s))
                    .mapToObj(colour -> new Paint(Rgb.of(colour)))
                    .toList()));
        }
        EdgeTable edges = new EdgeTable(
                vertices.xs(),
                vertices.ys(),
                from.toArray(),
                to.toArray(),
                renumbered(left, number),
                renumbered(right, number),
                source.toArray());
        return new Glued(edges, List.copyOf(sorted));
    }

    private static void use(int stack, boolean[] used) {
        if (stack >= 0) {
            used[stack] = true;
        }
    }

    private static int[] renumbered(Ints stacks, int[] number) {
        int[] result = stacks.toArray();
        for (int i = 0; i < result.length; i++) {
            result[i] = result[i] < 0 ? EdgeTable.OUTSIDE : number[result[i]];
        }
        return result;
    }
}
