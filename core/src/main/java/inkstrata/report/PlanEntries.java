package inkstrata.report;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.plan.Mesh;
import inkstrata.plan.PlannedColour;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.planar.Paint;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What is printed where: the drawing, the sheet, pulls and stacks.
 *
 * @param files of each pull its film's file, by position; empty if none are written
 */
public record PlanEntries(Separation separation, List<String> files) {
    public PlanEntries {
        files = List.copyOf(files);
    }

    /** The drawing's name, and its picture's frame on the sheet. */
    public Map<String, Object> artwork() {
        Map<String, Object> artwork = new LinkedHashMap<>();
        artwork.put("name", separation.artwork().name());
        artwork.putAll(frame(separation.artwork().frame()));
        return artwork;
    }

    /** A rectangle on the sheet, with its sides on the nearest grid lines. */
    public static Map<String, Object> frame(Frame frame) {
        int left = Grid.steps(frame.x());
        int top = Grid.steps(frame.y());
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("xMm", Decimals.length(Grid.millimetres(left)));
        entry.put("yMm", Decimals.length(Grid.millimetres(top)));
        entry.put("widthMm", Decimals.length(Grid.millimetres(Grid.steps(frame.right()) - left)));
        entry.put("heightMm", Decimals.length(Grid.millimetres(Grid.steps(frame.bottom()) - top)));
        return entry;
    }

    public Map<String, Object> sheet() {
        Sheet sheet = separation.table().sheet();
        Map<String, Object> entry =
                frame(new Frame(0, 0, sheet.size().width(), sheet.size().height()));
        entry.remove("xMm");
        entry.remove("yMm");
        entry.put("colour", sheet.colour().hex());
        entry.put("hiding", Decimals.share(sheet.film().hiding()));
        entry.put("side", Remarks.lower(sheet.side()));
        return entry;
    }

    /** First printed first. */
    public List<Map<String, Object>> pulls() {
        List<Map<String, Object>> pulls = new ArrayList<>();
        for (int i = 0; i < separation.plan().pulls().size(); i++) {
            Pull pull = separation.plan().pulls().get(i);
            Ink ink = pull.ink();
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("pull", i + 1);
            entry.put("ink", ink.name());
            if (!files.isEmpty()) {
                entry.put("file", files.get(i));
            }
            entry.put("swatch", ink.swatch().hex());
            entry.put("hiding", Decimals.share(ink.hiding()));
            entry.put("key", ink.key());
            ink.mesh().map(Mesh::toString).ifPresent(mesh -> entry.put("mesh", mesh));
            entry.put("side", Remarks.lower(separation.table().sheet().side(ink)));
            entry.put("areaMm2", Decimals.area(separation.printed().get(i).areaMm2()));
            entry.put("stacks", pull.prints().numbers().boxed().toList());
            pulls.add(entry);
        }
        return pulls;
    }

    public List<Map<String, Object>> stacks() {
        return PlannedColour.of(separation.table(), separation.plan()).stream()
                .map(this::stack)
                .toList();
    }

    private Map<String, Object> stack(PlannedColour colour) {
        Row row = colour.row();
        List<Pull> pulls = separation.plan().pulls();
        Map<String, Object> stack = new LinkedHashMap<>();
        stack.put("stack", row.stack());
        stack.put(
                "paints",
                row.paints().paints().stream()
                        .map(Paint::colour)
                        .map(Object::toString)
                        .toList());
        if (!row.drawings().isEmpty()) {
            stack.put("drawings", row.drawings().stream().sorted().toList());
        }
        stack.put("areaMm2", Decimals.area(row.areaMm2()));
        colour.drawn().ifPresent(drawn -> stack.put("drawn", drawn.hex()));
        stack.put("predicted", colour.predicted().hex());
        stack.put("difference", Decimals.difference(colour.difference()));
        stack.put("inks", colour.inks().stream().map(Ink::name).toList());
        stack.put(
                "pulls",
                IntStream.range(0, pulls.size())
                        .filter(i -> pulls.get(i).prints().contains(row.stack()))
                        .mapToObj(i -> i + 1)
                        .toList());
        return stack;
    }
}
