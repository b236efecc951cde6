package inkstrata.overprint;

import inkstrata.colour.Lab;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * An ink that prints over the others, and why it may.
 *
 * @param ink the key
 * @param why one sentence with its numbers
 */
record Key(Ink ink, String why) {
    /** A clearer ink would show what runs on beneath it (our own choice). */
    private static final double HIDES = 0.5;

    /**
     * The keys of a print: those the job names, else the darkest ink that hides, if it is dark enough.
     *
     * @param darkEnough the highest L* at which an ink hides what runs on beneath it
     */
    static List<Key> of(PlanningTable table, double darkEnough) {
        List<Key> named = table.inks().stream()
                .filter(Ink::key)
                .map(ink -> new Key(ink, "The job names it key."))
                .toList();
        if (!named.isEmpty() || table.inks().size() < 2) {
            return named;
        }
        Ink darkest = table.inks().stream()
                .filter(ink -> ink.hiding() >= HIDES)
                .min(Comparator.comparingDouble(Key::lightness)
                        .thenComparing(Ink::swatch)
                        .thenComparing(Ink::name))
                .orElse(null);
        if (darkest == null || lightness(darkest) > darkEnough) {
            return List.of();
        }
        return List.of(new Key(
                darkest,
                String.format(
                        Locale.ROOT,
                        "It is the darkest ink, L* %.0f, and with hiding %.2f it covers what lies beneath it.",
                        lightness(darkest),
                        darkest.hiding())));
    }

    private static double lightness(Ink ink) {
        return Lab.of(ink.swatch()).lightness();
    }
}
