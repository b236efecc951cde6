package inkstrata.overprint;

import inkstrata.plan.Ink;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the fewest inks that make all colours of the artwork, each by its own ink or by others over each other, in one print order; of
 * equally few those that come nearest to the artwork, by area.
 *
 * <p>Branch and bound: sets of inks in the order of their size, from those that nothing else can make; for a set the colours
 * one by one, those with the fewest recipes first, as long as the differences so far and the least ones to come stay below the best known.
 *
 * <p>Ends: sets of up to 63 inks are finitely many, and all that grows with them takes from the effort: each set, each recipe that is asked
 * whether it fits a set, and each that is tried. When none is left every loop here stops at its next turn.
 */
final class FewestScreens {
    /**
     * A way to print.
     *
     * @param recipes for each colour, given by the ink that has it, the inks that make it
     * @param order which inks must lie over which, by position among the candidates
     * @param cost sum of area times difference
     * @param isExact whether nothing better can exist
     * @param least no fewer screens will do
     */
    record Found(Map<Ink, Recipe> recipes, LayOrder order, double cost, boolean isExact, int least) {}

    private final List<Ink> candidates;
    private final List<Ink> colours;
    private final Map<Ink, Double> areas;
    private final List<List<Choice>> choices = new ArrayList<>();
    private final boolean knowsAllRecipes;
    private final Effort effort;

    private Choice[] chosen;
    private Choice[] best;
    private LayOrder bestOrder;
    private double bestCost;
    private boolean isStopped;

    /** A recipe by numbers of candidates. */
    private record Choice(long set, int[] inks, double cost, Recipe recipe) {}

    /**
     * @param candidates inks to print with, at most 63
     * @param areas for each colour how much of it there is, in mm²
     * @param effort that may be made
     */
    FewestScreens(List<Ink> candidates, Map<Ink, Double> areas, Recipes recipes, Effort effort) {
        this.candidates = List.copyOf(candidates);
        this.areas = areas;
        this.knowsAllRecipes = recipes.isWhole();
        this.effort = effort;
        this.colours = recipes.ways().keySet().stream()
                .sorted(Comparator.comparingInt(
                        colour -> recipes.ways().get(colour).size()))
                .toList();
        colours.forEach(colour -> choices.add(recipes.ways().get(colour).stream()
                .map(recipe -> choice(colour, recipe))
                .toList()));
    }

    private Choice choice(Ink colour, Recipe recipe) {
        int[] inks = recipe.inks().stream().mapToInt(candidates::indexOf).toArray();
        long set = 0;
        for (int ink : inks) {
            set |= 1L << ink;
        }
        return new Choice(set, inks, areas.get(colour) * recipe.difference(), recipe);
    }

    /** The best, or the best that was found before the effort was spent; each colour by its own ink if nothing was. */
    Found find() {
        long must = 0;
        long may = 0;
        for (List<Choice> ways : choices) {
            if (ways.size() == 1) {
                must |= ways.get(0).set();
            }
            for (Choice way : ways) {
                may |= way.set();
            }
        }
        int least = Math.max(1, Long.bitCount(must));
        for (int size = least; size < colours.size(); size++) {
            bestCost = Double.POSITIVE_INFINITY;
            best = null;
            sets(must, may & ~must, size - Long.bitCount(must));
            if (best != null) {
                return found(!isStopped && knowsAllRecipes, size);
            }
            if (isStopped) {
                break;
            }
            least = size + 1;
        }
        best = choices.stream().map(ways -> ways.get(0)).toArray(Choice[]::new);
        bestOrder = LayOrder.free(candidates.size());
        return found(!isStopped && knowsAllRecipes, least);
    }

    private Found found(boolean isExact, int least) {
        Map<Ink, Recipe> recipes = new LinkedHashMap<>();
        double cost = 0;
        for (int colour = 0; colour < best.length; colour++) {
            recipes.put(colours.get(colour), best[colour].recipe());
            cost += best[colour].cost();
        }
        return new Found(recipes, bestOrder, cost, isExact, least);
    }

    /** Tries every set that adds so many of the others, in rising order. */
    private void sets(long set, long others, int more) {
        if (isStopped || more < 0 || more > Long.bitCount(others)) {
            return;
        }
        if (more == 0) {
            spend(Effort.SET);
            attempt(set);
            return;
        }
        long next = Long.lowestOneBit(others);
        sets(set | next, others & ~next, more - 1);
        sets(set, others & ~next, more);
    }

    /** The best way with one set of inks, if it is better than the best known. */
    private void attempt(long set) {
        List<List<Choice>> within = new ArrayList<>();
        double[] toCome = new double[colours.size() + 1];
        for (List<Choice> ways : choices) {
            Choice own = ways.get(0);
            boolean isOwn = (own.set() & ~set) == 0;
            List<Choice> fitting = isOwn
                    ? List.of(own)
                    : ways.stream().filter(way -> (way.set() & ~set) == 0).toList();
            spend(isOwn ? 0 : ways.size() / Effort.ASKED);
            if (fitting.isEmpty()) {
                return;
            }
            within.add(fitting);
        }
        for (int colour = colours.size() - 1; colour >= 0; colour--) {
            double least =
                    within.get(colour).stream().mapToDouble(Choice::cost).min().orElseThrow();
            toCome[colour] = toCome[colour + 1] + least;
        }
        chosen = new Choice[colours.size()];
        choose(0, 0, LayOrder.free(candidates.size()), within, toCome);
    }

    private void choose(int colour, double cost, LayOrder order, List<List<Choice>> within, double[] toCome) {
        if (cost + toCome[colour] >= bestCost || isStopped) {
            return;
        }
        if (colour == chosen.length) {
            best = chosen.clone();
            bestOrder = order;
            bestCost = cost;
            return;
        }
        for (Choice way : within.get(colour)) {
            if (isStopped) {
                return;
            }
            spend(Effort.SET);
            Optional<LayOrder> more = order.with(way.inks());
            if (more.isPresent()) {
                chosen[colour] = way;
                choose(colour + 1, cost + way.cost(), more.get(), within, toCome);
            }
        }
    }

    private void spend(int steps) {
        isStopped |= effort.isSpent(steps);
    }
}
