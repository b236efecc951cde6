package inkstrata.trap;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.planar.Spreading;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says what was done: which ink grew under or over which, how wide, along what length. */
record TrapNotes(List<Meeting> meetings, Spreading spreading, Separation separation) {
    /** What is left of borders that part nothing is rounding. */
    private static final double MEASURABLE_MM = 1e-9;

    /** A warning for each two inks that only touch; then a note for each pull that gives way and each width, in their order. */
    List<Note> notes() {
        SortedMap<Rim, SortedMap<Integer, Double>> lengths = new TreeMap<>();
        for (int m = 0; m < meetings.size(); m++) {
            if (spreading.borderMm(m) > MEASURABLE_MM && !meetings.get(m).isButted()) {
                Rim rim = new Rim(meetings.get(m).giving(), meetings.get(m).widthMm());
                lengths.computeIfAbsent(rim, known -> new TreeMap<>())
                        .merge(meetings.get(m).into().pull(), spreading.borderMm(m), Double::sum);
            }
        }
        List<Note> notes = new ArrayList<>();
        butted().forEach((pair, lengthMm) -> notes.add(butted(pair, lengthMm)));
        lengths.forEach((rim, receiving) -> notes.add(Note.info(
                Source.UNKNOWN,
                String.format(
                        Locale.ROOT,
                        "Trap: %s runs %.2f mm %s.",
                        name(rim.giving()),
                        rim.widthMm(),
                        Stream.of(listed(rim.giving(), true, receiving), listed(rim.giving(), false, receiving))
                                .filter(part -> !part.isEmpty())
                                .collect(Collectors.joining("; "))))));
        return notes;
    }

    private SortedMap<TrapWidths.Pair, Double> butted() {
        SortedMap<TrapWidths.Pair, Double> lengths = new TreeMap<>();
        for (int m = 0; m < meetings.size(); m++) {
            if (spreading.borderMm(m) > MEASURABLE_MM && meetings.get(m).isButted()) {
                TrapWidths.Pair pair = TrapWidths.Pair.of(
                        meetings.get(m).giving(), meetings.get(m).into().pull());
                lengths.merge(pair, spreading.borderMm(m), Double::sum);
            }
        }
        return lengths;
    }

    private Note butted(TrapWidths.Pair pair, double lengthMm) {
        return Note.warning(
                Source.UNKNOWN,
                String.format(
                        Locale.ROOT,
                        "Trap: %s and %s only touch (%.1f mm): where they overlap they show a third colour."
                                + " Sheet shows between them as soon as a pull is off."
                                + " If a rim is the lesser evil, set use.trap.widths: '%1$s and %2$s 0.2 mm'.",
                        name(pair.lower()),
                        name(pair.higher()),
                        lengthMm));
    }

    private record Rim(int giving, double widthMm) implements Comparable<Rim> {
        @Override
        public int compareTo(Rim other) {
            return giving == other.giving
                    ? Double.compare(widthMm, other.widthMm)
                    : Integer.compare(giving, other.giving);
        }
    }

    private String listed(int giving, boolean under, SortedMap<Integer, Double> receiving) {
        return receiving.entrySet().stream()
                .filter(other -> separation.isNearer(other.getKey(), giving) == under)
                .map(other -> String.format(Locale.ROOT, "%s (%.1f mm)", name(other.getKey()), other.getValue()))
                .collect(Collectors.collectingAndThen(
                        Collectors.joining(", "), list -> list.isEmpty() ? list : (under ? "under " : "over ") + list));
    }

    private String name(int pull) {
        return separation.plan().pulls().get(pull).ink().name();
    }
}
