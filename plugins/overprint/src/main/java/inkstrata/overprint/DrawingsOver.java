package inkstrata.overprint;

import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import inkstrata.planar.Neighbours;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What becomes of drawings of their own that lie over each other: how much of them can be told apart, and in which order most. */
final class DrawingsOver {
    /** An order that saves no more than that share of all edges is not worth a word (our own choice). */
    private static final double WORTH = 0.02;

    private DrawingsOver() {}

    /** A decision, if there are several drawings of their own. */
    static Optional<Decision> decision(PlanningTable table, PrintPlan plan) {
        if (plan.pulls().stream().filter(pull -> pull.ink().from().isPresent()).count() < 2) {
            return Optional.empty();
        }
        Readability readability = Readability.of(table, plan);
        double all = readability.allMm();
        List<Neighbours> lost = readability.lost(readability.planned());
        double lostMm = lost.stream().mapToDouble(Neighbours::lengthMm).sum();
        String what = lost.isEmpty()
                ? "All edges of the drawings can be seen where they lie over each other."
                : String.format(
                        Locale.ROOT,
                        "%.0f of the %.0f mm of edges of the drawings are lost: they run into one mass%s.",
                        lostMm,
                        all,
                        table.rows()
                                .get(lost.get(0).one())
                                .pieces()
                                .largest()
                                .map(place ->
                                        String.format(Locale.ROOT, ", most about %.1f, %.1f mm", place.x(), place.y()))
                                .orElse(""));
        return Optional.of(new Decision("overprint", "", what, why(readability, lostMm, all)));
    }

    private static String why(Readability readability, double lostMm, double all) {
        List<Ink> best = readability.best();
        double least = readability.lost(best).stream()
                .mapToDouble(Neighbours::lengthMm)
                .sum();
        String rule = "What lies on either side of an edge must differ by more than 2.0 (CIEDE2000). ";
        return lostMm - least > WORTH * all
                ? String.format(
                        Locale.ROOT,
                        "%sLaid over each other as %s, lowest first, only %.0f mm would be lost.",
                        rule,
                        String.join(", ", best.stream().map(Ink::name).toList()),
                        least)
                : rule + "No other order keeps much more of them.";
    }
}
