package inkstrata.overprint;

import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What runs on beneath the ink that shows at one stack.
 *
 * @param stack its number
 * @param top what shows
 * @param inks what runs on, farthest from the eye first; perhaps none
 * @param change how far what is seen is from the artwork's colour (CIEDE2000)
 * @param isWhole whether every set of inks that comes before was tried
 */
record RunningOn(int stack, Ink top, List<Ink> inks, double change, boolean isWhole) {
    RunningOn {
        inks = List.copyOf(inks);
    }

    /**
     * The best choice for a stack: as many as there may be of what the drawing has there, of equally many those right beneath, so that
     * the colour is within the tolerance of the artwork's, or no farther from it than the ink alone on the sheet. Beneath a key that the job
     * names at least what is right beneath it runs on.
     *
     * <p>Paint that does not run on has no say: without it the choice is the same.
     *
     * @param already what prints there in any case, beside the ink that shows
     * @param rules by which it is chosen
     */
    static Optional<RunningOn> best(Row row, List<Ink> already, Rules rules) {
        if (row.top().isEmpty() || !row.drawings().isEmpty()) {
            return Optional.empty();
        }
        Ink top = row.top().get();
        List<Ink> beneath = beneath(row, rules);
        List<Ink> others =
                already.stream().filter(ink -> !beneath.contains(ink)).toList();
        int most = Math.min(rules.mostFilms() - 1 - others.size(), beneath.size());
        if (most < 1) {
            return Optional.empty();
        }
        boolean holds = top.key();
        double alone = rules.prediction().fromSwatch(top, sorted(List.of(), already, rules.nearness()));
        InkSets sets = new InkSets(beneath, most, holds);
        Optional<List<Ink>> best = sets.first(
                        inks -> change(top, inks, already, rules) <= Math.max(rules.tolerance(), alone))
                .or(() -> holds ? Optional.of(beneath.subList(0, 1)) : Optional.empty());
        return best.map(inks -> new RunningOn(
                row.stack(),
                top,
                inks.stream().sorted(rules.nearness()).toList(),
                change(top, inks, already, rules),
                sets.isWhole()));
    }

    private static double change(Ink top, List<Ink> inks, List<Ink> already, Rules rules) {
        return rules.prediction().fromSwatch(top, sorted(inks, already, rules.nearness()));
    }

    private static List<Ink> sorted(List<Ink> inks, List<Ink> already, Comparator<Ink> nearness) {
        List<Ink> all = new ArrayList<>(inks);
        already.stream().filter(ink -> !inks.contains(ink)).forEach(all::add);
        all.sort(nearness);
        return all;
    }

    /**
     * The inks that the drawing has beneath what shows, from there down, of those that lie farther from the eye than it. Paint in the sheet's
     * colour is sheet that the drawing keeps free: beside what lies over it sheet shows, and what lies beneath it must not come out there.
     */
    private static List<Ink> beneath(Row row, Rules rules) {
        List<Ink> found = new ArrayList<>();
        for (int paint = 1; paint < row.inks().size(); paint++) {
            Optional<Ink> ink = row.inks().get(paint);
            if (ink.isPresent()
                    && !found.contains(ink.get())
                    && rules.nearness().compare(ink.get(), row.top().orElseThrow()) < 0) {
                found.add(ink.get());
            }
            if (row.paints().paints().get(paint).colour().equals(rules.sheet().colour())) {
                break;
            }
        }
        return found;
    }
}
