package inkstrata.positive;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.jr.ob.JSON;
import inkstrata.artwork.Note;
import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.Mesh;
import inkstrata.plan.PlannedColour;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.planar.Paint;
import inkstrata.positive.page.MmText;
import inkstrata.separation.Finding;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The plan as JSON, for programs and for people: what was printed where, and why.
 *
 * <p>Its fields are described in {@code plugins/positive/docs/plan-json.md} and by {@code plan.schema.json}. Keys keep their
 * order, numbers a fixed number of decimals.
 */
final class PlanJson {
    /** Counted up when a field changes its meaning or goes away. */
    private static final int FORMAT = 1;

    private PlanJson() {}

    static void write(
            Separation separation, FilmSet set, FilmFormats formats, Inspection inspection, Job job, java.io.Writer out)
            throws IOException {
        Map<String, Object> plan = new LinkedHashMap<>();
        plan.put("format", FORMAT);
        plan.put("tool", tool());
        plan.put("title", set.title());
        plan.put("artwork", artwork(separation));
        plan.put("sheet", sheet(separation.table().sheet()));
        plan.put("film", box(set.layout().film()));
        plan.put("registerMm", decimal(job.registerMm(), 5));
        plan.put("merge", decimal(job.merge().within(), 3));
        plan.put("edition", edition(job));
        plan.put("pulls", pulls(separation, set, formats));
        plan.put(
                "stacks",
                PlannedColour.of(separation.table(), separation.plan()).stream()
                        .map(colour -> stack(colour, separation))
                        .toList());
        plan.put(
                "decisions",
                separation.plan().decisions().stream().map(PlanJson::decision).toList());
        plan.put(
                "notes",
                Stream.of(separation.artwork().notes(), separation.notes(), set.notes())
                        .flatMap(List::stream)
                        .map(PlanJson::note)
                        .toList());
        plan.put(
                "findings",
                inspection.findings().stream().map(PlanJson::finding).toList());
        DefaultPrettyPrinter pretty = new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
        out.write(JSON.std.with(pretty).with(JSON.Feature.PRETTY_PRINT_OUTPUT).asString(plan));
        out.write('\n');
    }

    private static Map<String, Object> tool() throws IOException {
        Map<String, Object> tool = new LinkedHashMap<>();
        tool.put("name", "Inkstrata");
        tool.put("version", ToolVersion.read());
        return tool;
    }

    private static Map<String, Object> artwork(Separation separation) {
        Map<String, Object> artwork = new LinkedHashMap<>();
        artwork.put("name", separation.artwork().name());
        artwork.putAll(box(Box.of(separation.artwork().frame())));
        return artwork;
    }

    private static Map<String, Object> sheet(Sheet paper) {
        Map<String, Object> sheet = new LinkedHashMap<>();
        Box size = Box.of(new Frame(0, 0, paper.size().width(), paper.size().height()));
        sheet.put("widthMm", exact(size.width()));
        sheet.put("heightMm", exact(size.height()));
        sheet.put("colour", paper.colour().hex());
        sheet.put("hiding", decimal(paper.film().hiding(), 4));
        sheet.put("side", lower(paper.side()));
        return sheet;
    }

    private static Map<String, Object> box(Box place) {
        Map<String, Object> box = new LinkedHashMap<>();
        box.put("xMm", exact(place.left()));
        box.put("yMm", exact(place.top()));
        box.put("widthMm", exact(place.width()));
        box.put("heightMm", exact(place.height()));
        return box;
    }

    private static BigDecimal exact(int steps) {
        return new BigDecimal(MmText.of(Grid.millimetres(steps)));
    }

    private static Map<String, Object> edition(Job job) {
        Map<String, Object> edition = new LinkedHashMap<>();
        edition.put("prints", job.edition().prints());
        edition.put("spoilage", decimal(job.edition().spoilage(), 4));
        return edition;
    }

    private static List<Map<String, Object>> pulls(Separation separation, FilmSet set, FilmFormats formats) {
        List<Map<String, Object>> pulls = new ArrayList<>();
        for (int i = 0; i < set.names().size(); i++) {
            Pull pull = separation.plan().pulls().get(i);
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("number", i + 1);
            entry.put("file", FilmFiles.first(set.names().get(i), formats));
            entry.put("ink", ink(pull.ink()));
            entry.put("side", lower(separation.table().sheet().side(pull.ink())));
            entry.put("areaMm2", decimal(separation.printed().get(i).areaMm2(), 4));
            entry.put("stacks", pull.prints().numbers().boxed().toList());
            pulls.add(entry);
        }
        return pulls;
    }

    private static Map<String, Object> ink(Ink ink) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("name", ink.name());
        entry.put("swatch", ink.swatch().hex());
        entry.put("hiding", decimal(ink.hiding(), 4));
        entry.put("key", ink.key());
        ink.mesh().map(Mesh::toString).ifPresent(mesh -> entry.put("mesh", mesh));
        return entry;
    }

    private static Map<String, Object> stack(PlannedColour colour, Separation separation) {
        Row row = colour.row();
        List<Pull> pulls = separation.plan().pulls();
        Map<String, Object> stack = new LinkedHashMap<>();
        stack.put("number", row.stack());
        stack.put(
                "paints",
                row.paints().paints().stream()
                        .map(Paint::colour)
                        .map(Object::toString)
                        .toList());
        if (!row.drawings().isEmpty()) {
            stack.put("drawings", row.drawings().stream().sorted().toList());
        }
        stack.put("areaMm2", decimal(row.areaMm2(), 4));
        stack.put("predicted", colour.predicted().hex());
        stack.put("difference", decimal(colour.difference(), 2));
        stack.put(
                "pulls",
                IntStream.range(0, pulls.size())
                        .filter(i -> pulls.get(i).prints().contains(row.stack()))
                        .mapToObj(i -> i + 1)
                        .toList());
        return stack;
    }

    private static Map<String, Object> decision(Decision decision) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("by", decision.by());
        entry.put("about", decision.about());
        entry.put("what", decision.what());
        entry.put("why", decision.why());
        return entry;
    }

    private static Map<String, Object> note(Note note) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("severity", lower(note.severity()));
        entry.put("element", note.source().element());
        entry.put("id", note.source().id());
        entry.put("line", note.source().line());
        entry.put("text", note.text());
        return entry;
    }

    private static Map<String, Object> finding(Finding finding) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("severity", lower(finding.severity()));
        entry.put("rule", finding.rule());
        entry.put("xMm", decimal(finding.place().x(), 5));
        entry.put("yMm", decimal(finding.place().y(), 5));
        entry.put("measured", finding.measured());
        entry.put("limit", finding.limit());
        entry.put("remedy", finding.remedy());
        return entry;
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** Rounded half up, without zeros at the end, never with an exponent. */
    private static BigDecimal decimal(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
