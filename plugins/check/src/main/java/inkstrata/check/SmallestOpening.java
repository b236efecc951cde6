package inkstrata.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The smallest opening with a place in one cell, by branch and bound.
 *
 * <p>Sets of films without a film in common, none of which could be left out, are taken together; of each the stretches where it
 * ends. What is farther apart than the best so far is dropped, the longest of the rest is halved. {@code docs/limit.md} says why no
 * opening is smaller than what is found, but by {@link #EXACT}.
 */
final class SmallestOpening {
    /** Smaller improvements are not looked for, in grid steps (2 µm). */
    static final double EXACT = 8;

    /** Stretches as short as this, in grid steps (one micrometre), are not halved. */
    private static final double FINEST = 4;

    private final FilmMap map;
    private final Shore shore;
    /** What lies in the cell and around it, by rising number of the set of films. */
    private final List<Bunch> around = new ArrayList<>();

    private double bound;
    private Optional<Opening> best = Optional.empty();

    private SmallestOpening(FilmMap map, Outlines outlines, long cell, double bound) {
        this.map = map;
        this.shore = outlines.shore();
        this.bound = bound;
        outlines.exits().around(cell, around::add);
        around.sort(Comparator.comparingInt(Bunch::cover));
    }

    /**
     * Looks for it.
     *
     * @param bound larger ones, or those hardly smaller, don't count; in grid steps
     */
    static Optional<Opening> of(FilmMap map, Outlines outlines, long cell, double bound) {
        SmallestOpening search = new SmallestOpening(map, outlines, cell, bound);
        for (Bunch one : outlines.exits().in(cell)) {
            search.extend(List.of(one), search.above(one));
        }
        return search.best;
    }

    /** Sets of films with higher numbers, so that nothing is found twice. */
    private List<Bunch> above(Bunch one) {
        return around.stream().filter(next -> next.cover() > one.cover()).toList();
    }

    /**
     * Adds sets of films until they have none in common. One that they have must be missing in some set to be added: tried are those that lack
     * the film that fewest lack.
     *
     * @param candidates that may be added; all with others have been looked at
     */
    private void extend(List<Bunch> bunches, List<Bunch> candidates) {
        List<Bunch> near = new ArrayList<>(candidates);
        near.removeIf(next -> isFar(next, bunches));
        for (Bunch next : fewestLacking(common(bunches, -1), near)) {
            near.remove(next);
            List<Bunch> more = new ArrayList<>(bunches);
            more.add(next);
            if (isFar(next, bunches) || !needsEach(more)) {
                continue;
            }
            if (common(more, -1).isEmpty()) {
                narrow(more.toArray(Bunch[]::new));
            } else {
                extend(more, near);
            }
        }
    }

    /** Of some bunches those that lack one film, the one of some films that fewest of them lack. */
    private List<Bunch> fewestLacking(BitSet films, List<Bunch> bunches) {
        return films.stream()
                .mapToObj(film -> bunches.stream()
                        .filter(bunch -> !map.films(bunch.cover()).get(film))
                        .toList())
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    private boolean isFar(Bunch next, List<Bunch> bunches) {
        for (Bunch bunch : bunches) {
            if (isTooFar(bunch.distanceTo(next))) {
                return true;
            }
        }
        return false;
    }

    private boolean needsEach(List<Bunch> bunches) {
        BitSet all = common(bunches, -1);
        for (int without = 0; without < bunches.size(); without++) {
            if (common(bunches, without).equals(all)) {
                return false;
            }
        }
        return true;
    }

    /** The films that the sets of all bunches have in common, but for the one at a position. */
    private BitSet common(List<Bunch> bunches, int without) {
        BitSet common =
                (BitSet) map.films(bunches.get(without == 0 ? 1 : 0).cover()).clone();
        for (int i = 0; i < bunches.size(); i++) {
            if (i != without) {
                common.and(map.films(bunches.get(i).cover()));
            }
        }
        return common;
    }

    private boolean isTooFar(double distance) {
        return distance >= bound - EXACT;
    }

    /** Leaves the bunches as they were. */
    private void narrow(Bunch[] bunches) {
        double least = 0;
        int longest = 0;
        boolean areSingle = true;
        for (int i = 0; i < bunches.length; i++) {
            areSingle &= bunches[i].isSingle();
            longest = bunches[i].extent() > bunches[longest].extent() ? i : longest;
            for (int j = 0; j < i; j++) {
                least = Math.max(least, bunches[i].distanceTo(bunches[j]));
            }
        }
        if (isTooFar(least) || (areSingle && isSettled(bunches, least))) {
            return;
        }
        Bunch whole = bunches[longest];
        Bunch one = whole.firstHalf();
        Bunch other = whole.secondHalf();
        boolean inOrder = sum(one, bunches, longest) <= sum(other, bunches, longest);
        bunches[longest] = inOrder ? one : other;
        narrow(bunches);
        bunches[longest] = inOrder ? other : one;
        narrow(bunches);
        bunches[longest] = whole;
    }

    private static double sum(Bunch half, Bunch[] bunches, int halved) {
        double sum = 0;
        for (int i = 0; i < bunches.length; i++) {
            sum += i == halved ? 0 : half.distanceTo(bunches[i]);
        }
        return sum;
    }

    /** Whether single stretches need no halving: the best of them is known, or sheet lies between them. */
    private boolean isSettled(Bunch[] bunches, double least) {
        List<Stretch> stretches = new ArrayList<>(bunches.length);
        double longest = 0;
        for (Bunch bunch : bunches) {
            stretches.add(bunch.stretch());
            longest = Math.max(longest, bunch.extent());
        }
        List<Spot> spots = NearestSpots.on(stretches);
        double size = Opening.size(spots);
        if (size < bound && shore.isClear(spots)) {
            bound = size;
            best = Optional.of(new Opening(size, spots, films(bunches)));
        }
        return isTooFar(least) || longest <= FINEST || isParted(stretches);
    }

    private List<BitSet> films(Bunch[] bunches) {
        return Arrays.stream(bunches).map(bunch -> map.films(bunch.cover())).toList();
    }

    private boolean isParted(List<Stretch> stretches) {
        for (int i = 0; i < stretches.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (shore.isAcross(stretches.get(i), stretches.get(j))) {
                    return true;
                }
            }
        }
        return false;
    }
}
