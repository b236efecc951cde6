package inkstrata.report;

import inkstrata.artwork.Note;
import inkstrata.measure.Place;
import inkstrata.plan.Decision;
import inkstrata.separation.Finding;
import inkstrata.separation.Inspection;
import inkstrata.separation.Quantity;
import inkstrata.separation.Subject;
import inkstrata.separation.Verdict;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is said about a set: verdict, findings, notes and decisions. Keys that have nothing to hold are left out. */
public final class Remarks {
    private Remarks() {}

    /** Begins a result: with the verdict, if there is one, then the format. */
    public static Map<String, Object> result(Inspection inspection) {
        Map<String, Object> result = new LinkedHashMap<>();
        inspection.verdict().ifPresent(verdict -> result.put("verdict", verdict(verdict)));
        result.put("format", Json.FORMAT);
        return result;
    }

    public static Map<String, Object> verdict(Verdict verdict) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("answer", lower(verdict.answer()));
        entry.put("text", verdict.line());
        entry.put("askedMm", Decimals.length(verdict.askedMm()));
        verdict.heldMm().ifPresent(held -> entry.put("heldMm", Decimals.length(held)));
        verdict.plannedMm().ifPresent(planned -> entry.put("plannedMm", Decimals.length(planned)));
        verdict.parting().ifPresent(parting -> {
            put(parting.place(), entry);
            entry.put("between", parting.between());
        });
        entry.put("obstacles", verdict.obstacles());
        entry.put("inks", verdict.inks());
        entry.put("notCounted", verdict.notCounted());
        return entry;
    }

    public static List<Map<String, Object>> findings(List<Finding> findings) {
        return findings.stream().map(Remarks::finding).toList();
    }

    private static Map<String, Object> finding(Finding finding) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("severity", lower(finding.severity()));
        entry.put("rule", finding.rule());
        put(finding.subject(), entry);
        put(finding.place(), entry);
        entry.put("measured", finding.measured());
        entry.put("limit", finding.limit());
        entry.put("remedy", finding.remedy());
        finding.quantity().ifPresent(quantity -> put(quantity, entry));
        finding.area().ifPresent(area -> entry.put("areaMm2", Decimals.area(area.areaMm2())));
        return entry;
    }

    private static void put(Subject subject, Map<String, Object> entry) {
        if (!subject.ink().isEmpty()) {
            entry.put("ink", subject.ink());
        }
        subject.pull().ifPresent(pull -> entry.put("pull", pull + 1));
        if (!subject.file().isEmpty()) {
            entry.put("file", subject.file());
        }
        if (!subject.element().isEmpty()) {
            entry.put("element", subject.element());
        }
    }

    private static void put(Place place, Map<String, Object> entry) {
        entry.put("xMm", Decimals.length(place.x()));
        entry.put("yMm", Decimals.length(place.y()));
    }

    private static void put(Quantity quantity, Map<String, Object> entry) {
        entry.put("measured" + quantity.unit().suffix(), Decimals.length(quantity.measured()));
        quantity.limit().ifPresent(limit -> entry.put("limit" + quantity.unit().suffix(), Decimals.length(limit)));
    }

    public static List<Map<String, Object>> notes(List<Note> notes) {
        return notes.stream().map(Remarks::note).toList();
    }

    private static Map<String, Object> note(Note note) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("severity", lower(note.severity()));
        if (!note.source().toString().isEmpty()) {
            entry.put("element", note.source().toString());
        }
        if (note.source().line() > 0) {
            entry.put("line", note.source().line());
        }
        entry.put("text", note.text());
        return entry;
    }

    public static List<Map<String, Object>> decisions(List<Decision> decisions) {
        return decisions.stream().map(Remarks::decision).toList();
    }

    private static Map<String, Object> decision(Decision decision) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("by", decision.by());
        entry.put("about", decision.about());
        entry.put("what", decision.what());
        entry.put("why", decision.why());
        return entry;
    }

    /** One of a few words, in small letters, with spaces. */
    static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
