package inkstrata.check;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Stretches of one set of films, as a tree: halved again and again down to single stretches, and those to their halves. */
final class Bunch {
    private static final Comparator<Stretch> BY_X = Comparator.comparingDouble(stretch -> stretch.ax() + stretch.bx());
    private static final Comparator<Stretch> BY_Y = Comparator.comparingDouble(stretch -> stretch.ay() + stretch.by());

    private final int cover;
    private final double left;
    private final double top;
    private final double right;
    private final double bottom;
    private final double extent;
    /** The only stretch, or the first of several. */
    private final Stretch stretch;
    /** Two, or none if this is single. */
    private final List<Bunch> halves;

    /**
     * A bunch of its own.
     *
     * @param cover number of the set of films
     * @param stretches one or more
     */
    static Bunch of(int cover, List<Stretch> stretches) {
        return new Bunch(cover, stretches.toArray(Stretch[]::new), 0, stretches.size());
    }

    private Bunch(int cover, Stretch[] stretches, int from, int to) {
        double l = Double.POSITIVE_INFINITY;
        double t = Double.POSITIVE_INFINITY;
        double r = Double.NEGATIVE_INFINITY;
        double b = Double.NEGATIVE_INFINITY;
        for (int i = from; i < to; i++) {
            l = Math.min(l, Math.min(stretches[i].ax(), stretches[i].bx()));
            r = Math.max(r, Math.max(stretches[i].ax(), stretches[i].bx()));
            t = Math.min(t, Math.min(stretches[i].ay(), stretches[i].by()));
            b = Math.max(b, Math.max(stretches[i].ay(), stretches[i].by()));
        }
        this.cover = cover;
        left = l;
        top = t;
        right = r;
        bottom = b;
        extent = Math.sqrt((r - l) * (r - l) + (b - t) * (b - t));
        if (to - from > 1) {
            Arrays.sort(stretches, from, to, r - l > b - t ? BY_X : BY_Y);
            int middle = (from + to) >>> 1;
            halves = List.of(new Bunch(cover, stretches, from, middle), new Bunch(cover, stretches, middle, to));
        } else {
            halves = List.of();
        }
        stretch = stretches[from];
    }

    /** The number of the set of films that ends at these stretches. */
    int cover() {
        return cover;
    }

    boolean isSingle() {
        return halves.isEmpty();
    }

    /** The first of its stretches; the only one if it is single. */
    Stretch stretch() {
        return stretch;
    }

    /** How far apart two of its places can be at most. */
    double extent() {
        return extent;
    }

    /** No place of one is nearer to a place of the other; exact between single stretches. */
    double distanceTo(Bunch other) {
        return isSingle() && other.isSingle() ? stretch.distanceTo(other.stretch) : boxDistanceTo(other);
    }

    private double boxDistanceTo(Bunch other) {
        double dx = Math.max(0, Math.max(left - other.right, other.left - right));
        double dy = Math.max(0, Math.max(top - other.bottom, other.top - bottom));
        return Math.sqrt(dx * dx + dy * dy);
    }

    Bunch firstHalf() {
        return isSingle() ? of(cover, List.of(stretch.firstHalf())) : halves.get(0);
    }

    Bunch secondHalf() {
        return isSingle() ? of(cover, List.of(stretch.secondHalf())) : halves.get(1);
    }
}
