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

    /** No place of one is nearer to a place of the other; exact between single stretches. */
    double distanceTo(Bunch other) {
        return isSingle && other.isSingle ? stretch.distanceTo(other.stretch) : box.distanceTo(other.box);
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
