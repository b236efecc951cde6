package inkstrata.trap;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Says what was done: which ink grew under or over which, how wide, along what length. */
final class TrapNotes {
    private TrapNotes() {}

    /** One note for each two pulls, in the order of the rims. */
    static List<Note> of(List<Rim> rims, double widthMm, Separation separation) {
        Map<List<Integer>, Double> lengths = new LinkedHashMap<>();
        for (Rim rim : rims) {
            List<Integer> pair =
                    List.of(rim.meeting().giving(), rim.meeting().into().pull());
            lengths.merge(pair, rim.lengthMm(), Double::sum);
        }
        List<Note> notes = new ArrayList<>();
        lengths.forEach((pair, length) -> notes.add(Note.info(
                Source.UNKNOWN,
                String.format(
                        Locale.ROOT,
                        "Trap: %s runs %.2f mm %s %s along %.1f mm.",
                        name(separation, pair.get(0)),
                        widthMm,
                        isUnder(separation, pair.get(0), pair.get(1)) ? "under" : "over",
                        name(separation, pair.get(1)),
                        length))));
        return notes;
    }

    private static boolean isUnder(Separation separation, int giving, int receiving) {
        return separation.table().sheet().side().isNearer(receiving, giving);
    }

    private static String name(Separation separation, int pull) {
        return separation.plan().pulls().get(pull).ink().name();
    }
}
