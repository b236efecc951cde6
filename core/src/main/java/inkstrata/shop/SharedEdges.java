package inkstrata.shop;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.colour.Ciede2000;
import inkstrata.colour.Rgb;
import inkstrata.plan.Ink;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** How much edge each two colours share where they show beside each other. */
final class SharedEdges {
    /** An edge between two colours that are no farther apart (CIEDE2000) is none that anybody sees (common practice, no source). */
    private static final double UNSEEN = 1;

    private final Map<Rgb, Map<Rgb, Double>> lengths = new TreeMap<>();

    /** Adds some. */
    void add(Rgb one, Rgb other, double lengthMm) {
        Rgb first = one.compareTo(other) < 0 ? one : other;
        Rgb second = one.compareTo(other) < 0 ? other : one;
        lengths.computeIfAbsent(first, colour -> new TreeMap<>()).merge(second, lengthMm, Double::sum);
    }

    /** In millimetres; 0 where they do not touch, or only in points. */
    double lengthMm(Rgb one, Rgb other) {
        Rgb first = one.compareTo(other) < 0 ? one : other;
        Rgb second = one.compareTo(other) < 0 ? other : one;
        return lengths.getOrDefault(first, Map.of()).getOrDefault(second, 0.0);
    }

    /** Whether two colours touch along an edge that can be seen. */
    boolean isSeen(Rgb one, Rgb other) {
        return lengthMm(one, other) > 0 && Ciede2000.difference(one, other) > UNSEEN;
    }

    /** A warning for each two colours whose edge is gone since one ink prints both. */
    List<Note> lost(Map<Rgb, Optional<Ink>> inkOf) {
        List<Note> notes = new ArrayList<>();
        lengths.forEach((one, others) -> others.forEach((other, length) -> {
            Optional<Ink> ink = inkOf.getOrDefault(one, Optional.empty());
            if (isSeen(one, other) && ink.isPresent() && ink.equals(inkOf.get(other))) {
                notes.add(Note.warning(
                        Source.UNKNOWN,
                        String.format(
                                Locale.ROOT,
                                "%s and %s touch along %.1f mm and are both printed with ink '%s': that edge is lost.",
                                one,
                                other,
                                length,
                                ink.get().name())));
            }
        }));
        return notes;
    }
}
