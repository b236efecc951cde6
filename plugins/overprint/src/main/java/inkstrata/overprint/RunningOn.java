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
 * @param change by how much that changes the colour (CIEDE2000)
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
     * The best choice for a stack: as many as there may be of what the drawing has there, so that the colour changes by no more than the
     * tolerance. Beneath a key that the job names at least what is right beneath it runs on.
     *
     * @param nearness compares inks by how near to the eye they are printed
     * @param mostFilms over each other, that of the ink which shows included
     */
    static Optional<RunningOn> best(
            Row row, Comparator<Ink> nearness, Prediction prediction, double tolerance, int mostFilms) {
        if (row.top().isEmpty()) {
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
                inks.sort(nearness);
                choices.add(new RunningOn(row.stack(), top, inks, prediction.change(top, inks)));
            }
        }
        boolean holds = top.key() && !beneath.isEmpty() && nearness.compare(beneath.get(0), top) < 0;
        if (holds) {
            choices.removeIf(choice -> !choice.inks().contains(beneath.get(0)));
        }
        Optional<RunningOn> best = choices.stream()
                .filter(choice -> choice.change() <= tolerance)
                .reduce((one, other) -> BETTER.compare(other, one) > 0 ? other : one);
        return best.isPresent() || !holds
                ? best
                : choices.stream().filter(choice -> choice.inks().size() == 1).findFirst();
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
