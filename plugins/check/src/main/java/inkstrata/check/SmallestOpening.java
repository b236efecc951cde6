package inkstrata.check;

import inkstrata.check.Outlines.Exit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

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
    private final NavigableMap<Integer, Bunch> here;
    private final NavigableMap<Integer, Bunch> around;
    private double bound;
    private Optional<Opening> best = Optional.empty();

    private SmallestOpening(FilmMap map, Outlines outlines, long cell, double bound) {
        this.map = map;
        this.shore = outlines.shore();
        this.bound = bound;
        List<Exit> near = new ArrayList<>();
        outlines.exits().around(cell, near::add);
        this.here = bunches(outlines.exits().things().get(cell));
        this.around = bunches(near);
    }

    /**
     * Looks for it.
     *
     * @param bound larger ones, or those hardly smaller, don't count; in grid steps
     */
    static Optional<Opening> of(FilmMap map, Outlines outlines, long cell, double bound) {
        SmallestOpening search = new SmallestOpening(map, outlines, cell, bound);
        for (Map.Entry<Integer, Bunch> one : search.here.entrySet()) {
            search.extend(List.of(one.getKey()), List.of(one.getValue()));
        }
        return search.best;
    }

    private static NavigableMap<Integer, Bunch> bunches(List<Exit> exits) {
        NavigableMap<Integer, List<Stretch>> byCover = new TreeMap<>();
        for (Exit exit : exits) {
            byCover.computeIfAbsent(exit.cover(), cover -> new ArrayList<>()).add(exit.stretch());
        }
        NavigableMap<Integer, Bunch> bunches = new TreeMap<>();
        byCover.forEach((cover, stretches) -> bunches.put(cover, new Bunch(stretches)));
        return bunches;
    }

    /** Adds sets with higher numbers, each of which takes out a film that all so far have in common. */
    private void extend(List<Integer> covers, List<Bunch> bunches) {
        int last = covers.get(covers.size() - 1);
        for (Map.Entry<Integer, Bunch> next : around.tailMap(last, false).entrySet()) {
            if (bunches.stream().anyMatch(bunch -> isTooFar(bunch.boxDistanceTo(next.getValue())))) {
                continue;
            }
            List<Integer> more = new ArrayList<>(covers);
            more.add(next.getKey());
            if (!needsEach(more)) {
                continue;
            }
            List<Bunch> moreBunches = new ArrayList<>(bunches);
            moreBunches.add(next.getValue());
            if (common(more, -1).isEmpty()) {
                narrow(more, moreBunches);
            } else {
                extend(more, moreBunches);
            }
        }
    }

    private boolean needsEach(List<Integer> covers) {
        BitSet all = common(covers, -1);
        for (int without = 0; without < covers.size(); without++) {
            if (common(covers, without).equals(all)) {
                return false;
            }
        }
        return true;
    }

    /** The films that all those sets have in common, but for the one at a position. */
    private BitSet common(List<Integer> covers, int without) {
        BitSet common = (BitSet) map.films(covers.get(without == 0 ? 1 : 0)).clone();
        for (int i = 0; i < covers.size(); i++) {
            if (i != without) {
                common.and(map.films(covers.get(i)));
            }
        }
        return common;
    }

    private boolean isTooFar(double distance) {
        return distance >= bound - EXACT;
    }

    private void narrow(List<Integer> covers, List<Bunch> bunches) {
        double least = 0;
        int longest = 0;
        boolean areSingle = true;
        for (int i = 0; i < bunches.size(); i++) {
            areSingle &= bunches.get(i).isSingle();
            longest = bunches.get(i).extent() > bunches.get(longest).extent() ? i : longest;
            for (int j = 0; j < i; j++) {
                least = Math.max(least, bunches.get(i).distanceTo(bunches.get(j)));
            }
        }
        if (isTooFar(least) || (areSingle && isSettled(covers, bunches, least))) {
            return;
        }
        List<Bunch> one = new ArrayList<>(bunches);
        one.set(longest, bunches.get(longest).firstHalf());
        List<Bunch> other = new ArrayList<>(bunches);
        other.set(longest, bunches.get(longest).secondHalf());
        boolean inOrder = sum(one, longest) <= sum(other, longest);
        narrow(covers, inOrder ? one : other);
        narrow(covers, inOrder ? other : one);
    }

    private static double sum(List<Bunch> bunches, int changed) {
        double sum = 0;
        for (Bunch bunch : bunches) {
            sum += bunch.distanceTo(bunches.get(changed));
        }
        return sum;
    }

    /** Whether single stretches need no halving: the best of them is known, or sheet lies between them. */
    private boolean isSettled(List<Integer> covers, List<Bunch> bunches, double least) {
        List<Stretch> stretches = bunches.stream().map(Bunch::stretch).toList();
        List<Spot> spots = NearestSpots.on(stretches);
        double size = Opening.size(spots);
        if (size < bound && shore.isClear(spots)) {
            bound = size;
            best = Optional.of(
                    new Opening(size, spots, covers.stream().map(map::films).toList()));
        }
        if (isTooFar(least)) {
            return true;
        }
        boolean isFine = stretches.stream().allMatch(stretch -> stretch.length() <= FINEST);
        return isFine || isParted(stretches);
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
