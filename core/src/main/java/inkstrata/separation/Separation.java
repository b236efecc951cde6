package inkstrata.separation;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Note;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.List;

/**
 * One drawing, taken apart.
 *
 * @param artwork the drawing, where it lies on the sheet
 * @param map its faces and stacks
 * @param table what the planners saw
 * @param plan the pulls in print order
 * @param printed for each pull, by position, the region its film lets through, in place on the sheet
 * @param notes what plug-ins had to say
 */
public record Separation(
        Artwork artwork, PlanarMap map, PlanningTable table, PrintPlan plan, List<Region> printed, List<Note> notes) {
    public Separation {
        printed = List.copyOf(printed);
        notes = List.copyOf(notes);
        if (printed.size() != plan.pulls().size()) {
            throw new IllegalArgumentException(
                    printed.size() + " regions for " + plan.pulls().size() + " pulls");
        }
    }

    /**
     * Whether one pull lies nearer to the eye than another where both print.
     *
     * @param pull its position in the plan
     * @param other another position
     */
    public boolean isNearer(int pull, int other) {
        return table.sheet().isNearer(plan.pulls(), pull, other);
    }

    public Separation withPrinted(List<Region> newPrinted) {
        return new Separation(artwork, map, table, plan, newPrinted, notes);
    }

    public Separation withNotes(List<Note> more) {
        List<Note> all = new ArrayList<>(notes);
        all.addAll(more);
        return new Separation(artwork, map, table, plan, printed, all);
    }
}
