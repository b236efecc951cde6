package inkstrata.planar;

import java.util.Arrays;
import java.util.List;

/**
 * Looks from one edge of a map across the stack at one of its sides.
 *
 * <p>A <em>way</em> leads from a place on the edge to the nearest place of an edge across. It counts if
 * <ul>
 *   <li>it is no longer than asked;
 *   <li>it leaves its edge at 45 degrees or more, and arrives from the stack's side;
 *   <li>what shows between lies beneath both sides ({@link SeamStacks}), and was not drawn on top in a paint that lies there too;
 *   <li>the two edges belong to different contours ({@link SeamContours});
 *   <li>it crosses no other edge.
 * </ul>
 * Between the feet of vertices on an edge, the nearest edge across mostly stays the same: there the edge is cut into stretches, also where
 * ways become too long or too slanted. What lies in the middle of a stretch decides for all of it.
 */
final class SeamSight {
    /** In grid steps; nearer cuts are one. */
    private static final double SAME = 1;

    /** The least cosine between a way and the square to the edge it leaves, 45 degrees; a little less, so that corners of 90 degrees count. */
    private static final double MOST_SLANTED = Math.sqrt(0.5) - 1e-3;

    private static final int NOT_ELIGIBLE = -2;

    private final EdgeTable edges;
    private final SeamEdges sides;
    private final EdgeCells.Asking cells;
    private final double seam;
    private final double reach;
    private final Ints others = new Ints(64);

    /** Of the edge at hand: where it starts, its length and direction, and the direction of the outline it follows, all 1 long. */
    private int originX;

    private int originY;
    private double length;
    private double ux;
    private double uy;
    private double squareA;
    private double squareH;

    /** Of the edges near it, that have the stack on their left: ends along and above the edge at hand, what they are, and whether they run at more
     * than 45 degrees to it. */
    private double[] a1 = new double[16];

    private double[] h1 = new double[16];
    private double[] a2 = new double[16];
    private double[] h2 = new double[16];
    private int[] start = new int[16];
    private int[] far = new int[16];
    private int[] edge = new int[16];
    private boolean[] isSlanted = new boolean[16];
    private int near;

    private double[] cuts = new double[64];
    private int cutCount;

    /**
     * Gets ready.
     *
     * @param seam the longest ways by which strips are closed, in grid steps
     * @param reach the longest ways that count, likewise
     */
    SeamSight(EdgeTable edges, SeamEdges sides, EdgeCells.Asking cells, double seam, double reach) {
        this.edges = edges;
        this.sides = sides;
        this.cells = cells;
        this.seam = seam;
        this.reach = reach;
    }

    /**
     * The stretches of an edge across the stacks at its sides, from its start to its end or back. Strips are found from the side whose contour
     * has the lower number; the other side would say the same, but where its edges are so slanted that no way leaves them squarely.
     */
    void look(int e, List<SeamStretch> found) {
        look(e, true, found);
        look(e, false, found);
    }

    private void look(int e, boolean left, List<SeamStretch> found) {
        if (!sides.mayFace(e, left)) {
            return;
        }
        cells.near(e, left, others);
        if (others.size() == 0) {
            return;
        }
        int strip = left ? edges.left()[e] : edges.right()[e];
        int beyond = left ? edges.right()[e] : edges.left()[e];
        int from = left ? edges.from()[e] : edges.to()[e];
        int to = left ? edges.to()[e] : edges.from()[e];
        originX = edges.x()[from];
        originY = edges.y()[from];
        double dx = edges.x()[to] - originX;
        double dy = edges.y()[to] - originY;
        length = SeamWay.size(dx, dy);
        ux = dx / length;
        uy = dy / length;
        if (!gather(e, strip, beyond)) {
            return;
        }
        double[] along = sides.direction(e, left);
        // Turned by a right angle towards the stack, and seen from the edge at hand.
        squareA = -along[1] * ux + along[0] * uy;
        squareH = along[1] * uy + along[0] * ux;
        cut();
        int nearestBefore = -1;
        boolean closedBefore = false;
        double since = 0;
        double widest = 0;
        for (int i = 0; i + 1 < cutCount; i++) {
            double middle = (cuts[i] + cuts[i + 1]) / 2;
            int nearest = nearest(middle);
            double across = nearest < 0 ? 0 : distance(nearest, middle);
            boolean closes = across <= seam + SAME / 2;
            if (nearest != nearestBefore || closes != closedBefore) {
                add(e, strip, beyond, nearestBefore, since, cuts[i], widest, closedBefore, found);
                since = cuts[i];
                widest = 0;
            }
            nearestBefore = nearest;
            closedBefore = closes;
            widest = Math.max(widest, across);
        }
        add(e, strip, beyond, nearestBefore, since, length, widest, closedBefore, found);
    }

    /** Whether the strip between an edge and one near it is looked for from the first. */
    private boolean isFirst(int e, int k) {
        return isSlanted[k] || sides.contour(e) < sides.contour(edge[k]);
    }

    /** Finds the edges near that border the stack; false if none of them may be across a strip that is to be found from here. */
    private boolean gather(int e, int strip, int beyond) {
        near = 0;
        boolean any = false;
        for (int i = 0; i < others.size(); i++) {
            int other = others.get(i);
            boolean onLeft = edges.left()[other] == strip;
            if (!onLeft && edges.right()[other] != strip) {
                continue;
            }
            int from = onLeft ? edges.from()[other] : edges.to()[other];
            int to = onLeft ? edges.to()[other] : edges.from()[other];
            double x1 = edges.x()[from] - originX;
            double y1 = edges.y()[from] - originY;
            double x2 = edges.x()[to] - originX;
            double y2 = edges.y()[to] - originY;
            double alongOne = x1 * ux + y1 * uy;
            double alongTwo = x2 * ux + y2 * uy;
            double overOne = ux * y1 - uy * x1;
            double overTwo = ux * y2 - uy * x2;
            if (Math.max(overOne, overTwo) < 0
                    || Math.min(overOne, overTwo) > reach
                    || Math.max(alongOne, alongTwo) < -reach
                    || Math.min(alongOne, alongTwo) > length + reach) {
                continue;
            }
            grow();
            a1[near] = alongOne;
            h1[near] = overOne;
            a2[near] = alongTwo;
            h2[near] = overTwo;
            start[near] = from;
            edge[near] = other;
            far[near] = NOT_ELIGIBLE;
            int beyondOther = onLeft ? edges.right()[other] : edges.left()[other];
            // Facing edges run against each other, more or less; beyond 135 degrees no way is square enough to both.
            double forward = alongTwo - alongOne;
            double square =
                    MOST_SLANTED * MOST_SLANTED * (forward * forward + (overTwo - overOne) * (overTwo - overOne));
            boolean runsAgainst = forward < 0 || forward * forward < square;
            if (runsAgainst
                    && sides.mayFace(other, onLeft)
                    && sides.differ(e, other)
                    && !(beyond == EdgeTable.OUTSIDE && beyondOther == EdgeTable.OUTSIDE)) {
                far[near] = beyondOther;
                isSlanted[near] = forward * forward < square;
                any |= isFirst(e, near);
            }
            near++;
        }
        return any;
    }

    private void grow() {
        if (near == a1.length) {
            a1 = Arrays.copyOf(a1, 2 * near);
            h1 = Arrays.copyOf(h1, 2 * near);
            a2 = Arrays.copyOf(a2, 2 * near);
            h2 = Arrays.copyOf(h2, 2 * near);
            start = Arrays.copyOf(start, 2 * near);
            far = Arrays.copyOf(far, 2 * near);
            edge = Arrays.copyOf(edge, 2 * near);
            isSlanted = Arrays.copyOf(isSlanted, 2 * near);
        }
    }

    /** Where to cut the edge. */
    private void cut() {
        cutCount = 0;
        addCut(0);
        addCut(length);
        for (int k = 0; k < near; k++) {
            cutAtVertex(a1[k], h1[k], far[k] != NOT_ELIGIBLE);
            cutAtVertex(a2[k], h2[k], far[k] != NOT_ELIGIBLE);
            if (far[k] != NOT_ELIGIBLE) {
                cutAlong(k);
            }
        }
        Arrays.sort(cuts, 0, cutCount);
        int kept = 1;
        for (int i = 1; i < cutCount; i++) {
            if (cuts[i] - cuts[kept - 1] >= SAME && length - cuts[i] >= SAME) {
                cuts[kept++] = cuts[i];
            }
        }
        cuts[kept++] = length;
        cutCount = kept;
    }

    private void cutAtVertex(double a, double h, boolean isEligible) {
        if (h < -SAME || h > reach) {
            return;
        }
        addCut(a);
        if (isEligible && h < seam) {
            addCut(a - h);
            addCut(a + h);
            double half = Math.sqrt(seam * seam - h * h);
            addCut(a - half);
            addCut(a + half);
        }
    }

    /** Where ways square to another edge meet its ends, and where they become too long. */
    private void cutAlong(int k) {
        double da = a2[k] - a1[k];
        double dh = h2[k] - h1[k];
        double size = SeamWay.size(da, dh);
        da /= size;
        dh /= size;
        if (Math.abs(da) > 1e-6) {
            addCut(a1[k] + h1[k] * dh / da);
            addCut(a2[k] + h2[k] * dh / da);
        }
        if (Math.abs(dh) > 1e-9) {
            // On its left, the line is -(t - a1) dh - h1 da away from (t, 0).
            cutIfSquare(k, a1[k] - (seam + h1[k] * da) / dh, da, dh, size);
            cutIfSquare(k, a1[k] - (reach + h1[k] * da) / dh, da, dh, size);
        }
    }

    private void cutIfSquare(int k, double t, double da, double dh, double size) {
        double foot = (t - a1[k]) * da - h1[k] * dh;
        if (foot >= 0 && foot <= size) {
            addCut(t);
        }
    }

    private void addCut(double at) {
        if (at >= 0 && at <= length) {
            if (cutCount + 2 > cuts.length) {
                cuts = Arrays.copyOf(cuts, 2 * cuts.length);
            }
            cuts[cutCount++] = at;
        }
    }

    /** The eligible edge nearest to a place, of equals the first in order, by an open way no longer than the reach; -1 if there is none. */
    private int nearest(double t) {
        int best = -1;
        double least = reach * reach;
        for (int k = 0; k < near; k++) {
            if (far[k] == NOT_ELIGIBLE) {
                continue;
            }
            double share = share(k, t);
            double wa = a1[k] + share * (a2[k] - a1[k]) - t;
            double wh = h1[k] + share * (h2[k] - h1[k]);
            double size2 = wa * wa + wh * wh;
            boolean isNearer = size2 < least || (size2 == least && best >= 0 && edge[k] < edge[best]);
            if (isNearer && isSquare(k, wa, wh, Math.sqrt(size2))) {
                least = size2;
                best = k;
            }
        }
        return best >= 0 && isOpen(best, t) ? best : -1;
    }

    /** Where on another edge the place nearest to one on this edge is, 0 to 1. */
    private double share(int k, double t) {
        double da = a2[k] - a1[k];
        double dh = h2[k] - h1[k];
        return Math.max(0, Math.min(1, ((t - a1[k]) * da - h1[k] * dh) / (da * da + dh * dh)));
    }

    private boolean isSquare(int k, double wa, double wh, double size) {
        if (size < SAME / 2) {
            return true;
        }
        double leaves = wa * squareA + wh * squareH;
        // The other edge's stack is on its left: (-dh, da) points there, against the way.
        double arrives = wa * (h2[k] - h1[k]) - wh * (a2[k] - a1[k]);
        return wh > 0 && leaves >= MOST_SLANTED * size && arrives >= 0;
    }

    /** Whether a way to another edge crosses no third one. */
    private boolean isOpen(int to, double t) {
        double share = share(to, t);
        double pa = a1[to] + share * (a2[to] - a1[to]);
        double ph = h1[to] + share * (h2[to] - h1[to]);
        for (int k = 0; k < near; k++) {
            if (k != to && crosses(t, pa, ph, k)) {
                return false;
            }
        }
        return true;
    }

    private boolean crosses(double t, double pa, double ph, int k) {
        double da = pa - t;
        double one = da * h1[k] - ph * (a1[k] - t);
        double two = da * h2[k] - ph * (a2[k] - t);
        double ka = a2[k] - a1[k];
        double kh = h2[k] - h1[k];
        double begins = ka * (0 - h1[k]) - kh * (t - a1[k]);
        double ends = ka * (ph - h1[k]) - kh * (pa - a1[k]);
        double slack = 1e-6 * (Math.abs(da) + ph + 1);
        double slackAcross = 1e-6 * (Math.abs(ka) + Math.abs(kh) + 1);
        return ((one > slack && two < -slack) || (one < -slack && two > slack))
                && ((begins > slackAcross && ends < -slackAcross) || (begins < -slackAcross && ends > slackAcross));
    }

    private void add(
            int e,
            int strip,
            int beyond,
            int k,
            double from,
            double to,
            double middles,
            boolean closes,
            List<SeamStretch> found) {
        if (k < 0 || !isFirst(e, k)) {
            return;
        }
        SeamWay first = way(k, from);
        SeamWay last = way(k, to);
        found.add(new SeamStretch(
                strip,
                beyond,
                far[k],
                sides.contour(e),
                sides.contour(edge[k]),
                edge[k],
                first,
                last,
                to - from,
                widest(k, from, to, middles),
                closes,
                sides.isKnown(beyond, strip) && sides.isKnown(far[k], strip)));
    }

    /**
     * The longest way of a stretch, and of those beyond the foot of the other edge's end, which are slanted and say nothing of how wide the strip
     * is, only where there are no others.
     */
    private double widest(int k, double from, double to, double middles) {
        double one = foot(a1[k], h1[k], k);
        double other = foot(a2[k], h2[k], k);
        double first = Math.max(from, Math.min(one, other));
        double last = Math.min(to, Math.max(one, other));
        return last - first >= SAME
                ? Math.max(distance(k, first), distance(k, last))
                : Math.max(middles, Math.max(distance(k, from), distance(k, to)));
    }

    /** From where on the edge at hand the way square to another edge leads to an end of that. */
    private double foot(double a, double h, int k) {
        double da = a2[k] - a1[k];
        return Math.abs(da) < SAME / 2 ? a : a + h * (h2[k] - h1[k]) / da;
    }

    private double distance(int k, double t) {
        double share = share(k, t);
        return SeamWay.size(a1[k] + share * (a2[k] - a1[k]) - t, h1[k] + share * (h2[k] - h1[k]));
    }

    private SeamWay way(int k, double t) {
        double share = share(k, t);
        int first = start[k];
        int second = edges.from()[edge[k]] == first ? edges.to()[edge[k]] : edges.from()[edge[k]];
        double x1 = edges.x()[first] - originX;
        double y1 = edges.y()[first] - originY;
        double x2 = edges.x()[second] - originX;
        double y2 = edges.y()[second] - originY;
        double toX = share == 1 ? x2 : x1 + share * (x2 - x1);
        double toY = share == 1 ? y2 : y1 + share * (y2 - y1);
        return SeamWay.of(originX, originY, t * ux, t * uy, toX, toY, -uy, ux);
    }
}
