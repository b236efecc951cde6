package inkstrata.positive;

import inkstrata.job.Job;
import inkstrata.report.Decimals;
import inkstrata.report.Json;
import inkstrata.report.PlanEntries;
import inkstrata.report.Remarks;
import inkstrata.report.SeamEntries;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The plan as JSON, for programs and for people: what was printed where, and why.
 *
 * <p>Its fields are described in {@code plugins/positive/docs/plan-json.md} and by {@code plan.schema.json}. Keys keep their
 * order, numbers a fixed number of decimals.
 */
final class PlanJson {
    private PlanJson() {}

    static void write(
            Separation separation, FilmSet set, FilmFormats formats, Inspection inspection, Job job, java.io.Writer out)
            throws IOException {
        List<String> files =
                set.names().stream().map(name -> FilmFiles.first(name, formats)).toList();
        PlanEntries entries = new PlanEntries(separation, files);
        Map<String, Object> plan = Remarks.result(inspection);
        plan.put("tool", tool());
        plan.put("title", set.title());
        plan.put("artwork", entries.artwork());
        plan.put("sheet", entries.sheet());
        plan.put("film", PlanEntries.frame(set.layout().film().frame()));
        plan.put("registerMm", Decimals.length(job.registerMm()));
        plan.put("seamMm", Decimals.length(job.seamMm()));
        plan.put("merge", Decimals.difference(job.merge().within()));
        plan.put("edition", edition(job));
        plan.put("pulls", entries.pulls());
        plan.put("stacks", entries.stacks());
        plan.put("decisions", Remarks.decisions(separation.plan().decisions()));
        plan.put("seams", SeamEntries.of(separation.map()));
        plan.put(
                "notes",
                Remarks.notes(Stream.of(separation.artwork().notes(), separation.notes(), set.notes())
                        .flatMap(List::stream)
                        .toList()));
        plan.put("findings", Remarks.findings(inspection.findings()));
        out.write(Json.text(plan));
        out.write('\n');
    }

    private static Map<String, Object> tool() throws IOException {
        Map<String, Object> tool = new LinkedHashMap<>();
        tool.put("name", "Inkstrata");
        tool.put("version", ToolVersion.read());
        return tool;
    }

    private static Map<String, Object> edition(Job job) {
        Map<String, Object> edition = new LinkedHashMap<>();
        edition.put("prints", job.edition().prints());
        edition.put("spoilage", Decimals.share(job.edition().spoilage()));
        return edition;
    }
}
