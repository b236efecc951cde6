package inkstrata.overprint;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.plan.Ink;
import inkstrata.plan.Prediction;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/**
 * All ways to make colours of the artwork of inks that lie over each other.
 *
 * @param ways for each colour, given by the ink that has it, the closest first; its own ink alone comes before all
 * @param isWhole whether all were looked at before the effort was spent
 */
record Recipes(Map<Ink, List<Recipe>> ways, boolean isWhole) {
    /**
     * What is looked for.
     *
     * @param colours of the artwork, each given by the ink that has it, with the inks that lie beneath it in any case
     * @param candidates inks to make them of
     * @param mayLieOver whether the first ink may be nearer to the eye than the second
     * @param tolerance a colour comes out no farther from the artwork's (CIEDE2000), or no farther than by its own ink
     * @param mostFilms over each other
     */
    record Wanted(
            Map<Ink, List<Ink>> colours,
            List<Ink> candidates,
            BiPredicate<Ink, Ink> mayLieOver,
            double tolerance,
            int mostFilms) {}

    /** Looks at thinner piles first. Ends: so many films at most, and each pile and each recipe takes from the effort. */
    static Recipes of(Wanted wanted, Sheet sheet, Effort effort) {
        Prediction prediction = new Prediction(sheet);
        Map<Ink, List<Recipe>> ways = new LinkedHashMap<>();
        Map<Ink, Lab> targets = new LinkedHashMap<>();
        Map<Ink, Double> allowed = new LinkedHashMap<>();
        wanted.colours().forEach((colour, ground) -> {
            double alone = prediction.fromSwatch(colour, ground);
            targets.put(colour, Lab.of(colour.swatch()));
            allowed.put(colour, Math.max(wanted.tolerance(), alone));
            ways.put(colour, new ArrayList<>(List.of(new Recipe(List.of(colour), alone))));
        });
        List<List<Ink>> piles = List.of(List.of());
        boolean isWhole = true;
        for (int films = 1; films <= wanted.mostFilms() && isWhole; films++) {
            List<List<Ink>> higher = new ArrayList<>();
            for (List<Ink> pile : piles) {
                for (Ink ink : wanted.candidates()) {
                    if (isWhole && mayLieOver(ink, pile, wanted, sheet)) {
                        isWhole = !effort.isSpent(Effort.PILE);
                        List<Ink> more = with(List.of(ink), pile);
                        higher.add(more);
                        for (Map.Entry<Ink, Lab> target : targets.entrySet()) {
                            Ink colour = target.getKey();
                            double difference = Ciede2000.difference(
                                    target.getValue(),
                                    prediction.lab(with(more, wanted.colours().get(colour))));
                            if (!more.contains(colour) && difference <= allowed.get(colour)) {
                                isWhole &= !effort.isSpent(Effort.RECIPE);
                                ways.get(colour).add(new Recipe(more, difference));
                            }
                        }
                    }
                }
            }
            piles = higher;
        }
        ways.values()
                .forEach(list -> list.subList(1, list.size()).sort(Comparator.comparingDouble(Recipe::difference)));
        return new Recipes(ways, isWhole);
    }

    private static boolean mayLieOver(Ink ink, List<Ink> pile, Wanted wanted, Sheet sheet) {
        return !pile.contains(ink)
                && pile.stream()
                        .allMatch(under -> wanted.mayLieOver().test(ink, under)
                                && (sheet.side(ink) == Side.FRONT || sheet.side(under) == Side.BACK));
    }

    private static List<Ink> with(List<Ink> pile, List<Ink> ground) {
        if (ground.isEmpty()) {
            return pile;
        }
        List<Ink> all = new ArrayList<>(ground);
        all.addAll(pile);
        return List.copyOf(all);
    }
}
