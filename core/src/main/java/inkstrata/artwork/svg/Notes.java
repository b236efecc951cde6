package inkstrata.artwork.svg;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers what the reader has to say; what is said too often is counted instead of repeated. Not for several threads. */
final class Notes {
    /** So many notes of the same words are kept; a drawing with one fault on every shape would drown the others. */
    static final int OF_THE_SAME_WORDS = 20;

    private final List<Note> notes = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();

    void add(Note note) {
        int count = counts.merge(note.severity() + note.text(), 1, Integer::sum);
        if (count <= OF_THE_SAME_WORDS) {
            notes.add(note);
        }
    }

    void info(Source source, String text) {
        add(Note.info(source, text));
    }

    void warning(Source source, String text) {
        add(Note.warning(source, text));
    }

    /** Everything said so far, in order; the last of too many equal ones tells how many more there were. */
    List<Note> list() {
        Map<String, Integer> seen = new LinkedHashMap<>();
        List<Note> all = new ArrayList<>(notes.size());
        for (Note note : notes) {
            String key = note.severity() + note.text();
            int more = counts.get(key) - OF_THE_SAME_WORDS;
            boolean last = seen.merge(key, 1, Integer::sum) == OF_THE_SAME_WORDS && more > 0;
            all.add(last ? new Note(note.severity(), note.source(), note.text() + " (and " + more + " more)") : note);
        }
        return List.copyOf(all);
    }
}
