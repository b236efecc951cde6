package inkstrata.planar;

import java.util.Arrays;

/**
 * The faces of one tile: every cycle of half-edges gets the face on its left.
 *
 * <p>A cycle of positive area bounds a face of its own. Any other is the outer contour of a component and lies in the face left of
 * its leftmost vertex, found by looking left to the nearest edge; in order of x the neighbour's own contour is
 * settled before. An edge that ends at the height looked along counts if it rises from there, so ties never arise.
 */
final class TileFaces {
    /** The face beyond the frame. */
    static final int OUTSIDE = -1;

    private final TileEdges edges;
    private final HalfEdges halves;
    private final int[] faceOfCycle;
    private int count;

    TileFaces(TileEdges edges, HalfEdges halves) {
        this.edges = edges;
        this.halves = halves;
        this.faceOfCycle = new int[halves.cycleCount()];
        settle();
    }

    int count() {
        return count;
    }

    int of(int half) {
        return faceOfCycle[halves.cycleOf(half)];
    }

    private void settle() {
        int[] low = edges.lowSide();
        int inside = 2 * edges.between(low[0], low[1]) + (low[0] < low[1] ? 0 : 1);
        int beyond = halves.cycleOf(inside ^ 1);
        Ints contours = new Ints(8);
        for (int c = 0; c < faceOfCycle.length; c++) {
            if (c == beyond) {
                faceOfCycle[c] = OUTSIDE;
            } else if (halves.doubledArea(c) > 0) {
                faceOfCycle[c] = count++;
            } else {
                contours.add(c);
            }
        }
        int n = contours.size();
        int[] leftmost = new int[n];
        long[] order = new long[n];
        for (int i = 0; i < n; i++) {
            leftmost[i] = leftmost(contours.get(i));
            order[i] = (long) edges.vertices().x(leftmost[i]) << 32 | i;
        }
        Arrays.sort(order);
        for (long keyed : order) {
            int i = (int) keyed;
            faceOfCycle[contours.get(i)] = faceLeftOf(leftmost[i]);
        }
    }

    private int leftmost(int cycle) {
        HotPixels at = edges.vertices();
        int start = halves.firstHalf(cycle);
        int best = halves.origin(start);
        for (int h = halves.next(start); h != start; h = halves.next(h)) {
            int v = halves.origin(h);
            if (at.x(v) < at.x(best) || (at.x(v) == at.x(best) && at.y(v) < at.y(best))) {
                best = v;
            }
        }
        return best;
    }

    private int faceLeftOf(int vertex) {
        HotPixels at = edges.vertices();
        int x = at.x(vertex);
        int y = at.y(vertex);
        int nearest = -1;
        for (int e = 0; e < edges.count(); e++) {
            int a = edges.from(e);
            int b = edges.to(e);
            if ((at.y(a) <= y) == (at.y(b) <= y)) {
                continue;
            }
            int low = at.y(a) < at.y(b) ? a : b;
            int high = low == a ? b : a;
            if (low == vertex || Predicates.cross(at.x(low), at.y(low), at.x(high), at.y(high), x, y) >= 0) {
                continue;
            }
            if (nearest < 0 || isRightOf(e, nearest)) {
                nearest = e;
            }
        }
        boolean fromLow = at.y(edges.from(nearest)) < at.y(edges.to(nearest));
        return of(2 * nearest + (fromLow ? 1 : 0));
    }

    /** Of two edges that do not cross and share a range of heights, whether e lies to the right of f. */
    private boolean isRightOf(int e, int f) {
        HotPixels at = edges.vertices();
        int eLow = lower(e);
        int eHigh = edges.from(e) + edges.to(e) - eLow;
        int fLow = lower(f);
        int fHigh = edges.from(f) + edges.to(f) - fLow;
        long side;
        if (at.y(eLow) >= at.y(fLow)) {
            side = -cross(fLow, fHigh, eLow);
        } else {
            side = cross(eLow, eHigh, fLow);
        }
        if (side == 0) {
            side = at.y(eHigh) <= at.y(fHigh) ? -cross(fLow, fHigh, eHigh) : cross(eLow, eHigh, fHigh);
        }
        return side > 0;
    }

    private int lower(int edge) {
        HotPixels at = edges.vertices();
        return at.y(edges.from(edge)) < at.y(edges.to(edge)) ? edges.from(edge) : edges.to(edge);
    }

    private long cross(int a, int b, int p) {
        HotPixels at = edges.vertices();
        return Predicates.cross(at.x(a), at.y(a), at.x(b), at.y(b), at.x(p), at.y(p));
    }
}
