package inkstrata.planar;

import java.util.Arrays;
import java.util.List;

/** The outline of a mark along a run of stretches: a little beyond the strip on one side, and back beyond it on the other. */
final class SeamOutline {
    private SeamOutline() {}

    /**
     * Its corners, x and y in turn, in grid steps; no two in a row are the same.
     *
     * <p>Where the way across jumps over a corner of the other side, that corner comes between.
     */
    static int[] of(List<SeamStretch> run, EdgeTable edges) {
        Ints near = new Ints(4 * run.size());
        Ints far = new Ints(6 * run.size());
        SeamStretch before = null;
        for (SeamStretch stretch : run) {
            if (before != null && before.across() != stretch.across()) {
                corner(before, stretch, edges, far);
            }
            add(near, stretch.first().behindX(), stretch.first().behindY());
            add(near, stretch.last().behindX(), stretch.last().behindY());
            add(far, stretch.first().beyondX(), stretch.first().beyondY());
            add(far, stretch.last().beyondX(), stretch.last().beyondY());
            before = stretch;
        }
        for (int i = far.size() - 2; i >= 0; i -= 2) {
            add(near, far.get(i), far.get(i + 1));
        }
        int end = near.size();
        while (end > 2 && near.get(end - 2) == near.get(0) && near.get(end - 1) == near.get(1)) {
            end -= 2;
        }
        return Arrays.copyOf(near.raw(), end);
    }

    private static void corner(SeamStretch before, SeamStretch after, EdgeTable edges, Ints far) {
        int common = common(before.across(), after.across(), edges);
        SeamWay way = before.last();
        if (common >= 0 && (way.toX() != edges.x()[common] || way.toY() != edges.y()[common])) {
            SeamWay there =
                    SeamWay.of(way.x(), way.y(), 0, 0, edges.x()[common] - way.x(), edges.y()[common] - way.y(), 1, 0);
            add(far, there.beyondX(), there.beyondY());
        }
    }

    private static int common(int one, int other, EdgeTable edges) {
        int from = edges.from()[one];
        int to = edges.to()[one];
        if (from == edges.from()[other] || from == edges.to()[other]) {
            return from;
        }
        return to == edges.from()[other] || to == edges.to()[other] ? to : -1;
    }

    private static void add(Ints points, int x, int y) {
        int n = points.size();
        if (n < 2 || points.get(n - 2) != x || points.get(n - 1) != y) {
            points.add(x);
            points.add(y);
        }
    }
}
