package inkstrata.overprint;

import inkstrata.plan.Ink;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Sets of some inks, in a fixed order: those of most inks first, of equally many those whose inks come first.
 *
 * <p>So which set is the first that will do does not depend on inks that are not in it. After {@value #MOST} sets the search ends, and
 * inks are taken one by one instead, each that will do together with those before.
 */
final class InkSets {
    /** Enough for any drawing that was seen; each takes a prediction, some microseconds. */
    static final int MOST = 2_000;

    private final List<Ink> inks;
    private final int most;
    private final boolean withFirst;
    private int tried;

    /**
     * @param inks in their order
     * @param most how many a set may hold, 1 or more and no more than there are
     * @param withFirst whether every set holds the first ink
     */
    InkSets(List<Ink> inks, int most, boolean withFirst) {
        this.inks = List.copyOf(inks);
        this.most = most;
        this.withFirst = withFirst;
    }

    /** The first set that will do; none if no set does. */
    Optional<List<Ink>> first(Predicate<List<Ink>> willDo) {
        for (int size = most; size > 0 && isWhole(); size--) {
            Optional<List<Ink>> found =
                    withFirst ? first(inks.subList(0, 1), 1, size - 1, willDo) : first(List.of(), 0, size, willDo);
            if (found.isPresent()) {
                return found;
            }
        }
        return isWhole() ? Optional.empty() : oneByOne(willDo);
    }

    /** Whether all sets were tried that come before the one that was found. */
    boolean isWhole() {
        return tried < MOST;
    }

    /** Adds so many of the inks from a place on; ends, since the place rises. */
    private Optional<List<Ink>> first(List<Ink> chosen, int from, int more, Predicate<List<Ink>> willDo) {
        if (more == 0) {
            tried++;
            return isWhole() && willDo.test(chosen) ? Optional.of(chosen) : Optional.empty();
        }
        for (int next = from; next + more <= inks.size() && isWhole(); next++) {
            List<Ink> with = new ArrayList<>(chosen);
            with.add(inks.get(next));
            Optional<List<Ink>> found = first(with, next + 1, more - 1, willDo);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<List<Ink>> oneByOne(Predicate<List<Ink>> willDo) {
        List<Ink> chosen = new ArrayList<>();
        for (Ink ink : inks) {
            chosen.add(ink);
            if (chosen.size() > most || !willDo.test(List.copyOf(chosen))) {
                chosen.remove(chosen.size() - 1);
            }
        }
        boolean isComplete = !chosen.isEmpty() && (!withFirst || chosen.get(0).equals(inks.get(0)));
        return isComplete ? Optional.of(List.copyOf(chosen)) : Optional.empty();
    }
}
