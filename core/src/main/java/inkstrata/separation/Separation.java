package inkstrata.separation;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Note;
import inkstrata.colour.Rgb;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One drawing, taken apart.
 *
 * @param artwork the drawing, where it lies on the sheet
 * @param map its faces and stacks
 * @param table what the planners saw
 * @param plan the pulls in print order
 * @param printed for each pull, by position, the region its film lets through, in place on the sheet
 * @param notes what plug-ins had to say
 * @param joined colours of the artwork that are printed with an ink of another colour, with its name; the bare sheet's is empty
 */
public record Separation(
        Artwork artwork,
        PlanarMap map,
        PlanningTable table,
        PrintPlan plan,
        List<Region> printed,
        List<Note> notes,
        Map<Rgb, String> joined) {
    public Separation {
        joined = Map.copyOf(joined);
        printed = List.copyOf(printed);
        notes = List.copyOf(notes);
        if (printed.size() != plan.pulls().size()) {
            throw new IllegalArgumentException(
                    printed.size() + " regions for " + plan.pulls().size() + " pulls");
        }
    }

    /** One in which every colour has an ink of its own. */
    public Separation(
            Artwork artwork,
            PlanarMap map,
            PlanningTable table,
            PrintPlan plan,
            List<Region> printed,
            List<Note> notes) {
        this(artwork, map, table, plan, printed, notes, Map.of());
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

    /** Whether a pull is only a ground: it lies beneath others everywhere, and shows nowhere. */
    public boolean isOnlyGround(int pull) {
        Pull asked = plan.pulls().get(pull);
        return asked.ground() && table.rows().stream().noneMatch(row -> row.shows(asked.ink()));
    }

    public Separation withPrinted(List<Region> newPrinted) {
        return new Separation(artwork, map, table, plan, newPrinted, notes, joined);
    }

    public Separation withNotes(List<Note> more) {
        List<Note> all = new ArrayList<>(notes);
        all.addAll(more);
        return new Separation(artwork, map, table, plan, printed, all, joined);
    }
}
