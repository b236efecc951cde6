package inkstrata.underbase;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.job.Job;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.Overlap;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.Prediction;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Side;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An ink of the drawing that is as white as the ground would be: one film and one screen for both.
 *
 * @param ink of the drawing
 * @param apart how far the two are from each other on this sheet (CIEDE2000)
 */
record SharedWhite(Ink ink, double apart) {
    /**
     * Finds it: on paper within the job's merge of the ground's colour, hiding so much that the two pass for equal on this sheet too
     * (within {@link Overlap#TOLERANCE}), and not put elsewhere by the order that the job asks for.
     *
     * @param ground the ink that the ground would be printed with
     */
    static Optional<SharedWhite> of(Ink ground, PlanningTable table, PrintPlan soFar, Job job) {
        Prediction prediction = new Prediction(table.sheet());
        return Stream.concat(soFar.pulls().stream().map(Pull::ink), table.spare().stream())
                .filter(ink -> ink.from().isEmpty())
                .filter(ink -> table.sheet().side(ink) == table.sheet().side(ground))
                .filter(ink -> Ciede2000.difference(Lab.of(ink.swatch()), Lab.of(ground.swatch()))
                        <= job.merge().within())
                .filter(ink -> !isElsewhere(ink, table, soFar, job))
                .map(ink -> new SharedWhite(ink, prediction.difference(List.of(ink), List.of(ground))))
                .filter(white -> white.apart() <= Overlap.TOLERANCE)
                .min(Comparator.comparingDouble(SharedWhite::apart)
                        .thenComparing(white -> white.ink().name()));
    }

    /** The ground lies farthest from the eye. */
    private static boolean isElsewhere(Ink ink, PlanningTable table, PrintPlan soFar, Job job) {
        List<Ink> printed = soFar.pulls().stream().map(Pull::ink).toList();
        int place = table.sheet().side(ink) == Side.BACK ? printed.size() - 1 : 0;
        return job.order().names().contains(ink.name()) && printed.indexOf(ink) != place;
    }

    Decision decision(String by) {
        return new Decision(
                by,
                ink.name(),
                "It is the ground as well: one film and one screen for two whites.",
                String.format(Locale.ROOT, "On this sheet the two are %.1f apart (CIEDE2000).", apart));
    }
}
