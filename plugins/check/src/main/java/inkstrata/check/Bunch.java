package inkstrata.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Stretches of one set of films, as a tree: halved again and again down to single stretches, and those to their halves. */
final class Bunch {
    private static final Comparator<Stretch> BY_X = Comparator.comparingDouble(stretch -> stretch.ax() + stretch.bx());
    private static final Comparator<Stretch> BY_Y = Comparator.comparingDouble(stretch -> stretch.ay() + stretch.by());

    private final int cover;
    private final Box box;
    /** From end to end; no place of any stretch is farther from it than {@link #spread}. */
    private final Stretch axis;

    private final double spread;
    private final double extent;
    private final boolean isSingle;
    private final Stretch stretch;
    private final List<Stretch> stretches;
    /** Found when they are first asked for, by whichever thread: always the same. */
    private Halves halves;

    private record Halves(Bunch first, Bunch second) {}

    /**
     * A bunch of its own.
     *
     * @param cover number of the set of films
     * @param stretches one or more
     */
    Bunch(int cover, List<Stretch> stretches) {
        Box all = Box.EMPTY;
        for (Stretch stretch : stretches) {
            all = all.with(Box.around(stretch));
        }
        this.cover = cover;
        this.box = all;
        this.extent = all.diagonal();
        this.isSingle = stretches.size() == 1;
        this.stretch = stretches.get(0);
        this.stretches = stretches;
        this.axis = isSingle ? stretch : axis(stretches, all);
        this.spread = isSingle ? 0 : spread(stretches, axis);
    }

    /** Between the ends that lie farthest apart along the longer side of the box around them. */
    private static Stretch axis(List<Stretch> stretches, Box box) {
        boolean isFlat = box.width() > box.height();
        Spot first = stretches.get(0).start();
        Spot last = first;
        for (Stretch one : stretches) {
            boolean isForward = isFlat ? one.ax() <= one.bx() : one.ay() <= one.by();
            Spot low = isForward ? one.start() : one.end();
            Spot high = isForward ? one.end() : one.start();
            if (isFlat ? low.x() < first.x() : low.y() < first.y()) {
                first = low;
            }
            if (isFlat ? high.x() > last.x() : high.y() > last.y()) {
                last = high;
            }
        }
        return Stretch.between(first, last);
    }

    /** How far the stretches leave the axis; their ends tell, as what is that near to it is convex. */
    private static double spread(List<Stretch> stretches, Stretch axis) {
        double most = 0;
        for (Stretch one : stretches) {
            most = Math.max(most, Math.max(axis.squareTo(one.ax(), one.ay()), axis.squareTo(one.bx(), one.by())));
        }
        return Math.sqrt(most);
    }

    /** The number of the set of films that ends at these stretches. */
    int cover() {
        return cover;
    }

    boolean isSingle() {
        return isSingle;
    }

    /** The first of its stretches; the only one if it is single. */
    Stretch stretch() {
        return stretch;
    }

    /** How far apart two of its places can be at most. */
    double extent() {
        return extent;
    }

    /**
     * No place of one is nearer to a place of the other; exact between single stretches. Between others by the boxes around them,
     * and where that tells too little, by their axes: two borders side by side are told apart by these though they run aslant.
     *
     * @param enough more need not be told
     */
    double distanceTo(Bunch other, double enough) {
        if (isSingle && other.isSingle) {
            return stretch.distanceTo(other.stretch);
        }
        double apart = box.distanceTo(other.box);
        return apart >= enough ? apart : Math.max(apart, axis.distanceTo(other.axis) - spread - other.spread);
    }

    Bunch firstHalf() {
        return isSingle ? new Bunch(cover, List.of(stretch.firstHalf())) : halves().first;
    }

    Bunch secondHalf() {
        return isSingle ? new Bunch(cover, List.of(stretch.secondHalf())) : halves().second;
    }

    private Halves halves() {
        Halves known = halves;
        if (known == null) {
            List<Stretch> sorted = new ArrayList<>(stretches);
            sorted.sort(box.width() > box.height() ? BY_X : BY_Y);
            int middle = sorted.size() / 2;
            known = new Halves(
                    new Bunch(cover, sorted.subList(0, middle)),
                    new Bunch(cover, sorted.subList(middle, sorted.size())));
            halves = known;
        }
        return known;
    }
}
