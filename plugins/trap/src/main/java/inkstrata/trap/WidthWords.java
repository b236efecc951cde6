package inkstrata.trap;

import inkstrata.measure.Length;
import inkstrata.plan.PrintPlan;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads widths of single inks and pairs: {@code gold 0.6 mm, sand and rust 0.2 mm}. */
final class WidthWords {
    private static final Pattern WIDTH = Pattern.compile("(.+?)\\s+([\\d.]+\\s*\\p{Alpha}+)");
    private static final String BETWEEN = " and ";

    private final List<String> inks;
    private final Map<Integer, Double> ofInk = new TreeMap<>();
    private final Map<TrapWidths.Pair, Double> ofPair = new TreeMap<>();

    private WidthWords(List<String> inks) {
        this.inks = inks;
    }

    /** @throws IllegalArgumentException if something can't be read, in words */
    static TrapWidths read(String words, double usual, PrintPlan plan) {
        WidthWords read = new WidthWords(
                plan.pulls().stream().map(pull -> pull.ink().name()).toList());
        for (String part : words.split(",", -1)) {
            if (!part.isBlank()) {
                read.add(part.strip());
            }
        }
        return new TrapWidths(usual, read.ofInk, read.ofPair);
    }

    private void add(String part) {
        Matcher matcher = WIDTH.matcher(part);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "'" + part + "' is not an ink and a width. Write: gold 0.6 mm, or sand and rust 0.2 mm.");
        }
        double width = Length.parse(matcher.group(2)).millimetres();
        if (!TrapSettings.WIDTH_MM.holds(width)) {
            throw new IllegalArgumentException("'" + part + "' is outside " + TrapSettings.WIDTH_MM + " mm.");
        }
        String who = matcher.group(1);
        int one = inks.indexOf(who);
        if (one >= 0) {
            ofInk.put(one, width);
        } else {
            ofPair.put(pair(who), width);
        }
    }

    private TrapWidths.Pair pair(String who) {
        for (int at = who.indexOf(BETWEEN); at >= 0; at = who.indexOf(BETWEEN, at + 1)) {
            int one = inks.indexOf(who.substring(0, at));
            int other = inks.indexOf(who.substring(at + BETWEEN.length()));
            if (one >= 0 && other >= 0 && one != other) {
                return TrapWidths.Pair.of(one, other);
            }
        }
        throw new IllegalArgumentException("'" + who + "' is neither an ink of this print nor two of them. They are: "
                + String.join(", ", inks) + ".");
    }
}
