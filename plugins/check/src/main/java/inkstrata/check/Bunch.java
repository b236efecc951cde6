package inkstrata.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Stretches of one set of films, as a tree: halved again and again down to single stretches, and those to their halves. */
final class Bunch {
    private final List<Stretch> stretches;
    private final double left;
    private final double top;
    private final double right;
    private final double bottom;
    private final double extent;
    private Optional<Bunch> first = Optional.empty();
    private Optional<Bunch> second = Optional.empty();

    /** @param stretches one or more */
    Bunch(List<Stretch> stretches) {
        this.stretches = stretches;
        double l = Double.POSITIVE_INFINITY;
        double t = Double.POSITIVE_INFINITY;
        double r = Double.NEGATIVE_INFINITY;
        double b = Double.NEGATIVE_INFINITY;
        for (Stretch stretch : stretches) {
            l = Math.min(l, Math.min(stretch.ax(), stretch.bx()));
            r = Math.max(r, Math.max(stretch.ax(), stretch.bx()));
            t = Math.min(t, Math.min(stretch.ay(), stretch.by()));
            b = Math.max(b, Math.max(stretch.ay(), stretch.by()));
        }
        left = l;
        top = t;
        right = r;
        bottom = b;
        extent = Math.sqrt((r - l) * (r - l) + (b - t) * (b - t));
    }

    boolean isSingle() {
        return stretches.size() == 1;
    }

    /** The first of its stretches; the only one if it is single. */
    Stretch stretch() {
        return stretches.get(0);
    }

    /** How far apart two of its places can be at most. */
    double extent() {
        return extent;
    }

    /** No place of one is nearer to a place of the other; exact between single stretches. */
    double distanceTo(Bunch other) {
        return isSingle() && other.isSingle() ? stretch().distanceTo(other.stretch()) : boxDistanceTo(other);
    }

    double boxDistanceTo(Bunch other) {
        double dx = Math.max(0, Math.max(left - other.right, other.left - right));
        double dy = Math.max(0, Math.max(top - other.bottom, other.top - bottom));
        return Math.sqrt(dx * dx + dy * dy);
    }

    Bunch firstHalf() {
        halve();
        return first.orElseThrow();
    }

    Bunch secondHalf() {
        halve();
        return second.orElseThrow();
    }

    private void halve() {
        if (first.isPresent()) {
            return;
        }
        if (isSingle()) {
            first = Optional.of(new Bunch(List.of(stretch().firstHalf())));
            second = Optional.of(new Bunch(List.of(stretch().secondHalf())));
            return;
        }
        Comparator<Stretch> across = right - left > bottom - top
                ? Comparator.comparingDouble(stretch -> stretch.ax() + stretch.bx())
                : Comparator.comparingDouble(stretch -> stretch.ay() + stretch.by());
        List<Stretch> sorted = stretches.stream().sorted(across).toList();
        first = Optional.of(new Bunch(sorted.subList(0, sorted.size() / 2)));
        second = Optional.of(new Bunch(sorted.subList(sorted.size() / 2, sorted.size())));
    }
}
