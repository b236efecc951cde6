package inkstrata.command;

import inkstrata.colour.Rgb;
import inkstrata.measure.Size;
import inkstrata.plan.Ink;
import inkstrata.plan.Overlap;
import inkstrata.plan.PlannedColour;
import inkstrata.plan.Pull;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The plan's tables as a printmaker reads them. */
final class PlanTables {
    /** Smaller overlaps are only counted, unless they come out in another colour. */
    private static final int MOST_OVERLAPS = 20;

    private PlanTables() {}

    /** A row for each pull. */
    static Table pulls(Separation separation) {
        List<Pull> pulls = separation.plan().pulls();
        Size sheet = separation.table().sheet().size();
        List<PlannedColour> colours = PlannedColour.of(separation.table(), separation.plan());
        Table table = new Table(
                "rlllrrrl", "pull", "ink", "colour", "side", "most ink layers here", "cm²", "of sheet", "lies over");
        for (int i = 0; i < pulls.size(); i++) {
            Ink ink = pulls.get(i).ink();
            double area = separation.printed().get(i).areaMm2();
            table.row(
                    String.valueOf(i + 1),
                    ink.name(),
                    ink.swatch().hex(),
                    lower(separation.table().sheet().side(ink)),
                    String.valueOf(colours.stream()
                            .filter(colour -> colour.inks().contains(ink))
                            .mapToInt(colour -> colour.inks().size())
                            .max()
                            .orElse(0)),
                    String.format(Locale.ROOT, "%.1f", area / 100),
                    String.format(Locale.ROOT, "%.2f %%", 100 * area / (sheet.width() * sheet.height())),
                    printsOver(ink, colours));
        }
        return table;
    }

    /** Names of the inks that lie beneath an ink somewhere. */
    private static String printsOver(Ink ink, List<PlannedColour> colours) {
        Set<String> under = new LinkedHashSet<>();
        for (PlannedColour colour : colours) {
            int at = colour.inks().indexOf(ink);
            colour.inks().subList(0, Math.max(0, at)).forEach(other -> under.add(other.name()));
        }
        return under.isEmpty() ? "-" : String.join(", ", under);
    }

    /** Each pile of inks once, with the largest difference of its stacks; nothing if no inks lie over each other. */
    static List<String> overlaps(Separation separation) {
        Map<List<String>, PlannedColour> worst = new LinkedHashMap<>();
        Map<List<String>, Double> areas = new LinkedHashMap<>();
        for (PlannedColour colour : PlannedColour.of(separation.table(), separation.plan())) {
            if (colour.inks().size() > 1) {
                List<String> names = colour.inks().stream().map(Ink::name).toList();
                worst.merge(names, colour, (one, other) -> other.difference() > one.difference() ? other : one);
                areas.merge(names, colour.row().areaMm2(), Double::sum);
            }
        }
        if (worst.isEmpty()) {
            return List.of();
        }
        List<Map.Entry<List<String>, PlannedColour>> all = worst.entrySet().stream()
                .sorted(Comparator.comparing(entry -> -areas.get(entry.getKey())))
                .toList();
        Table table = new Table("lrlll", "overlap, lowest first", "cm²", "drawn", "printed about", "CIEDE2000");
        double largestLeft = 0;
        int left = 0;
        for (int i = 0; i < all.size(); i++) {
            PlannedColour colour = all.get(i).getValue();
            if (i < MOST_OVERLAPS || colour.difference() > Overlap.TOLERANCE) {
                table.row(
                        String.join(", ", all.get(i).getKey()),
                        String.format(Locale.ROOT, "%.1f", areas.get(all.get(i).getKey()) / 100),
                        colour.drawn().map(Rgb::hex).orElse("-"),
                        colour.predicted().hex(),
                        colour.drawn().isPresent() ? String.format(Locale.ROOT, "%.1f", colour.difference()) : "-");
            } else {
                left++;
                largestLeft = Math.max(largestLeft, colour.difference());
            }
        }
        List<String> lines = new ArrayList<>(table.lines());
        if (left > 0) {
            lines.add(String.format(
                    Locale.ROOT,
                    "  and %d smaller ones, none more than %.1f from what is drawn (--json has all)",
                    left,
                    largestLeft));
        }
        lines.add("  Printed colours are a guide: ink, mesh, squeegee and paper decide.");
        return lines;
    }

    static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
