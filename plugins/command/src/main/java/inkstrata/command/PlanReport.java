package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Note;
import inkstrata.plan.Decision;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.report.PlanEntries;
import inkstrata.report.Remarks;
import inkstrata.report.SeamEntries;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The plan for people and for programs. */
final class PlanReport {
    private PlanReport() {}

    /** Head, a row for each pull, then decisions with their reasons, then notes. */
    static List<String> lines(Separation separation) {
        Artwork artwork = separation.artwork();
        List<String> lines = new ArrayList<>();
        lines.add(head(separation));
        lines.addAll(PlanTables.pulls(separation).lines());
        lines.addAll(PlanTables.overlaps(separation));
        for (Decision decision : separation.plan().decisions()) {
            String about = decision.about().isEmpty() ? "" : decision.about() + ": ";
            lines.add(decision.by() + ": " + about + decision.what() + " " + decision.why());
        }
        for (Note note : notes(separation)) {
            lines.add(Notices.line(artwork.name(), note));
        }
        return lines;
    }

    /** The same, with the keys of {@code plan.json}. */
    static Map<String, Object> json(Separation separation, Inspection inspection) {
        PlanEntries entries = new PlanEntries(separation, List.of());
        Map<String, Object> result = Remarks.result(inspection);
        result.put("artwork", entries.artwork());
        result.put("sheet", entries.sheet());
        result.put("pulls", entries.pulls());
        result.put("stacks", entries.stacks());
        result.put("decisions", Remarks.decisions(separation.plan().decisions()));
        result.put("seams", SeamEntries.of(separation.map()));
        result.put("notes", Remarks.notes(notes(separation)));
        result.put("findings", Remarks.findings(inspection.findings()));
        return result;
    }

    private static String head(Separation separation) {
        Sheet sheet = separation.table().sheet();
        return String.format(
                Locale.ROOT,
                "%s: %s of a sheet of %.1f x %.1f mm in %s",
                separation.artwork().name(),
                pulls(separation),
                sheet.size().width(),
                sheet.size().height(),
                sheet.colour().hex());
    }

    /** {@code 3 pulls on the front}, or {@code 3 pulls, 1 on the front, 2 on the back}. */
    private static String pulls(Separation separation) {
        Sheet sheet = separation.table().sheet();
        int all = separation.plan().pulls().size();
        long back = separation.plan().pulls().stream()
                .filter(pull -> sheet.side(pull.ink()) == Side.BACK)
                .count();
        String pulls = all + (all == 1 ? " pull" : " pulls");
        if (back == 0 || back == all) {
            return pulls + " on the " + PlanTables.lower(all == 0 ? sheet.side() : back == 0 ? Side.FRONT : Side.BACK);
        }
        return pulls + ", " + (all - back) + " on the front, " + back + " on the back";
    }

    private static List<Note> notes(Separation separation) {
        return Stream.concat(separation.artwork().notes().stream(), separation.notes().stream())
                .toList();
    }
}
