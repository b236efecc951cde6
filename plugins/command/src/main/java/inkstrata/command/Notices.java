package inkstrata.command;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.separation.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Notes and findings as lines and as JSON. */
final class Notices {
    private Notices() {}

    /** {@code warning: boats.svg:12 <path id="sail">: what} */
    static String line(String artwork, Note note) {
        Source source = note.source();
        String where = source.line() > 0 ? artwork + ":" + source.line() + " " + source + ": " : "";
        return lower(note.severity()) + ": " + where + note.text();
    }

    /** {@code warning at 12.0, 30.5 mm (rule): measured, limit. What to do.} */
    static String line(Finding finding) {
        return String.format(
                Locale.ROOT,
                "%s at %.1f, %.1f mm (%s): %s, limit %s. %s",
                lower(finding.severity()),
                finding.place().x(),
                finding.place().y(),
                finding.rule(),
                finding.measured(),
                finding.limit(),
                finding.remedy());
    }

    static List<Map<String, Object>> json(List<Note> notes) {
        return notes.stream().map(Notices::json).toList();
    }

    /** With the keys of {@code plan.json}. */
    static Map<String, Object> json(Finding finding) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("severity", lower(finding.severity()));
        entry.put("rule", finding.rule());
        entry.put("xMm", Json.decimal(finding.place().x(), 3));
        entry.put("yMm", Json.decimal(finding.place().y(), 3));
        entry.put("measured", finding.measured());
        entry.put("limit", finding.limit());
        entry.put("remedy", finding.remedy());
        return entry;
    }

    private static Map<String, Object> json(Note note) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("severity", lower(note.severity()));
        entry.put("element", note.source().element());
        entry.put("id", note.source().id());
        entry.put("line", note.source().line());
        entry.put("text", note.text());
        return entry;
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
