package inkstrata.planar;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;

/**
 * Where a region is narrow, or a gap in it, near edges of a map that lie hidden beneath covers, and deep beneath one: found by looking at
 * edges alone, before anything is grown or shrunk.
 *
 * <p>A place is narrow if it lies in no disc as wide as the width that keeps within the region, or within the gap. The largest disc
 * around it that does touches two edges, each no farther from the place than the width, which run back along each other or make a sharp
 * corner. So no narrow place is missed, but the tips of corners of 54 degrees and more, which are no longer than the width. Work grows
 * with the length of outlines, and near hidden edges with the square of the edges in a cell.
 */
public final class NarrowPlaces {
    /** A cell is half a millimetre wide, in grid steps, and looked at in parts of an eighth. */
    private static final int WIDTH = 2000;

    private static final int PARTS = 8;
    private static final int PART = WIDTH / PARTS;
    private static final double HALF_DIAGONAL = PART * 0.7072;

    /** So many parts of one row and column make one place at most: 8 mm. */
    private static final int BLOCK = 16 * PARTS;

    /** More edges in a cell are not compared: such a place is taken as narrow. */
    private static final int MOST_IN_CELL = 300;

    /** Edges run back along each other if the cosine between them is less; tips of wider corners are shorter than the width. */
    private static final double BACK = -0.45;

    /** Cosine between two edges at a corner of 54 degrees. */
    private static final double SHARP = -0.59;

    private final IntFunction<OutlineCells> covers;
    private final int reach;
    private final double depth;
    /** Cells are counted from the picture's corner, so that places move as the picture does. */
    private final int originX;

    private final int originY;
    /** For each cover the cells that edges which it hides come near. */
    private final Map<Integer, long[]> hidden = new TreeMap<>();

    private long[] cells = {};

    private NarrowPlaces(Box frame, IntFunction<OutlineCells> covers, double reach, double depth) {
        this.originX = frame.left();
        this.originY = frame.low();
        this.covers = covers;
        this.reach = (int) Math.ceil(reach);
        this.depth = depth;
    }

    /** Asked about an edge. */
    @FunctionalInterface
    public interface Sides {
        /**
         * Tells beneath which covers an edge lies.
         *
         * @param left stack at one side
         * @param right stack at the other
         */
        void covers(int left, int right, IntConsumer told);
    }

    /**
     * A box around places.
     *
     * @param frame about 8 mm wide at most; all places found lie within one
     * @param covers beneath which they may lie
     * @param ofRegion whether the region is narrow somewhere
     * @param ofGap whether a gap in it is
     */
    public record Place(Frame frame, List<Integer> covers, boolean ofRegion, boolean ofGap) {
        public Place {
            covers = List.copyOf(covers);
        }
    }

    /**
     * Finds them.
     *
     * @param map whose edges may be hidden
     * @param region made of it, and perhaps grown
     * @param covers outlines of what hides
     * @param widthMm narrower counts
     * @param depthMm a place that lies as near to the outline of what hides it does not
     * @return in rows from top to bottom, none overlapping another
     */
    public static List<Place> of(
            PlanarMap map,
            Region region,
            Sides sides,
            IntFunction<OutlineCells> covers,
            double widthMm,
            double depthMm) {
        NarrowPlaces places =
                new NarrowPlaces(Box.of(map.frame()), covers, widthMm * Grid.STEPS_PER_MM, depthMm * Grid.STEPS_PER_MM);
        return places.mark(map.edges(), sides) ? places.boxes(places.narrow(region)) : List.of();
    }

    /** Marks the cells that hidden edges come near. */
    private boolean mark(EdgeTable edges, Sides sides) {
        Map<Integer, Longs> marked = new TreeMap<>();
        Longs all = new Longs();
        for (int e = 0; e < edges.from().length; e++) {
            int left = edges.left()[e];
            int right = edges.right()[e];
            if (left != EdgeTable.OUTSIDE && right != EdgeTable.OUTSIDE) {
                int from = edges.from()[e];
                int to = edges.to()[e];
                sides.covers(left, right, cover -> {
                    Longs there = marked.computeIfAbsent(cover, none -> new Longs());
                    CellWalk.along(
                            edges.x()[from] - originX,
                            edges.y()[from] - originY,
                            edges.x()[to] - originX,
                            edges.y()[to] - originY,
                            reach + 2,
                            WIDTH,
                            (column, row) -> there.add(key(column, row)));
                });
            }
        }
        marked.forEach((cover, there) -> {
            long[] distinct = there.sorted();
            hidden.put(cover, distinct);
            for (long cell : distinct) {
                all.add(cell);
            }
        });
        cells = all.sorted();
        return cells.length > 0;
    }

    /** For twice each cover's number the parts of marked cells in which the region is narrow, and for one more those in which a gap is. */
    private Map<Integer, Longs> narrow(Region region) {
        Ints[] listed = new Ints[cells.length];
        for (Ring ring : region.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                int next = i + 1 == ring.size() ? 0 : i + 1;
                int x0 = ring.x(i) - originX;
                int y0 = ring.y(i) - originY;
                int x1 = ring.x(next) - originX;
                int y1 = ring.y(next) - originY;
                CellWalk.along(x0, y0, x1, y1, reach + 2, WIDTH, (column, row) -> {
                    int at = Arrays.binarySearch(cells, key(column, row));
                    if (at >= 0) {
                        listed[at] = listed[at] == null ? new Ints(32) : listed[at];
                        listed[at].add(x0);
                        listed[at].add(y0);
                        listed[at].add(x1);
                        listed[at].add(y1);
                    }
                });
            }
        }
        Map<Integer, Longs> found = new TreeMap<>();
        for (int c = 0; c < cells.length; c++) {
            if (listed[c] != null) {
                look(cells[c], listed[c], found);
            }
        }
        return found;
    }

    private void look(long cell, Ints edges, Map<Integer, Longs> found) {
        int count = edges.size() / 4;
        boolean isDense = count > MOST_IN_CELL;
        Ints pairs = new Ints(16);
        for (int i = 0; i < count && !isDense; i++) {
            for (int k = 0; k < i; k++) {
                if (comeNear(edges, 4 * i, 4 * k)) {
                    pairs.add(4 * i);
                    pairs.add(4 * k);
                }
            }
        }
        if (pairs.size() == 0 && !isDense) {
            return;
        }
        int column = (int) cell * PARTS;
        int row = (int) (cell >> 32) * PARTS;
        for (int part = 0; part < PARTS * PARTS; part++) {
            int u = column + part % PARTS;
            int v = row + part / PARTS;
            double x = (u + 0.5) * PART;
            double y = (v + 0.5) * PART;
            boolean[] between = {isDense, isDense};
            for (int p = 0; p < pairs.size(); p += 2) {
                between(edges, pairs.get(p), pairs.get(p + 1), x, y, between);
            }
            if (between[0] || between[1]) {
                hidden.forEach((cover, there) -> {
                    if (Arrays.binarySearch(there, cell) >= 0
                            && !covers.apply(cover)
                                    .isWithin(
                                            x + originX,
                                            y + originY,
                                            Math.max(0, depth - reach / 2.0 - HALF_DIAGONAL))) {
                        for (int kind = 0; kind < 2; kind++) {
                            if (between[kind]) {
                                found.computeIfAbsent(2 * cover + kind, none -> new Longs())
                                        .add(key(u, v));
                            }
                        }
                    }
                });
            }
        }
    }

    /** Whether the middle of a disc that touches both edges may lie as near to a place as half a part's diagonal: in the region, or in a gap. */
    private void between(Ints edges, int one, int other, double x, double y, boolean[] found) {
        double most = reach / 2.0 + HALF_DIAGONAL;
        if (distance(edges, one, x, y) > most || distance(edges, other, x, y) > most) {
            return;
        }
        double a = side(edges, one, x, y);
        double b = side(edges, other, x, y);
        found[0] |= a > -HALF_DIAGONAL && b > -HALF_DIAGONAL;
        found[1] |= a < HALF_DIAGONAL && b < HALF_DIAGONAL;
    }

    private static double distance(Ints edges, int e, double x, double y) {
        return CellWalk.distance(x, y, edges.get(e), edges.get(e + 1), edges.get(e + 2), edges.get(e + 3));
    }

    /** How far a place lies on an edge's inner side. */
    private static double side(Ints edges, int e, double x, double y) {
        double dx = edges.get(e + 2) - edges.get(e);
        double dy = edges.get(e + 3) - edges.get(e + 1);
        return (dx * (y - edges.get(e + 1)) - dy * (x - edges.get(e))) / Math.hypot(dx, dy);
    }

    private boolean comeNear(Ints edges, int one, int other) {
        double ax = edges.get(one);
        double ay = edges.get(one + 1);
        double bx = edges.get(one + 2);
        double by = edges.get(one + 3);
        double cx = edges.get(other);
        double cy = edges.get(other + 1);
        double dx = edges.get(other + 2);
        double dy = edges.get(other + 3);
        double dot = (bx - ax) * (dx - cx) + (by - ay) * (dy - cy);
        if (dot >= 0) {
            return false;
        }
        boolean isCorner = (bx == cx && by == cy) || (ax == dx && ay == dy);
        double most = isCorner ? SHARP : BACK;
        if (dot >= most * Math.hypot(bx - ax, by - ay) * Math.hypot(dx - cx, dy - cy)) {
            return false;
        }
        return isCorner
                || CellWalk.distance(ax, ay, cx, cy, dx, dy) < reach
                || CellWalk.distance(bx, by, cx, cy, dx, dy) < reach
                || CellWalk.distance(cx, cy, ax, ay, bx, by) < reach
                || CellWalk.distance(dx, dy, ax, ay, bx, by) < reach;
    }

    /** One box around the parts found in each block. */
    private List<Place> boxes(Map<Integer, Longs> found) {
        TreeMap<Long, int[]> blocks = new TreeMap<>();
        TreeMap<Long, TreeSet<Integer>> beneath = new TreeMap<>();
        found.forEach((kind, parts) -> {
            for (int i = 0; i < parts.size(); i++) {
                int column = (int) parts.get(i);
                int row = (int) (parts.get(i) >> 32);
                long block = key(Math.floorDiv(column, BLOCK), Math.floorDiv(row, BLOCK));
                int[] box = blocks.computeIfAbsent(block, none -> new int[] {column, row, column, row});
                box[0] = Math.min(box[0], column);
                box[1] = Math.min(box[1], row);
                box[2] = Math.max(box[2], column);
                box[3] = Math.max(box[3], row);
                beneath.computeIfAbsent(block, none -> new TreeSet<>()).add(kind);
            }
        });
        List<Place> places = new ArrayList<>();
        blocks.forEach((block, box) -> places.add(new Place(
                new Frame(
                        Grid.millimetres(originX + box[0] * PART - reach / 2 - 1),
                        Grid.millimetres(originY + box[1] * PART - reach / 2 - 1),
                        Grid.millimetres((box[2] - box[0] + 1) * PART + reach + 2),
                        Grid.millimetres((box[3] - box[1] + 1) * PART + reach + 2)),
                beneath.get(block).stream().map(kind -> kind / 2).distinct().toList(),
                beneath.get(block).stream().anyMatch(kind -> kind % 2 == 0),
                beneath.get(block).stream().anyMatch(kind -> kind % 2 == 1))));
        return places;
    }

    private static long key(int column, int row) {
        return ((long) row << 32) | (column & 0xFFFFFFFFL);
    }

    /** A growing list of plain longs. */
    private static final class Longs {
        private long[] values = new long[64];
        private int size;

        void add(long value) {
            if (size == values.length) {
                values = Arrays.copyOf(values, 2 * size);
            }
            values[size++] = value;
        }

        long get(int index) {
            return values[index];
        }

        int size() {
            return size;
        }

        /** Each once. */
        long[] sorted() {
            return Arrays.stream(values, 0, size).sorted().distinct().toArray();
        }
    }
}
