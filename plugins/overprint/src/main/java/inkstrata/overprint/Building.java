package inkstrata.overprint;

import inkstrata.job.Job;
import inkstrata.overprint.FewestScreens.Found;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.PrintingOrder;
import inkstrata.plan.Pull;
import inkstrata.plan.Side;
import inkstrata.planar.StackSet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Prints colours by overlaps of other inks where that comes close enough, so that they need no screens of their own.
 *
 * @param table of the artwork
 * @param soFar a plan in which each place prints what shows
 * @param job what is asked for
 * @param tolerance how far a colour may come out from the artwork's (CIEDE2000)
 * @param mostFilms over each other
 */
record Building(PlanningTable table, PrintPlan soFar, Job job, double tolerance, int mostFilms) {
    private static final int MOST_CANDIDATES = 63;

    /** The plan with fewer screens, or with a decision that says why there are as many as before. */
    PrintPlan plan() {
        return plan(new Effort(Effort.MUCH));
    }

    PrintPlan plan(Effort effort) {
        Map<Ink, Double> areas = new LinkedHashMap<>();
        Map<Ink, List<Ink>> grounds = new LinkedHashMap<>();
        for (Row row : table.rows()) {
            if (row.top().isPresent() && row.areaMm2() > 0) {
                areas.merge(row.top().get(), row.areaMm2(), Double::sum);
                grounds.putIfAbsent(row.top().get(), Overprint.already(row, soFar));
            }
        }
        if (areas.size() > MOST_CANDIDATES) {
            return soFar.withDecision(new Decision(
                    "overprint",
                    "",
                    "Each of the " + areas.size() + " colours keeps a screen.",
                    "Overlaps are looked for among " + MOST_CANDIDATES
                            + " colours at most: ask for fewer inks first (--inks)."));
        }
        List<Ink> candidates = Stream.concat(areas.keySet().stream(), table.spare().stream())
                .filter(ink -> ink.from().isEmpty())
                .limit(MOST_CANDIDATES)
                .toList();
        Recipes.Wanted wanted = new Recipes.Wanted(grounds, candidates, mayLieOver(candidates), tolerance, mostFilms);
        Recipes recipes = Recipes.of(wanted, table.sheet(), effort);
        Found found = new FewestScreens(candidates, areas, recipes, effort).find();
        PrintPlan plan = soFar.withPulls(pulls(found, candidates));
        int screens = (int) found.recipes().values().stream()
                .flatMap(recipe -> recipe.inks().stream())
                .distinct()
                .count();
        plan = plan.withDecision(
                new Decision("overprint", "", what(screens, areas.size()), why(found, screens, areas)));
        for (Map.Entry<Ink, Recipe> entry : found.recipes().entrySet()) {
            if (!entry.getValue().inks().equals(List.of(entry.getKey()))) {
                plan = plan.withDecision(built(entry.getKey(), entry.getValue()));
            }
        }
        return plan;
    }

    /** As the job asks; anyhow if it does not. */
    private BiPredicate<Ink, Ink> mayLieOver(List<Ink> candidates) {
        if (job.order().names().isEmpty()) {
            return (above, under) -> true;
        }
        List<Ink> farthestFirst = farthestFirst(candidates);
        return (above, under) -> farthestFirst.indexOf(above) > farthestFirst.indexOf(under);
    }

    private List<Ink> farthestFirst(List<Ink> inks) {
        PlanningTable all = new PlanningTable(table.sheet(), inks, List.of(), table.rows(), table.neighbours());
        List<String> names = job.order().names().stream()
                .filter(name -> name.equals(PrintingOrder.THE_REST)
                        || inks.stream().anyMatch(ink -> ink.name().equals(name)))
                .toList();
        List<Pull> pulls = PrintingOrder.of(all, names, job.registerMm()).inks().stream()
                .map(ink -> new Pull(ink, StackSet.NONE))
                .toList();
        return table.sheet().farthestFirst(pulls).stream()
                .map(pull -> pulls.get(pull).ink())
                .toList();
    }

    private List<Pull> pulls(Found found, List<Ink> candidates) {
        List<Ink> used = candidates.stream()
                .filter(ink -> found.recipes().values().stream()
                        .anyMatch(recipe -> recipe.inks().contains(ink)))
                .toList();
        List<Pull> kept = soFar.pulls().stream()
                .filter(pull -> !candidates.contains(pull.ink()))
                .toList();
        List<Ink> all = new ArrayList<>(used);
        kept.stream().map(Pull::ink).filter(table.inks()::contains).forEach(all::add);
        List<Ink> order = table.sheet().printed(settled(farthestFirst(all), found, candidates));
        List<Pull> pulls = new ArrayList<>();
        for (Ink ink : order) {
            Optional<Pull> before =
                    kept.stream().filter(pull -> pull.ink().equals(ink)).findFirst();
            pulls.add(before.orElseGet(() -> new Pull(ink, prints(ink, found))));
        }
        List<Pull> grounds =
                kept.stream().filter(pull -> !all.contains(pull.ink())).toList();
        pulls.addAll(table.sheet().side() == Side.FRONT ? 0 : pulls.size(), grounds);
        return pulls;
    }

    /** The usual order, but each ink after those that it must lie over; each round takes one, since an order of layers holds no ring. */
    private static List<Ink> settled(List<Ink> usual, Found found, List<Ink> candidates) {
        List<Ink> left = new ArrayList<>(usual);
        List<Ink> order = new ArrayList<>();
        while (!left.isEmpty()) {
            Ink next = left.stream()
                    .filter(ink -> left.stream().noneMatch(other -> isOver(ink, other, found, candidates)))
                    .findFirst()
                    .orElseThrow();
            left.remove(next);
            order.add(next);
        }
        return order;
    }

    private static boolean isOver(Ink above, Ink under, Found found, List<Ink> candidates) {
        int one = candidates.indexOf(above);
        int other = candidates.indexOf(under);
        return one >= 0 && other >= 0 && found.order().isOver(one, other);
    }

    private StackSet prints(Ink ink, Found found) {
        return StackSet.of(table.rows().stream()
                .filter(row -> row.top()
                        .map(found.recipes()::get)
                        .filter(recipe -> recipe.inks().contains(ink))
                        .isPresent())
                .mapToInt(Row::stack));
    }

    private static String what(int screens, int colours) {
        if (screens == colours) {
            return "Each of the " + colours + " colours keeps a screen.";
        }
        return screens + (screens == 1 ? " screen prints " : " screens print ") + colours + " colours: "
                + (colours - screens) + " saved.";
    }

    private String why(Found found, int screens, Map<Ink, Double> areas) {
        String mean = String.format(
                Locale.ROOT,
                "Colours come out %.1f from the artwork's on average by area (CIEDE2000), %.1f at most.",
                found.cost()
                        / areas.values().stream()
                                .mapToDouble(Double::doubleValue)
                                .sum(),
                found.recipes().values().stream()
                        .mapToDouble(Recipe::difference)
                        .max()
                        .orElse(0));
        if (found.isExact()) {
            return mean
                    + (screens == areas.size()
                            ? " No overlaps of fewer inks come near enough."
                            : " No fewer inks do it, in any order.");
        }
        return mean + " The search was given up after much work: perhaps fewer would do, but no fewer than "
                + found.least() + ".";
    }

    private Decision built(Ink colour, Recipe recipe) {
        String made = recipe.inks().stream().map(Ink::name).collect(Collectors.joining(", over it "));
        return new Decision(
                "overprint",
                colour.name(),
                "It needs no screen: " + made + (recipe.inks().size() == 1 ? " stands for it." : " make it."),
                String.format(
                        Locale.ROOT,
                        "That comes out %.1f from the artwork's colour (CIEDE2000), %.1f is allowed.",
                        recipe.difference(),
                        tolerance));
    }
}
