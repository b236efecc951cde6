package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The straight lines along which tiles meet: what each side says about the stacks there.
 *
 * <p>Tiles on the two sides need not have snapped alike. Their common border is an integer axis-parallel line, so it may be split
 * at any integer point without moving; an edge is made wherever the two sides differ.
 */
final class TileBorders {
    /** Ints in one edge: x and y of both ends, stack on the left (positive cross products), stack on the right, source segment. */
    static final int STRIDE = 7;

    private final Map<Long, Border> borders = new HashMap<>();
    private final List<Border> inOrder = new ArrayList<>();

    /** What the tiles below (left of) and above (right of) one line say, each in order along the line. */
    private static final class Border {
        private final boolean vertical;
        private final int at;
        private final Ints below = new Ints(32);
        private final Ints above = new Ints(32);
        private final TileBorderSources sources = new TileBorderSources();

        Border(boolean vertical, int at) {
            this.vertical = vertical;
            this.at = at;
        }
    }

    /**
     * The lines between tiles.
     *
     * @param tiles in the order of splitting, low and left halves first
     * @param onLines pieces that lie on tile lines and so belong to no tile; as in {@link Tile}
     */
    static TileBorders of(List<MappedTile> tiles, Iterable<int[]> onLines, MapStacks stacks) {
        TileBorders borders = new TileBorders();
        for (MappedTile tile : tiles) {
            int[] numbers = stacks.of(tile);
            Box box = tile.box();
            borders.add(true, box.left(), true, tile.left(), numbers);
            borders.add(false, box.low(), true, tile.low(), numbers);
            borders.add(true, box.right(), false, tile.right(), numbers);
            borders.add(false, box.high(), false, tile.high(), numbers);
        }
        for (int[] p : onLines) {
            for (int k = 0; k < p.length; k += Tile.STRIDE) {
                borders.addPiece(p[k], p[k + 1], p[k + 2], p[k + 3], p[k + 4]);
            }
        }
        return borders;
    }

    /** What one tile says along one of its sides; tiles come so that each list grows in order along its line. */
    private void add(boolean vertical, int at, boolean tileAbove, int[] side, int[] stackNumber) {
        Border border = border(vertical, at);
        Ints list = tileAbove ? border.above : border.below;
        for (int k = 0; k + 1 < side.length; k += MappedTile.SIDE_STRIDE) {
            int from = side[k];
            int to = side[k + MappedTile.SIDE_STRIDE];
            list.add(from);
            list.add(to);
            list.add(stackNumber[side[k + 1]]);
            if (side[k + 2] >= 0) {
                border.sources.add(from, to, side[k + 2]);
            }
        }
    }

    private void addPiece(int ax, int ay, int bx, int by, int segment) {
        if (ax == bx) {
            border(true, ax).sources.add(Math.min(ay, by), Math.max(ay, by), segment);
        } else {
            border(false, ay).sources.add(Math.min(ax, bx), Math.max(ax, bx), segment);
        }
    }

    private Border border(boolean vertical, int at) {
        long key = (long) at << 1 | (vertical ? 1 : 0);
        Border border = borders.get(key);
        if (border == null) {
            border = new Border(vertical, at);
            borders.put(key, border);
            inOrder.add(border);
        }
        return border;
    }

    /** An edge wherever the two sides differ, {@link #STRIDE} ints each; beyond the canvas is {@link EdgeTable#OUTSIDE}. */
    List<int[]> edges(Crew crew) {
        return crew.share(inOrder.size(), (first, end) -> {
            Ints edges = new Ints(1024);
            for (Border border : inOrder.subList(first, end)) {
                join(border, sorted(border.below), sorted(border.above), edges);
            }
            return edges.toArray();
        });
    }

    private static void join(Border border, int[] below, int[] above, Ints edges) {
        int b = 0;
        int a = 0;
        int at = Integer.MIN_VALUE;
        while (b < below.length || a < above.length) {
            int belowFrom = b < below.length ? Math.max(at, below[b]) : Integer.MAX_VALUE;
            int aboveFrom = a < above.length ? Math.max(at, above[a]) : Integer.MAX_VALUE;
            at = Math.min(belowFrom, aboveFrom);
            int belowStack = belowFrom == at ? below[b + 2] : EdgeTable.OUTSIDE;
            int aboveStack = aboveFrom == at ? above[a + 2] : EdgeTable.OUTSIDE;
            int end = Math.min(belowFrom == at ? below[b + 1] : belowFrom, aboveFrom == at ? above[a + 1] : aboveFrom);
            if (belowStack != aboveStack) {
                boolean onFrame = belowStack == EdgeTable.OUTSIDE || aboveStack == EdgeTable.OUTSIDE;
                TileBorderSources.Sink part = (from, to, source) -> {
                    if (border.vertical) {
                        addEdge(edges, border.at, from, border.at, to, belowStack, aboveStack, source);
                    } else {
                        addEdge(edges, from, border.at, to, border.at, aboveStack, belowStack, source);
                    }
                };
                if (onFrame) {
                    part.part(at, end, -1);
                } else {
                    border.sources.split(at, end, part);
                }
            }
            at = end;
            if (belowFrom < end && end == below[b + 1]) {
                b += 3;
            }
            if (aboveFrom < end && end == above[a + 1]) {
                a += 3;
            }
        }
    }

    private static void addEdge(Ints edges, int... edge) {
        edges.addAll(edge, 0, STRIDE);
    }

    private static int[] sorted(Ints list) {
        int n = list.size() / 3;
        boolean inOrder = true;
        for (int i = 1; i < n; i++) {
            inOrder &= list.get(3 * i - 3) <= list.get(3 * i);
        }
        if (inOrder) {
            return list.toArray();
        }
        long[] keyed = new long[n];
        for (int i = 0; i < n; i++) {
            keyed[i] = (long) list.get(3 * i) << 32 | i;
        }
        Arrays.sort(keyed);
        int[] result = new int[3 * n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < 3; k++) {
                result[3 * i + k] = list.get(3 * (int) keyed[i] + k);
            }
        }
        return result;
    }
}
