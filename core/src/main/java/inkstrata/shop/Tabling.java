package inkstrata.shop;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Sheet;
import inkstrata.planar.Neighbours;
import inkstrata.planar.Paint;
import inkstrata.planar.PaintStack;
import inkstrata.planar.Pieces;
import inkstrata.planar.PlanarMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Makes the table that planners see from a map and a palette. */
final class Tabling {
    private Tabling() {}

    /** How much edge the colours of a map share where they show beside each other. */
    static SharedEdges edges(PlanarMap map, List<Neighbours> neighbours) {
        SharedEdges edges = new SharedEdges();
        for (Neighbours pair : neighbours) {
            Optional<Rgb> one = picture(map.stacks().get(pair.one())).map(Paint::colour);
            Optional<Rgb> other = picture(map.stacks().get(pair.other())).map(Paint::colour);
            if (pair.lengthMm() > 0 && one.isPresent() && other.isPresent() && !one.equals(other)) {
                edges.add(one.get(), other.get(), pair.lengthMm());
            }
        }
        return edges;
    }

    /** What shows of the artwork without drawings of their own. */
    static Optional<Paint> picture(PaintStack stack) {
        return stack.paints().stream()
                .filter(paint -> paint.drawing().isEmpty())
                .findFirst();
    }

    /**
     * The table.
     *
     * @param map in the palette's colours
     */
    static PlanningTable table(Sheet sheet, PlanarMap map, List<Neighbours> neighbours, Palette palette, Job job) {
        Map<Rgb, Ink> bySwatch = bySwatch(palette);
        List<Pieces> pieces = map.pieces();
        List<Row> rows = new ArrayList<>();
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            List<Paint> paints = map.stacks().get(stack).paints().stream()
                    .filter(paint -> paint.drawing().isEmpty())
                    .toList();
            List<Optional<Ink>> inks = paints.stream()
                    .map(paint -> Optional.ofNullable(bySwatch.get(paint.colour())))
                    .toList();
            rows.add(new Row(
                    stack,
                    new PaintStack(paints),
                    inks,
                    map.areaMm2(stack),
                    drawings(map.stacks().get(stack), job),
                    pieces.get(stack)));
        }
        List<Ink> spare = job.inks().stream()
                .filter(ink -> palette.inks().stream().noneMatch(ink::equals))
                .toList();
        return new PlanningTable(sheet, palette.inks(), spare, rows, neighbours);
    }

    /** The same with the inks of a palette that differs from the table's in nothing but names. */
    static PlanningTable renamed(PlanningTable table, Palette palette) {
        Map<Rgb, Ink> bySwatch = bySwatch(palette);
        List<Row> rows = table.rows().stream()
                .map(row -> new Row(
                        row.stack(),
                        row.paints(),
                        row.inks().stream()
                                .map(ink -> ink.map(old -> bySwatch.get(old.swatch())))
                                .toList(),
                        row.areaMm2(),
                        row.drawings(),
                        row.pieces()))
                .toList();
        return new PlanningTable(table.sheet(), palette.inks(), table.spare(), rows, table.neighbours());
    }

    private static Map<Rgb, Ink> bySwatch(Palette palette) {
        Map<Rgb, Ink> bySwatch = new TreeMap<>();
        palette.inks().stream().filter(ink -> ink.from().isEmpty()).forEach(ink -> bySwatch.put(ink.swatch(), ink));
        return bySwatch;
    }

    /** Names of drawings of their own whose topmost paint there is not the sheet's colour. */
    private static Set<String> drawings(PaintStack stack, Job job) {
        Set<String> seen = new TreeSet<>();
        Set<String> painted = new TreeSet<>();
        for (Paint paint : stack.paints()) {
            if (!paint.drawing().isEmpty()
                    && seen.add(paint.drawing())
                    && Ciede2000.difference(paint.colour(), job.sheetColour())
                            > job.merge().within()) {
                painted.add(paint.drawing());
            }
        }
        return painted;
    }
}
