package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Note;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlannedColour;
import inkstrata.plan.Sheet;
import inkstrata.separation.Finding;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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

    /** The same, with the keys of {@code plan.json} where they mean the same. */
    static Map<String, Object> json(Separation separation, List<Finding> findings) {
        Sheet sheet = separation.table().sheet();
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("artwork", separation.artwork().name());
        Map<String, Object> paper = new LinkedHashMap<>();
        paper.put("widthMm", Json.decimal(sheet.size().width(), 5));
        paper.put("heightMm", Json.decimal(sheet.size().height(), 5));
        paper.put("colour", sheet.colour().hex());
        paper.put("side", PlanTables.lower(sheet.side()));
        result.put("sheet", paper);
        List<Map<String, Object>> pulls = new ArrayList<>();
        for (int i = 0; i < separation.printed().size(); i++) {
            Ink ink = separation.plan().pulls().get(i).ink();
            Map<String, Object> swatch = new LinkedHashMap<>();
            swatch.put("name", ink.name());
            swatch.put("swatch", ink.swatch().hex());
            swatch.put("hiding", Json.decimal(ink.hiding(), 4));
            swatch.put("key", ink.key());
            Map<String, Object> pull = new LinkedHashMap<>();
            pull.put("number", i + 1);
            pull.put("ink", swatch);
            pull.put("side", PlanTables.lower(sheet.side(ink)));
            pull.put("areaMm2", Json.decimal(separation.printed().get(i).areaMm2(), 4));
            pulls.add(pull);
        }
        result.put("pulls", pulls);
        result.put(
                "stacks",
                PlannedColour.of(separation.table(), separation.plan()).stream()
                        .map(PlanReport::json)
                        .toList());
        result.put(
                "decisions",
                separation.plan().decisions().stream().map(PlanReport::json).toList());
        result.put("notes", Notices.json(notes(separation)));
        result.put("findings", findings.stream().map(Notices::json).toList());
        return result;
    }

    private static String head(Separation separation) {
        Sheet sheet = separation.table().sheet();
        int pulls = separation.plan().pulls().size();
        return String.format(
                Locale.ROOT,
                "%s: %d %s on the %s of a sheet of %.1f x %.1f mm in %s",
                separation.artwork().name(),
                pulls,
                pulls == 1 ? "pull" : "pulls",
                PlanTables.lower(sheet.side()),
                sheet.size().width(),
                sheet.size().height(),
                sheet.colour().hex());
    }

    private static Map<String, Object> json(PlannedColour colour) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("inks", colour.inks().stream().map(Ink::name).toList());
        entry.put("areaMm2", Json.decimal(colour.row().areaMm2(), 4));
        colour.drawn().ifPresent(drawn -> entry.put("drawn", drawn.hex()));
        entry.put("predicted", colour.predicted().hex());
        entry.put("difference", Json.decimal(colour.difference(), 2));
        return entry;
    }

    private static Map<String, Object> json(Decision decision) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("by", decision.by());
        entry.put("about", decision.about());
        entry.put("what", decision.what());
        entry.put("why", decision.why());
        return entry;
    }

    private static List<Note> notes(Separation separation) {
        return Stream.concat(separation.artwork().notes().stream(), separation.notes().stream())
                .toList();
    }
}
