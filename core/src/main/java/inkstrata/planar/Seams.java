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
final class Seams {
    /** Receives an edge between two points of a line. */
    interface EdgeSink {
        void edge(int x0, int y0, int x1, int y1, int left, int right, int source);
    }

    private final Map<Long, Seam> seams = new HashMap<>();
    private final List<Seam> inOrder = new ArrayList<>();

    /** What the tiles below (left of) and above (right of) one line say, each in order along the line. */
    private static final class Seam {
        private final boolean vertical;
        private final int at;
        private final Ints below = new Ints(32);
        private final Ints above = new Ints(32);
        private final SeamSources sources = new SeamSources();

        Seam(boolean vertical, int at) {
            this.vertical = vertical;
            this.at = at;
        }
    }

    /**
     * Adds what one tile says along one of its sides. Tiles come in the order of splitting, low and left halves first, so
     * each list grows in order along its line.
     *
     * @param vertical whether the line is vertical
     * @param at its x or y
     * @param tileAbove whether the tile lies above (right of) the line
     * @param side as in {@link MappedTile}
     * @param along for each vertex its place along the line
     * @param stackNumber for each stack of the tile its number in the map
     */
    void add(boolean vertical, int at, boolean tileAbove, int[] side, int[] along, int[] stackNumber) {
        Seam seam = seam(vertical, at);
        Ints list = tileAbove ? seam.above : seam.below;
        for (int k = 0; k + 1 < side.length; k += MappedTile.SIDE_STRIDE) {
            int from = along[side[k]];
            int to = along[side[k + MappedTile.SIDE_STRIDE]];
            list.add(from);
            list.add(to);
            list.add(stackNumber[side[k + 1]]);
            if (side[k + 2] >= 0) {
                seam.sources.add(from, to, side[k + 2]);
            }
        }
    }

    /** Adds a piece that lies on a line and so belongs to no tile; as in {@link Tile}. */
    void addPiece(int ax, int ay, int bx, int by, int segment) {
        if (ax == bx) {
            seam(true, ax).sources.add(Math.min(ay, by), Math.max(ay, by), segment);
        } else {
            seam(false, ay).sources.add(Math.min(ax, bx), Math.max(ax, bx), segment);
        }
    }

    private Seam seam(boolean vertical, int at) {
        long key = (long) at << 1 | (vertical ? 1 : 0);
        Seam seam = seams.get(key);
        if (seam == null) {
            seam = new Seam(vertical, at);
            seams.put(key, seam);
            inOrder.add(seam);
        }
        return seam;
    }

    /** Hands over an edge wherever the two sides differ; beyond the canvas is {@link EdgeTable#OUTSIDE}. */
    void sendTo(EdgeSink sink) {
        for (Seam seam : inOrder) {
            int[] below = sorted(seam.below);
            int[] above = sorted(seam.above);
            join(seam, below, above, sink);
        }
    }

    private static void join(Seam seam, int[] below, int[] above, EdgeSink sink) {
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
                SeamSources.Sink part = (from, to, source) -> {
                    if (seam.vertical) {
                        sink.edge(seam.at, from, seam.at, to, belowStack, aboveStack, source);
                    } else {
                        sink.edge(from, seam.at, to, seam.at, aboveStack, belowStack, source);
                    }
                };
                if (onFrame) {
                    part.part(at, end, -1);
                } else {
                    seam.sources.split(at, end, part);
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
