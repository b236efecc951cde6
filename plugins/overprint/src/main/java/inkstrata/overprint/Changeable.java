package inkstrata.overprint;

import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
import inkstrata.planar.Region;
import inkstrata.planar.RegionWindow;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** Where one pull may print beneath another or not, as nobody sees: by stacks. */
final class Changeable {
    private static final int UNKNOWN = -2;
    private static final int NONE = -1;

    private final Separation separation;
    private final List<Pull> pulls;
    private final int pull;
    private final Rules rules;
    private final Row[] rows;
    /** For each stack the pull beneath which this one may change there. */
    private final int[] over;

    Changeable(Separation separation, int pull, Rules rules) {
        this.separation = separation;
        this.pulls = separation.plan().pulls();
        this.pull = pull;
        this.rules = rules;
        int stacks = separation.map().stacks().size();
        rows = new Row[stacks];
        over = new int[stacks];
        Arrays.fill(over, UNKNOWN);
        separation.table().rows().forEach(row -> rows[row.stack()] = row);
    }

    /** Tells beneath which pulls that print at both sides this one ends between two stacks, and may end elsewhere. */
    void covers(int left, int right, IntConsumer told) {
        StackSet prints = pulls.get(pull).prints();
        if (prints.contains(left) != prints.contains(right)) {
            int one = over(left);
            int other = over(right);
            if (isHiddenBy(one, right)) {
                told.accept(one);
            }
            if (other != one && isHiddenBy(other, left)) {
                told.accept(other);
            }
        }
    }

    private boolean isHiddenBy(int cover, int other) {
        return cover >= 0 && pulls.get(cover).prints().contains(other);
    }

    /** For each of some pulls where beneath it this one may change: what may be taken away, and what may be added. */
    Map<Integer, Places> places(Set<Integer> covers) {
        StackSet prints = pulls.get(pull).prints();
        List<StackSet> sets = new ArrayList<>();
        for (int cover : covers) {
            StackSet all = StackSet.of(IntStream.range(0, over.length).filter(stack -> over(stack) == cover));
            sets.add(all.and(prints));
            sets.add(all.minus(prints));
        }
        List<Region> regions = separation.map().dissolveAll(sets);
        Map<Integer, Places> places = new TreeMap<>();
        for (int cover : covers) {
            int at = 2 * places.size();
            places.put(cover, new Places(new RegionWindow(regions.get(at)), new RegionWindow(regions.get(at + 1))));
        }
        return places;
    }

    /**
     * Beneath one other pull.
     *
     * @param mayGo where it prints and need not
     * @param mayCome where it does not print and may
     */
    record Places(RegionWindow mayGo, RegionWindow mayCome) {}

    private int over(int stack) {
        if (over[stack] == UNKNOWN) {
            over[stack] = cover(rows[stack]);
        }
        return over[stack];
    }

    /** The pull of what shows, if it prints there, nearer to the eye than this one, and its colour may do with or without this one. */
    private int cover(Row row) {
        if (row == null || row.top().isEmpty() || !row.drawings().isEmpty()) {
            return NONE;
        }
        Ink top = row.top().get();
        for (int cover = 0; cover < pulls.size(); cover++) {
            if (pulls.get(cover).ink().equals(top)
                    && cover != pull
                    && pulls.get(cover).prints().contains(row.stack())
                    && separation.isNearer(cover, pull)) {
                return mayChange(row, top) ? cover : NONE;
            }
        }
        return NONE;
    }

    private boolean mayChange(Row row, Ink top) {
        boolean isAdded = !pulls.get(pull).prints().contains(row.stack());
        List<Ink> beneath = new ArrayList<>();
        for (int other = 0; other < pulls.size(); other++) {
            boolean prints = other == pull ? isAdded : pulls.get(other).prints().contains(row.stack());
            if (prints && !pulls.get(other).ink().equals(top)) {
                beneath.add(pulls.get(other).ink());
            }
        }
        beneath.sort(rules.nearness());
        return beneath.stream().allMatch(ink -> rules.nearness().compare(ink, top) < 0)
                && beneath.size() < rules.mostFilms()
                && rules.prediction().fromSwatch(top, beneath)
                        <= Math.max(rules.tolerance(), rules.prediction().fromSwatch(top, List.of()));
    }
}
