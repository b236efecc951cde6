package inkstrata.plan;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Rgb;
import inkstrata.plan.PlanningTable.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a plan makes of a stack; a guide, as {@link Prediction} is.
 *
 * @param row the stack
 * @param inks that print there, farthest from the eye first
 * @param drawn the artwork's colour there; empty where drawings of their own lie, whose mixed colour nobody drew
 * @param predicted what is seen
 * @param difference how far that is from what is drawn (CIEDE2000); 0 where nothing is drawn
 */
public record PlannedColour(Row row, List<Ink> inks, Optional<Rgb> drawn, Rgb predicted, double difference) {
    public PlannedColour {
        inks = List.copyOf(inks);
    }

    /** For each row of a table, in their order. */
    public static List<PlannedColour> of(PlanningTable table, PrintPlan plan) {
        Prediction prediction = new Prediction(table.sheet());
        List<Integer> farthestFirst = table.sheet().farthestFirst(plan.pulls());
        List<PlannedColour> colours = new ArrayList<>();
        for (Row row : table.rows()) {
            List<Ink> inks = farthestFirst.stream()
                    .map(pull -> plan.pulls().get(pull))
                    .filter(pull -> pull.prints().contains(row.stack()))
                    .map(Pull::ink)
                    .toList();
            Lab seen = prediction.lab(inks);
            Optional<Rgb> drawn = drawn(row, table);
            colours.add(new PlannedColour(
                    row,
                    inks,
                    drawn,
                    prediction.seen(inks).rgb(),
                    drawn.map(colour -> Ciede2000.difference(Lab.of(colour), seen))
                            .orElse(0.0)));
        }
        return colours;
    }

    private static Optional<Rgb> drawn(Row row, PlanningTable table) {
        if (!row.drawings().isEmpty()
                && table.inks().stream().anyMatch(ink -> row.drawings().contains(ink.name()))) {
            return Optional.empty();
        }
        return Optional.of(
                row.top().isEmpty()
                        ? table.sheet().colour()
                        : row.paints().paints().get(0).colour());
    }
}
