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

    /**
     * After so many halvings in one cell the search takes the safe side: what is left is taken for openings as small as they could be.
     * Cells of the samples take 4,000 at most, the hardest of the tests, two borders beside a strip of sheet, 190,000 (our own choice).
     */
    private static final int MOST_HALVINGS = 1_000_000;

    private final FilmMap map;
    private final Shore shore;
    /** What lies in the cell and around it, by rising number of the set of films. */
    private final List<Bunch> around = new ArrayList<>();

    private final boolean isOnlyLost;
    private double bound;
    private int halvings;
    private Optional<Opening> best = Optional.empty();

    private SmallestOpening(FilmMap map, Outlines outlines, List<Bunch> around, double bound, boolean isOnlyLost) {
        this.isOnlyLost = isOnlyLost;
        this.map = map;
        this.shore = outlines.shore();
        this.bound = bound;
        this.around.addAll(around);
        this.around.sort(Comparator.comparingInt(Bunch::cover));
    }

    /**
     * Looks for it.
     *
     * @param bound larger ones, or those hardly smaller, don't count; in grid steps
     */
    static Optional<Opening> of(FilmMap map, Outlines outlines, long cell, double bound) {
        return new SmallestOpening(map, outlines, around(cell, outlines), bound, false)
                .found(outlines.exits().in(cell));
    }

    /** Likewise, but only of those that have a place where a film does not print what it was to print. */
    static Optional<Opening> ofLost(FilmMap map, Outlines outlines, long cell, double bound) {
        SmallestOpening search = new SmallestOpening(map, outlines, around(cell, outlines), bound, true);
        return search.isLost(search.around) ? search.found(outlines.exits().in(cell)) : Optional.empty();
    }

    /**
     * The smallest whose places all lie near one.
     *
     * @param radius how near, in grid steps
     */
    static Optional<Opening> near(FilmMap map, Outlines outlines, Spot middle, double radius, double bound) {
        List<Bunch> near = new ArrayList<>();
        outlines.exits().near(Box.around(middle).wider(radius + outlines.exits().size()), bunch -> {
            Bunch there = new Bunch(bunch.cover(), List.of(Stretch.between(middle, middle)));
            addNear(bunch, there, radius, near);
        });
        return new SmallestOpening(map, outlines, near, bound, false).found(near);
    }

    private static void addNear(Bunch bunch, Bunch there, double radius, List<Bunch> near) {
        if (bunch.distanceTo(there, radius) >= radius) {
            return;
        }
        if (bunch.isSingle() || bunch.extent() < radius / 2) {
            near.add(bunch);
        } else {
            addNear(bunch.firstHalf(), there, radius, near);
            addNear(bunch.secondHalf(), there, radius, near);
        }
    }

    private static List<Bunch> around(long cell, Outlines outlines) {
        List<Bunch> around = new ArrayList<>();
        outlines.exits().around(cell, around::add);
        return around;
    }

    private Optional<Opening> found(List<Bunch> first) {
        for (Bunch one : first) {
            extend(List.of(one), map.films(one.cover()), above(one));
        }
        return best;
    }

    private boolean isLost(List<Bunch> bunches) {
        return bunches.stream().anyMatch(bunch -> map.isLost(bunch.cover()));
    }

    /** Sets of films with higher numbers, so that nothing is found twice. */
    private List<Bunch> above(Bunch one) {
        int first = 0;
        while (first < around.size() && around.get(first).cover() <= one.cover()) {
            first++;
        }
        return around.subList(first, around.size());
    }

    /**
     * Adds sets of films until they have none in common. One that they have must be missing in some set to be added: tried are those that lack
     * the film that fewest lack. Ends: each call takes at least one film from those in common.
     *
     * @param common the films that all so far have
     * @param candidates that may be added; all others have been looked at
     */
    private void extend(List<Bunch> bunches, BitSet common, List<Bunch> candidates) {
        List<Bunch> near = new ArrayList<>();
        for (Bunch next : candidates) {
            if (!isFar(next, bunches)) {
                near.add(next);
            }
        }
        int film = fewestLack(common, near);
        for (int at = 0; at < near.size(); at++) {
            Bunch next = near.get(at);
            BitSet films = map.films(next.cover());
            if (films.get(film)) {
                continue;
            }
            near.remove(at--);
            if (isFar(next, bunches) || !needsEach(bunches, next)) {
                continue;
            }
            List<Bunch> more = new ArrayList<>(bunches);
            more.add(next);
            BitSet left = (BitSet) common.clone();
            left.and(films);
            if (left.isEmpty()) {
                if (!isOnlyLost || isLost(more)) {
                    narrow(more.toArray(Bunch[]::new));
                }
            } else {
                extend(more, left, near);
            }
        }
    }

    /** The one of some films that fewest bunches lack. */
    private int fewestLack(BitSet films, List<Bunch> bunches) {
        int found = -1;
        int fewest = Integer.MAX_VALUE;
        for (int film = films.nextSetBit(0); film >= 0; film = films.nextSetBit(film + 1)) {
            int lacking = 0;
            for (Bunch bunch : bunches) {
                lacking += map.films(bunch.cover()).get(film) ? 0 : 1;
            }
            if (lacking < fewest) {
                fewest = lacking;
                found = film;
            }
        }
        return found;
    }

    private boolean isFar(Bunch next, List<Bunch> bunches) {
        for (Bunch bunch : bunches) {
            if (isTooFar(bunch.distanceTo(next, bound))) {
                return true;
            }
        }
        return false;
    }

    /** Whether each bunch, and one more, lacks a film that all the others have. */
    private boolean needsEach(List<Bunch> bunches, Bunch next) {
        List<Bunch> all = new ArrayList<>(bunches);
        all.add(next);
        for (Bunch needed : all) {
            BitSet others = null;
            for (Bunch other : all) {
                if (other != needed) {
                    BitSet films = map.films(other.cover());
                    if (others == null) {
                        others = (BitSet) films.clone();
                    } else {
                        others.and(films);
                    }
                }
            }
            others.andNot(map.films(needed.cover()));
            if (others.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private boolean isTooFar(double distance) {
        return distance >= bound - EXACT;
    }

    /**
     * Leaves the bunches as they were. Ends: each call halves the largest bunch, until all hold a single stretch no longer than
     * {@link #FINEST}, which settles them; and after {@link #MOST_HALVINGS} nothing is halved any more.
     */
    private void narrow(Bunch[] bunches) {
        double least = 0;
        int longest = 0;
        boolean areSingle = true;
        for (int i = 0; i < bunches.length; i++) {
            areSingle &= bunches[i].isSingle();
            longest = toHalve(bunches[i]) > toHalve(bunches[longest]) ? i : longest;
            for (int j = 0; j < i; j++) {
                least = Math.max(least, bunches[i].distanceTo(bunches[j], bound));
            }
        }
        if (isTooFar(least) || (areSingle && isSettled(bunches, least))) {
            return;
        }
        if (++halvings > MOST_HALVINGS) {
            takeForSmallest(bunches, least);
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

    /** Ends the search of some bunches: no opening on them is smaller than they are apart. */
    private void takeForSmallest(Bunch[] bunches, double apart) {
        List<Spot> spots =
                Arrays.stream(bunches).map(bunch -> bunch.stretch().start()).toList();
        bound = apart;
        best = Optional.of(new Opening(apart, spots, films(bunches), isLost(List.of(bunches)), false));
    }

    /** The larger, the sooner; not single ones that are as small as may be, even if the others are smaller. */
    private static double toHalve(Bunch bunch) {
        return bunch.isSingle() && bunch.extent() <= FINEST ? -1 : bunch.extent();
    }

    private double sum(Bunch half, Bunch[] bunches, int halved) {
        double sum = 0;
        for (int i = 0; i < bunches.length; i++) {
            sum += i == halved ? 0 : half.distanceTo(bunches[i], bound);
        }
        return sum;
    }

    /** Whether single stretches need no halving: the best of them is known, or sheet lies between them wherever on them places are. */
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
            best = Optional.of(new Opening(size, spots, films(bunches), isLost(List.of(bunches)), true));
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
                for (int k = 0; k < j; k++) {
                    if (shore.isAmid(stretches.get(i), stretches.get(j), stretches.get(k))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
