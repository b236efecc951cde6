package inkstrata.reduction;

import inkstrata.plan.Decision;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What is said of places that a reduction keeps: how large they are, and for each pull what has to be masked there.
 *
 * <p>One screen that is altered from pull to pull cannot be opened again where it was blocked out. So what a later pull prints
 * is masked for the time being, with tape or paper on the screen (common practice, no source).
 */
final class Kept {
    private Kept() {}

    /**
     * Nothing if nothing is kept.
     *
     * @param by id of the planner
     * @param keep names of what the job keeps
     * @param pulls as planned
     */
    static List<Decision> decisions(String by, Set<String> keep, List<Pull> pulls, PlanningTable table) {
        if (keep.isEmpty()) {
            return List.of();
        }
        List<Row> rows = table.rows().stream()
                .filter(row -> row.areaMm2() > 0 && row.drawings().stream().anyMatch(keep::contains))
                .toList();
        List<Decision> decisions = new ArrayList<>();
        decisions.add(new Decision(
                by,
                "",
                "Kept: " + String.join(", ", keep)
                        + ". Only each place's own colour prints there, without other steps beneath it.",
                String.format(
                        Locale.ROOT, "The job asks for it. %.1f cm² of it are to be seen.", squareCentimetres(rows))));
        for (int pull = 0; pull < pulls.size(); pull++) {
            List<Row> later = laterAt(pull, rows, pulls, table);
            if (!later.isEmpty()) {
                decisions.add(masked(by, pulls.get(pull), inks(later, pulls), squareCentimetres(later)));
            }
        }
        return decisions;
    }

    /** Where this pull would print if nothing were kept, and a later one does. */
    private static List<Row> laterAt(int pull, List<Row> rows, List<Pull> pulls, PlanningTable table) {
        return rows.stream()
                .filter(row -> !pulls.get(pull).prints().contains(row.stack()))
                .filter(row -> IntStream.range(pull + 1, pulls.size())
                        .anyMatch(later -> row.shows(pulls.get(later).ink())
                                && table.sheet().isNearer(pulls, later, pull)))
                .toList();
    }

    private static String inks(List<Row> rows, List<Pull> pulls) {
        return pulls.stream()
                .map(Pull::ink)
                .filter(ink -> rows.stream().anyMatch(row -> row.shows(ink)))
                .map(ink -> ink.name())
                .collect(Collectors.joining(" and "));
    }

    private static Decision masked(String by, Pull pull, String later, double squareCentimetres) {
        return new Decision(
                by,
                pull.ink().name(),
                String.format(
                        Locale.ROOT,
                        "It leaves out %.1f cm² of what is kept, which %s print%s later.",
                        squareCentimetres,
                        later,
                        later.contains(" and ") ? "" : "s"),
                "Whoever alters one screen masks that with tape or paper for this pull and does not block it out: blocked out, it is"
                        + " lost for later pulls. The film has it left out already.");
    }

    private static double squareCentimetres(List<Row> rows) {
        return rows.stream().mapToDouble(Row::areaMm2).sum() / 100;
    }
}
