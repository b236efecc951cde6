package inkstrata.plan;

import inkstrata.planar.Neighbours;
import inkstrata.planar.PaintStack;
import inkstrata.planar.Pieces;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that planners see of the artwork: its distinct stacks of paint and the inks that stand for the paints.
 *
 * @param sheet what is printed on
 * @param inks every ink that the artwork shows
 * @param spare inks that the job lists and the artwork does not show
 * @param rows one for each stack of the map, by number
 * @param neighbours stacks that share edges or meet
 */
public record PlanningTable(Sheet sheet, List<Ink> inks, List<Ink> spare, List<Row> rows, List<Neighbours> neighbours) {
    public PlanningTable {
        inks = List.copyOf(inks);
        spare = List.copyOf(spare);
        rows = List.copyOf(rows);
        neighbours = List.copyOf(neighbours);
    }

    /** One of which nothing more is known. */
    public PlanningTable(Sheet sheet, List<Ink> inks, List<Row> rows) {
        this(sheet, inks, List.of(), rows, List.of());
    }

    /**
     * One stack.
     *
     * @param stack its number in the map
     * @param paints what lies there, top first, without drawings of their own
     * @param inks for each of these paints its ink; empty for a paint that has none: the bare sheet's colour, or one that shows nowhere
     * @param areaMm2 within the picture's frame
     * @param drawings names of drawings of their own that have paint there
     * @param pieces in how many faces it lies
     */
    public record Row(
            int stack,
            PaintStack paints,
            List<Optional<Ink>> inks,
            double areaMm2,
            Set<String> drawings,
            Pieces pieces) {
        public Row {
            inks = List.copyOf(inks);
            drawings = Set.copyOf(drawings);
            if (inks.size() != paints.paints().size()) {
                throw new IllegalArgumentException("stack " + stack + " needs one ink for each of its paints");
            }
        }

        /** One of which nothing more is known. */
        public Row(int stack, PaintStack paints, List<Optional<Ink>> inks, double areaMm2) {
            this(stack, paints, inks, areaMm2, Set.of(), new Pieces(1, Optional.empty()));
        }

        /** What shows of the artwork without drawings of their own; empty for bare sheet. */
        public Optional<Ink> top() {
            return inks.isEmpty() ? Optional.empty() : inks.get(0);
        }

        /** Whether an ink's place is here: it shows, or its own drawing has paint here. */
        public boolean shows(Ink ink) {
            return ink.from().isPresent()
                    ? drawings.contains(ink.name())
                    : top().filter(ink::equals).isPresent();
        }
    }
}
