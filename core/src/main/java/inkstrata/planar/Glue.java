package inkstrata.planar;

import java.util.Arrays;
import java.util.List;

/**
 * Joins finished tiles, in their order, to the edges of one map: vertices inside tiles keep apart, those on frames are looked
 * up, and along the {@link TileBorders} come the edges that no tile has.
 */
final class Glue {
    private final List<MappedTile> tiles;
    private final MapStacks stacks;
    private final List<int[]> borderEdges;
    /** For each tile how many edges come before its own, and how many vertices before those inside it. */
    private final int[] edgesBefore;

    private final int[] verticesBefore;
    /** Vertices on frames; numbered after those inside. */
    private final PointTable shared;
    /** For each tile the numbers of the vertices on its frame. */
    private final int[][] onFrame;

    private final int[] x;
    private final int[] y;
    private final int[] from;
    private final int[] to;
    private final int[] left;
    private final int[] right;
    private final int[] source;

    /**
     * A map's edges and the stacks they name.
     *
     * @param edges with stack numbers by position in the list
     * @param stacks the bare one first, then in the order of their colours
     */
    record Glued(EdgeTable edges, List<PaintStack> stacks) {}

    private Glue(List<MappedTile> tiles, MapStacks stacks, List<int[]> borderEdges) {
        this.tiles = tiles;
        this.stacks = stacks;
        this.borderEdges = borderEdges;
        int n = tiles.size();
        edgesBefore = new int[n + 1];
        verticesBefore = new int[n + 1];
        int borders = 64;
        for (int t = 0; t < n; t++) {
            MappedTile tile = tiles.get(t);
            edgesBefore[t + 1] = edgesBefore[t] + tile.edges().length / MappedTile.STRIDE;
            verticesBefore[t + 1] = verticesBefore[t] + tile.inside().length / 2;
            borders += tile.onFrame().length / 2;
        }
        shared = new PointTable(borders);
        onFrame = new int[n][];
        for (int t = 0; t < n; t++) {
            onFrame[t] = numbered(tiles.get(t).onFrame());
        }
        int onBorders = 0;
        for (int i = 0; i < borderEdges.size(); i++) {
            onBorders += borderEdges.get(i).length / TileBorders.STRIDE;
        }
        int edges = edgesBefore[n] + onBorders;
        from = new int[edges];
        to = new int[edges];
        left = new int[edges];
        right = new int[edges];
        source = new int[edges];
        addBorders();
        x = new int[verticesBefore[n] + shared.size()];
        y = new int[x.length];
        for (int v = 0; v < shared.size(); v++) {
            x[verticesBefore[n] + v] = shared.x(v);
            y[verticesBefore[n] + v] = shared.y(v);
        }
    }

    /**
     * Glues.
     *
     * @param tiles all tiles of the frame
     * @param onLines pieces that lie on tile lines, as in {@link Tile}
     * @param paints what the tiles' stacks stand for
     */
    static Glued glue(List<MappedTile> tiles, Iterable<int[]> onLines, Paints paints, Crew crew) {
        MapStacks stacks = MapStacks.of(tiles, paints);
        Glue glue =
                new Glue(tiles, stacks, TileBorders.of(tiles, onLines, stacks).edges(crew));
        crew.share(tiles.size(), glue::addTiles);
        EdgeTable edges = new EdgeTable(glue.x, glue.y, glue.from, glue.to, glue.left, glue.right, glue.source);
        return new Glued(edges, stacks.stacks());
    }

    private int[] numbered(int[] points) {
        int[] numbers = new int[points.length / 2];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = verticesBefore[tiles.size()] + shared.number(points[2 * i], points[2 * i + 1]);
        }
        return numbers;
    }

    private void addBorders() {
        int e = edgesBefore[tiles.size()];
        for (int[] border : borderEdges) {
            for (int k = 0; k < border.length; k += TileBorders.STRIDE) {
                int[] ends = numbered(Arrays.copyOfRange(border, k, k + 4));
                from[e] = ends[0];
                to[e] = ends[1];
                left[e] = border[k + 4];
                right[e] = border[k + 5];
                source[e] = border[k + 6];
                e++;
            }
        }
    }

    private int addTiles(int first, int end) {
        for (int t = first; t < end; t++) {
            MappedTile tile = tiles.get(t);
            int[] inside = tile.inside();
            for (int v = 0; v < inside.length / 2; v++) {
                x[verticesBefore[t] + v] = inside[2 * v];
                y[verticesBefore[t] + v] = inside[2 * v + 1];
            }
            int[] stackNumber = stacks.of(tile);
            int[] edges = tile.edges();
            int e = edgesBefore[t];
            for (int k = 0; k < edges.length; k += MappedTile.STRIDE) {
                from[e] = vertex(t, edges[k]);
                to[e] = vertex(t, edges[k + 1]);
                left[e] = stackNumber[edges[k + 2]];
                right[e] = stackNumber[edges[k + 3]];
                source[e] = edges[k + 4];
                e++;
            }
        }
        return end - first;
    }

    private int vertex(int tile, int number) {
        return number >= 0 ? verticesBefore[tile] + number : onFrame[tile][~number];
    }
}
