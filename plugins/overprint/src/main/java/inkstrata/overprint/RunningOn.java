package inkstrata.overprint;

import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
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
 */
record RunningOn(int stack, Ink top, List<Ink> inks, double change) {
    /** More is better, then less change. */
    private static final Comparator<RunningOn> BETTER = Comparator.comparingInt(
                    (RunningOn one) -> one.inks().size())
            .thenComparing(Comparator.comparingDouble(RunningOn::change).reversed());

    RunningOn {
        inks = List.copyOf(inks);
    }

    /**
     * The best choice for a stack: as many as there may be of what the drawing has there, so that the colour is within the tolerance
     * of the artwork's, or no farther from it than the ink alone on the sheet. Beneath a key that the job names at least what is right beneath it runs on.
     *
     * @param already what prints there in any case, beside the ink that shows
     * @param nearness compares inks by how near to the eye they are printed
     * @param mostFilms over each other, that of the ink which shows included
     */
    static Optional<RunningOn> best(
            Row row,
            List<Ink> already,
            Comparator<Ink> nearness,
            Prediction prediction,
            double tolerance,
            int mostFilms) {
        if (row.top().isEmpty() || !row.drawings().isEmpty()) {
            return Optional.empty();
        }
        Ink top = row.top().get();
        List<Ink> beneath = beneath(row, mostFilms - 1);
        List<RunningOn> choices = new ArrayList<>();
        for (int set = 1; set < 1 << beneath.size(); set++) {
            List<Ink> inks = new ArrayList<>();
            for (int i = 0; i < beneath.size(); i++) {
                if ((set >> i & 1) != 0) {
                    inks.add(beneath.get(i));
                }
            }
            if (inks.stream().allMatch(ink -> nearness.compare(ink, top) < 0)) {
                choices.add(new RunningOn(
                        row.stack(), top, inks, prediction.fromSwatch(top, sorted(inks, already, nearness))));
            }
        }
        boolean holds = top.key() && !beneath.isEmpty() && nearness.compare(beneath.get(0), top) < 0;
        if (holds) {
            choices.removeIf(choice -> !choice.inks().contains(beneath.get(0)));
        }
        double alone = prediction.fromSwatch(top, sorted(List.of(), already, nearness));
        double allowed = Math.max(tolerance, alone);
        Optional<RunningOn> best = choices.stream()
                .filter(choice -> choice.change() <= allowed)
                .reduce((one, other) -> BETTER.compare(other, one) > 0 ? other : one);
        return best.isPresent() || !holds
                ? best
                : choices.stream().filter(choice -> choice.inks().size() == 1).findFirst();
    }

    private static List<Ink> sorted(List<Ink> inks, List<Ink> already, Comparator<Ink> nearness) {
        List<Ink> all = new ArrayList<>(inks);
        already.stream().filter(ink -> !inks.contains(ink)).forEach(all::add);
        all.sort(nearness);
        return all;
    }

    /** The next inks down, as far as no paint without an ink lies between. */
    private static List<Ink> beneath(Row row, int most) {
        List<Ink> found = new ArrayList<>();
        for (int paint = 1; paint < row.inks().size() && found.size() < most; paint++) {
            if (row.inks().get(paint).isEmpty()) {
                break;
            }
            found.add(row.inks().get(paint).get());
        }
        return found;
    }
}
