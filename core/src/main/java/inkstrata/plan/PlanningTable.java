package inkstrata.plan;

import inkstrata.planar.PaintStack;
import java.util.List;
import java.util.Optional;

/**
 * All that planners see of the artwork: its distinct stacks of paint and the inks that stand for the paints.
 *
 * @param sheet what is printed on
 * @param inks every ink of the plan
 * @param rows one for each stack of the map, by number
 */
public record PlanningTable(Sheet sheet, List<Ink> inks, List<Row> rows) {
    public PlanningTable {
        inks = List.copyOf(inks);
        rows = List.copyOf(rows);
    }

    /**
     * One stack.
     *
     * @param stack its number in the map
     * @param paints what lies there, top first
     * @param inks for each of these paints its ink; empty for a paint that has none: the bare sheet's colour, or one that shows nowhere
     * @param areaMm2 within the picture's frame
     */
    public record Row(int stack, PaintStack paints, List<Optional<Ink>> inks, double areaMm2) {
        public Row {
            inks = List.copyOf(inks);
            if (inks.size() != paints.paints().size()) {
                throw new IllegalArgumentException("stack " + stack + " needs one ink for each of its paints");
            }
        }

        /** What shows; empty for bare sheet. */
        public Optional<Ink> top() {
            return inks.isEmpty() ? Optional.empty() : inks.get(0);
        }
    }
}
