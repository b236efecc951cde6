package inkstrata.positive;

import inkstrata.plan.PrintPlan;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * File names of films without their ending: the pull's number and its ink, such as {@code 01-sand}.
 *
 * <p>ASCII letters, digits and hyphens alone; they sort in print order, and the number keeps them apart.
 */
final class FilmNames {
    /** Longer names of inks are cut, so that a path stays short enough for any file system. */
    private static final int LONGEST = 40;

    private FilmNames() {}

    /** One for each pull, first printed first. */
    static List<String> of(PrintPlan plan) {
        int digits = Math.max(2, Integer.toString(plan.pulls().size()).length());
        List<String> names = new ArrayList<>();
        for (int pull = 0; pull < plan.pulls().size(); pull++) {
            String number = String.format(Locale.ROOT, "%0" + digits + "d", pull + 1);
            names.add(number + "-" + reduced(plan.pulls().get(pull).ink().name()));
        }
        return List.copyOf(names);
    }

    private static String reduced(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String cut = plain.substring(0, Math.min(LONGEST, plain.length()));
        String trimmed = cut.replaceAll("^-|-$", "");
        return trimmed.isEmpty() ? "ink" : trimmed;
    }
}
