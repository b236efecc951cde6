package inkstrata.job;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds what somebody meant: the known word fewest letters away (V. I. Levenshtein, 1966). */
public final class NearestWord {
    private NearestWord() {}

    /** The nearest word, if no more than a third of its letters had to change, or two but not all of them. */
    public static Optional<String> of(String typed, Collection<String> known) {
        return known.stream()
                .filter(word -> distance(typed, word) <= Math.min(Math.max(2, word.length() / 3), word.length() - 1))
                .min(Comparator.<String>comparingInt(word -> distance(typed, word))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** {@code Did you mean 'colour'?}, or, where nothing is near, all that is known. */
    public static String orAll(String typed, Collection<String> known) {
        String question = question(typed, known);
        return question.isEmpty() ? "Known here are " + String.join(", ", known) + "." : question.strip();
    }

    /** {@code Did you mean 'colour'?} with a space before it; empty where nothing is near. */
    public static String question(String typed, Collection<String> known) {
        return of(typed, known).map(word -> " Did you mean '" + word + "'?").orElse("");
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
