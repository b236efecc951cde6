package inkstrata.planar;

import inkstrata.planar.PlanarMapper.Noded;
import java.util.Arrays;

/**
 * What strips leave over where they meet: a hole between three neighbours or more, a speck beside the end of a strip. Such a face goes
 * to the neighbour that has most of its ends.
 *
 * <p>It is a crumb if it is bounded in part by ends of marks and nothing lies in it, and if it is no larger than a seam both ways, or if ends
 * of marks are half of what bounds it and it is no larger than {@link #LARGEST} seams both ways.
 */
final class SeamCrumbs {
    /** Seven strips that meet in a point at 51 degrees leave a hole 2.3 times as wide as they are. */
    private static final double LARGEST = 4;

    private final EdgeTable edges;
    private final HalfEdges halves;
    private final SeamStacks stacks;
    private final int drawn;
    private final double seam;
    /** Leftmost places of all outer contours, one in each long, in order of x. */
    private final long[] contours;

    private SeamCrumbs(EdgeTable edges, SeamStacks stacks, int drawn, double seam) {
        this.edges = edges;
        this.halves = new HalfEdges(edges.x(), edges.y(), edges.from(), edges.to());
        this.stacks = stacks;
        this.drawn = drawn;
        this.seam = seam;
        long[] found = new long[halves.cycleCount()];
        int count = 0;
        for (int cycle = 0; cycle < found.length; cycle++) {
            if (halves.doubledArea(cycle) <= 0) {
                int vertex = halves.origin(halves.firstHalf(cycle));
                found[count++] = place(edges.x()[vertex], edges.y()[vertex]);
            }
        }
        contours = Arrays.copyOf(found, count);
        Arrays.sort(contours);
    }

    /**
     * The same map without crumbs.
     *
     * @param depth at which stacks are cut off
     * @param drawn how many segments there are before those of marks
     * @param seam in grid steps
     */
    static Noded without(Noded map, int depth, int drawn, double seam) {
        SeamCrumbs crumbs = new SeamCrumbs(map.edges(), new SeamStacks(map.stacks(), depth), drawn, seam);
        return new Noded(crumbs.sweep(), map.segments(), map.frame(), map.stacks());
    }

    private EdgeTable sweep() {
        int[] left = edges.left().clone();
        int[] right = edges.right().clone();
        boolean any = false;
        for (int cycle = 0; cycle < halves.cycleCount(); cycle++) {
            int goesTo = halves.doubledArea(cycle) > 0 ? goesTo(cycle) : EdgeTable.OUTSIDE;
            if (goesTo != EdgeTable.OUTSIDE) {
                any = true;
                int h = halves.firstHalf(cycle);
                do {
                    ((h & 1) == 0 ? left : right)[h >> 1] = goesTo;
                    h = halves.next(h);
                } while (h != halves.firstHalf(cycle));
            }
        }
        return any ? Relabelling.of(edges, left, right) : edges;
    }

    /** The stack that a face goes to; {@link EdgeTable#OUTSIDE} if it stays. */
    private int goesTo(int cycle) {
        int first = halves.firstHalf(cycle);
        int strip = side(first);
        if (strip == EdgeTable.OUTSIDE) {
            return EdgeTable.OUTSIDE;
        }
        int x0 = edges.x()[halves.origin(first)];
        int y0 = edges.y()[halves.origin(first)];
        int left = x0;
        int right = x0;
        int low = y0;
        int high = y0;
        double length = 0;
        double ends = 0;
        double longest = 0;
        int best = EdgeTable.OUTSIDE;
        int h = first;
        do {
            int from = halves.origin(h);
            int to = halves.origin(h ^ 1);
            left = Math.min(left, edges.x()[to]);
            right = Math.max(right, edges.x()[to]);
            low = Math.min(low, edges.y()[to]);
            high = Math.max(high, edges.y()[to]);
            if (Math.max(right - left, high - low) > LARGEST * seam) {
                return EdgeTable.OUTSIDE;
            }
            double size = SeamWay.size(edges.x()[to] - edges.x()[from], edges.y()[to] - edges.y()[from]);
            length += size;
            int beyond = side(h ^ 1);
            if (edges.source()[h >> 1] >= drawn && stacks.over(beyond, strip) == SeamStacks.Over.YES) {
                ends += size;
                if (size > longest || (size == longest && stacks.lighter(beyond, best) == beyond)) {
                    longest = size;
                    best = beyond;
                }
            }
            h = halves.next(h);
        } while (h != first);
        boolean isSpeck = Math.max(right - left, high - low) <= seam;
        boolean isCrumb = ends > 0 && (isSpeck || ends >= length / 2) && !holdsAny(first, left, low, right, high);
        return isCrumb ? best : EdgeTable.OUTSIDE;
    }

    private int side(int half) {
        return ((half & 1) == 0 ? edges.left() : edges.right())[half >> 1];
    }

    /** Whether an outer contour starts within a face's box that is not the face's own from outside. */
    private boolean holdsAny(int first, int left, int low, int right, int high) {
        int i = Arrays.binarySearch(contours, place(left, Integer.MIN_VALUE));
        for (i = i < 0 ? ~i : i; i < contours.length && (int) (contours[i] >> 32) < right; i++) {
            int x = (int) (contours[i] >> 32);
            int y = (int) contours[i];
            if (x > left && y > low && y < high && !isOn(first, x, y)) {
                return true;
            }
        }
        return false;
    }

    private boolean isOn(int first, int x, int y) {
        int h = first;
        do {
            int vertex = halves.origin(h);
            if (edges.x()[vertex] == x && edges.y()[vertex] == y) {
                return true;
            }
            h = halves.next(h);
        } while (h != first);
        return false;
    }

    private static long place(int x, int y) {
        return (long) x << 32 | (y & 0xffffffffL);
    }
}
