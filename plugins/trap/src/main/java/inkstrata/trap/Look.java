package inkstrata.trap;

import inkstrata.colour.Rgb;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a pull shows at a stack, or would show if the pulls nearer to the eye were taken away; a ground beneath others has none, nor
 * have drawings of their own, which fit nothing.
 *
 * @param pull position in the plan
 * @param colour the artwork's colour for it there; a pull may show several over others that shine through
 */
record Look(int pull, Rgb colour) implements Comparable<Look> {
    private static final Comparator<Look> ORDER =
            Comparator.comparingInt(Look::pull).thenComparing(Look::colour);

    /** For each stack its looks, nearest to the eye first; none on bare sheet. */
    static Map<Integer, List<Look>> byStack(Separation separation) {
        List<Pull> pulls = separation.plan().pulls();
        List<Integer> nearestFirst = new ArrayList<>(separation.table().sheet().farthestFirst(pulls));
        Collections.reverse(nearestFirst);
        Map<Integer, List<Look>> looks = new TreeMap<>();
        for (Row row : separation.table().rows()) {
            looks.put(
                    row.stack(),
                    nearestFirst.stream()
                            .filter(pull -> pulls.get(pull).prints().contains(row.stack()))
                            .filter(pull -> !pulls.get(pull).ground()
                                    || row.shows(pulls.get(pull).ink()))
                            .filter(pull -> pulls.get(pull).ink().from().isEmpty())
                            .map(pull ->
                                    new Look(pull, colourOf(row, pulls.get(pull).ink())))
                            .toList());
        }
        return looks;
    }

    private static Rgb colourOf(Row row, Ink ink) {
        int paint = row.inks().indexOf(Optional.of(ink));
        return paint < 0 ? ink.swatch() : row.paints().paints().get(paint).colour();
    }

    @Override
    public int compareTo(Look other) {
        return ORDER.compare(this, other);
    }
}
