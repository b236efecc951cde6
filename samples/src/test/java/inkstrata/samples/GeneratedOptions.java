package inkstrata.samples;

import inkstrata.plugin.Option;
import inkstrata.plugin.Plugin;
import inkstrata.plugin.Plugins;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a random job tells plug-ins: every option that any of them declares, anywhere in its range.
 *
 * @param random where it comes from
 * @param inks of the job that print
 * @param shapes ids of shapes that show
 */
record GeneratedOptions(Random random, List<String> inks, List<String> shapes) {
    /** Two planners of which one job may speak to one. */
    private static final List<String> RIVALS = List.of("overprint", "reduction");

    /** Ends of ranges are far out; most values lie near the lower end, as those of a printmaker do. */
    private static final double NEAR_THE_LEAST = 4;

    /** The lines below {@code use:}. */
    String lines(Plugins plugins) {
        TreeMap<String, Plugin> byId = new TreeMap<>();
        Stream.of(plugins.planners(), plugins.shapers(), plugins.inspectors(), plugins.writers(), plugins.formats())
                .flatMap(List::stream)
                .forEach(plugin -> byId.put(plugin.id(), plugin));
        byId.remove(RIVALS.get(random.nextInt(5) == 0 ? 0 : 1));
        StringBuilder text = new StringBuilder();
        byId.forEach((id, plugin) -> {
            List<String> set = new ArrayList<>();
            boolean isBuilt = false;
            for (Option option : plugin.options()) {
                if (random.nextInt(4) == 0) {
                    continue;
                }
                String value = value(id, option, isBuilt);
                isBuilt |= option.name().equals("build") && value.equals("true");
                if (!value.isEmpty()) {
                    set.add(option.name() + ": " + value);
                }
            }
            text.append(set.isEmpty() ? "" : "  " + id + ": {" + String.join(", ", set) + "}\n");
        });
        return text.isEmpty() ? "" : "use:\n" + text;
    }

    private String value(String plugin, Option option, boolean isBuilt) {
        return switch (option.kind()) {
            case FLAG -> String.valueOf(random.nextBoolean());
            case CHOICE -> option.choices().get(random.nextInt(option.choices().size()));
            case LENGTH -> String.format(Locale.ROOT, "%.4f mm", number(option.range()));
            // With many films a search spends all its effort, which takes seconds: rarely.
            case NUMBER ->
                isBuilt && option.name().equals("maxFilms") && random.nextInt(100) > 0
                        ? String.valueOf(1 + random.nextInt(3))
                        : String.format(
                                Locale.ROOT,
                                option.name().equals("resolution") ? "%.0f" : "%.2f",
                                number(option.range()));
            case TEXT -> text(plugin + "." + option.name());
        };
    }

    private double number(Option.Range range) {
        return switch (random.nextInt(8)) {
            case 0 -> range.least();
            case 1 -> random.nextInt(4) == 0 ? range.most() : range.least();
            case 2 -> range.least() + (range.most() - range.least()) * random.nextDouble();
            default -> range.least() + (range.most() - range.least()) * Math.pow(random.nextDouble(), NEAR_THE_LEAST);
        };
    }

    /** Words can't be drawn from a range: an option that is not known here must be added. */
    private String text(String option) {
        return switch (option) {
            case "trap.widths" ->
                inks.isEmpty() || random.nextInt(4) > 0 ? "" : "'" + some(inks) + " " + width() + pair() + "'";
            case "reduction.keep" -> shapes.isEmpty() || random.nextInt(3) > 0 ? "" : "'#" + some(shapes) + "'";
            case "underbase.ink" -> inks.isEmpty() || random.nextInt(3) > 0 ? "" : some(inks);
            case "positive.formats" ->
                "'" + some(List.of("svg", "svg, pdf", "pdf-inks", "tiff", "svg, png", "pdf, pdf-inks, png, tiff"))
                        + "'";
            case "positive.tiles" -> some(List.of("none", "A4", "A3", "160 x 150 mm"));
            case "positive.date" -> some(List.of("none", "'today'", "'3 May'"));
            default -> throw new IllegalStateException(option + " is a text; say in GeneratedOptions what it may be");
        };
    }

    private String pair() {
        return inks.size() < 2 || random.nextBoolean()
                ? ""
                : ", " + inks.get(0) + " and " + inks.get(1) + " " + width();
    }

    private String width() {
        return String.format(Locale.ROOT, "%.3f mm", number(new Option.Range(0, 5)));
    }

    private String some(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
