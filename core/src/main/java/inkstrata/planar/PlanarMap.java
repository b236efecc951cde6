package inkstrata.planar;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** All faces of an artwork with their stacks of paint. */
public final class PlanarMap {
    private final EdgeTable edges;
    private final Segments segments;
    private final Frame frame;
    private final List<PaintStack> stacks;
    private final List<Swallowed> swallowed;
    private final List<Seam> seams;
    private final int threads;
    private final long[] doubledAreas;

    /**
     * Takes what was made.
     *
     * @param segments that the edges' sources name
     * @param threads with which regions are dissolved
     */
    PlanarMap(
            EdgeTable edges,
            Segments segments,
            Frame frame,
            List<PaintStack> stacks,
            List<Swallowed> swallowed,
            List<Seam> seams,
            int threads) {
        this(edges, segments, frame, stacks, swallowed, seams, threads, doubledAreas(edges, stacks.size()));
    }

    private PlanarMap(
            EdgeTable edges,
            Segments segments,
            Frame frame,
            List<PaintStack> stacks,
            List<Swallowed> swallowed,
            List<Seam> seams,
            int threads,
            long[] doubledAreas) {
        this.edges = edges;
        this.segments = segments;
        this.frame = frame;
        this.stacks = List.copyOf(stacks);
        this.swallowed = List.copyOf(swallowed);
        this.seams = List.copyOf(seams);
        this.threads = threads;
        this.doubledAreas = doubledAreas;
    }

    /** The picture's frame, on the grid. */
    public Frame frame() {
        return frame;
    }

    /** The distinct stacks; a stack's number is its position here. */
    public List<PaintStack> stacks() {
        return stacks;
    }

    /** The contours of which rounding to the grid left nothing, from the topmost shape down. */
    public List<Swallowed> swallowed() {
        return swallowed;
    }

    /** Strips between shapes that were closed, and those hardly wider that were not, in the order of {@link Seam}; none if none were asked for. */
    public List<Seam> seams() {
        return seams;
    }

    /** With how many threads it was made. */
    int threads() {
        return threads;
    }

    EdgeTable edges() {
        return edges;
    }

    /** What the edges' sources name. */
    Segments segments() {
        return segments;
    }

    /** Which curve each edge follows. */
    Sources sources() {
        return new Sources(edges, segments);
    }

    /** What all faces with that stack measure together, in square millimetres; the nearest {@code double} to the exact area. */
    public double areaMm2(int stack) {
        return Region.millimetres2(doubledAreas[stack]);
    }

    /** Twice the area of all faces with that stack in square grid steps, exactly. */
    long doubledArea(int stack) {
        return doubledAreas[stack];
    }

    /** The union of all faces whose stack is in the set; shares every vertex with its neighbours. */
    public Region dissolve(StackSet set) {
        return dissolveAll(List.of(set)).get(0);
    }

    /**
     * One region for each set, in one pass.
     *
     * @param sets no stack is in two of them
     */
    public List<Region> dissolveAll(List<StackSet> sets) {
        try (Crew crew = new Crew(threads)) {
            return Dissolving.dissolve(edges, kinds(sets), sets.size(), crew);
        }
    }

    /** For each stack its pieces. */
    public List<Pieces> pieces() {
        List<StackSet> each =
                IntStream.range(0, stacks.size()).mapToObj(StackSet::of).toList();
        return dissolveAll(each).stream().map(Pieces::of).toList();
    }

    /** Every edge once, in an order that is always the same. */
    void sendEdgesTo(EdgeSink sink) {
        for (int e = 0; e < edges.from().length; e++) {
            int from = edges.from()[e];
            int to = edges.to()[e];
            sink.edge(
                    edges.x()[from], edges.y()[from], edges.x()[to], edges.y()[to], edges.left()[e], edges.right()[e]);
        }
    }

    /** All pairs of stacks that share edges, or meet in a point, in the order of their numbers. */
    public List<Neighbours> neighbours() {
        TreeMap<Long, Double> lengths = new TreeMap<>();
        int[] degree = new int[edges.x().length];
        for (int e = 0; e < edges.from().length; e++) {
            int from = edges.from()[e];
            int to = edges.to()[e];
            degree[from]++;
            degree[to]++;
            double length = Math.hypot(edges.x()[to] - edges.x()[from], edges.y()[to] - edges.y()[from]) * Grid.STEP_MM;
            addPair(edges.left()[e], edges.right()[e], length, lengths);
        }
        addThoseThatMeetInPoints(degree, lengths);
        return lengths.entrySet().stream()
                .map(pair -> new Neighbours(
                        (int) (pair.getKey() >> 32), pair.getKey().intValue(), pair.getValue()))
                .toList();
    }

    private static void addPair(int one, int other, double length, Map<Long, Double> lengths) {
        if (one != other && one != EdgeTable.OUTSIDE && other != EdgeTable.OUTSIDE) {
            lengths.merge((long) Math.min(one, other) << 32 | Math.max(one, other), length, Double::sum);
        }
    }

    /** They only do where four edges meet or more. */
    private void addThoseThatMeetInPoints(int[] degree, Map<Long, Double> lengths) {
        Map<Integer, TreeSet<Integer>> around = new TreeMap<>();
        for (int e = 0; e < edges.from().length; e++) {
            for (int vertex : new int[] {edges.from()[e], edges.to()[e]}) {
                if (degree[vertex] >= 4) {
                    TreeSet<Integer> stacksThere = around.computeIfAbsent(vertex, v -> new TreeSet<>());
                    stacksThere.add(edges.left()[e]);
                    stacksThere.add(edges.right()[e]);
                }
            }
        }
        for (TreeSet<Integer> stacksThere : around.values()) {
            for (int one : stacksThere) {
                for (int other : stacksThere.tailSet(one, false)) {
                    addPair(one, other, 0, lengths);
                }
            }
        }
    }

    /** The same map with other paints; stacks keep their numbers, so several may become equal. */
    public PlanarMap repainted(UnaryOperator<Paint> change) {
        List<PaintStack> changed = stacks.stream()
                .map(stack -> new PaintStack(
                        stack.paints().stream().map(change).distinct().toList()))
                .toList();
        return new PlanarMap(edges, segments, frame, changed, swallowed, seams, threads, doubledAreas);
    }

    private int[] kinds(List<StackSet> sets) {
        int[] kindOfStack = new int[stacks.size()];
        Arrays.fill(kindOfStack, Borderlines.NONE);
        for (int kind = 0; kind < sets.size(); kind++) {
            for (int stack : sets.get(kind).numbers().toArray()) {
                if (kindOfStack[stack] != Borderlines.NONE) {
                    throw new IllegalArgumentException("stack " + stack + " is in two sets; it may be in one at most");
                }
                kindOfStack[stack] = kind;
            }
        }
        return kindOfStack;
    }

    /** By the shoelace formula: each edge counts for the stack on its left and against the one on its right. */
    private static long[] doubledAreas(EdgeTable edges, int stacks) {
        // Sums may wrap around 64 bits on the way; the result is below 2^54 and comes out right all the same.
        long[] areas = new long[stacks];
        for (int e = 0; e < edges.from().length; e++) {
            int from = edges.from()[e];
            int to = edges.to()[e];
            long cross = (long) edges.x()[from] * edges.y()[to] - (long) edges.x()[to] * edges.y()[from];
            if (edges.left()[e] != EdgeTable.OUTSIDE) {
                areas[edges.left()[e]] += cross;
            }
            if (edges.right()[e] != EdgeTable.OUTSIDE) {
                areas[edges.right()[e]] -= cross;
            }
        }
        return areas;
    }
}
