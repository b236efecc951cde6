package inkstrata.shop;

import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plugin.Option;
import inkstrata.plugin.Plugin;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes a job file to begin with: it says what a plan without one came to, so that it gives the same plan, and can be edited. */
public final class Starter {
    private Starter() {}

    /**
     * The text of the file.
     *
     * @param separation planned without a job file
     * @param job that was in force: the defaults, but perhaps for how many inks there may be
     * @param widthMm true width of the picture where it was given; else empty
     */
    public static String text(Separation separation, Plugins plugins, Job job, String widthMm) {
        Sheet sheet = separation.table().sheet();
        StringBuilder text = new StringBuilder();
        text.append("# Job file for ")
                .append(plain(separation.artwork().name()))
                .append(", as it is planned without one.\n");
        text.append(
                "# Every key may be left out. Lines that begin with # do nothing: take the # away to use them.\n\n");
        line(text, "title: " + quoted(separation.artwork().name().replaceFirst("(?i)\\.svgz?$", "")), "");
        line(
                text,
                "sheet: {size: " + number(sheet.size().width()) + " x "
                        + number(sheet.size().height()) + " mm, colour: \"" + sheet.colour() + "\""
                        + also(Job.BARE_SHEET, separation) + ", print: front}",
                "or A2, A3 landscape, ...; print: back for the back of a clear sheet");
        line(
                text,
                widthMm.isEmpty()
                        ? "# artwork: {width: "
                                + number(separation.artwork().frame().width()) + " mm, place: centre}"
                        : "artwork: {width: " + widthMm + ", place: centre}",
                "or place: {x: 50 mm, y: 70 mm}, its top left corner");
        line(
                text,
                "register: " + number(job.registerMm()) + " mm",
                "the most by which any two pulls may be off from each other");
        line(
                text,
                "seam: " + number(job.seamMm()) + " mm",
                "strips between shapes that are no wider are closed; 0 mm leaves them");
        line(text, merge(job), "colours closer than this (CIEDE2000) become one ink, unless they touch");
        inks(text, separation);
        String order = separation.plan().pulls().stream()
                .map(Pull::ink)
                .map(ink -> quoted(ink.name()))
                .collect(Collectors.joining(", "));
        line(text, "# order: [" + order + "]", "as found; \"...\" stands for the rest");
        line(
                text,
                "edition: {prints: " + job.edition().prints() + ", spoilage: "
                        + number(100 * job.edition().spoilage()) + " %}",
                "");
        uses(text, plugins);
        return text.toString();
    }

    private static String merge(Job job) {
        return job.merge().inks().isEmpty()
                ? "merge: " + number(job.merge().within())
                : "merge: {within: " + number(job.merge().within()) + ", inks: "
                        + job.merge().inks().getAsInt() + "}";
    }

    private static void inks(StringBuilder text, Separation separation) {
        List<Ink> inks = separation.table().inks();
        if (inks.isEmpty()) {
            return;
        }
        line(text, "inks:", "hiding: 0 clear to 1 opaque; and mesh: 77-48, key: true, side: back, from: \"#group\"");
        for (Ink ink : inks) {
            text.append("  - {name: ")
                    .append(quoted(ink.name()))
                    .append(", prints: \"")
                    .append(ink.swatch())
                    .append('"')
                    .append(also(ink.name(), separation))
                    .append(", hiding: ")
                    .append(number(ink.hiding()))
                    .append("}\n");
        }
    }

    private static String also(String ink, Separation separation) {
        List<String> colours = separation.joined().entrySet().stream()
                .filter(entry -> entry.getValue().equals(ink))
                .map(Map.Entry::getKey)
                .sorted()
                .map(Rgb::hex)
                .map(hex -> "\"" + hex + "\"")
                .toList();
        return colours.isEmpty() ? "" : ", also: [" + String.join(", ", colours) + "]";
    }

    private static void uses(StringBuilder text, Plugins plugins) {
        text.append("# use:\n");
        for (Plugin plugin : plugins.all()) {
            if (!plugin.options().isEmpty()) {
                line(text, "#   " + plugin.id() + ":", plugin.description());
                for (Option option : plugin.options()) {
                    line(text, "#     " + option.name() + ": " + quoted(option), option.description());
                }
            }
        }
    }

    /** Remarks begin in one column where there is room. */
    private static void line(StringBuilder text, String setting, String remark) {
        text.append(setting);
        if (!remark.isEmpty()) {
            text.append(" ".repeat(Math.max(2, 50 - setting.length())))
                    .append("# ")
                    .append(plain(remark));
        }
        text.append('\n');
    }

    private static String plain(String words) {
        return words.replaceAll("\\p{Cntrl}", " ");
    }

    /** An option's default as YAML has it. */
    private static String quoted(Option option) {
        return option.kind() == Option.Kind.TEXT ? quoted(option.byDefault()) : option.byDefault();
    }

    /** As YAML has it in double quotes, where it is more than a plain word. */
    private static String quoted(String words) {
        if (words.matches("[A-Za-z][A-Za-z0-9 _-]*[A-Za-z0-9]|[A-Za-z]")
                && !words.matches("(?i)true|false|null|yes|no|on|off")) {
            return words;
        }
        StringBuilder quoted = new StringBuilder("\"");
        words.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
            } else if (c < 0x20 || c == 0x7f) {
                quoted.append(String.format(Locale.ROOT, "\\x%02x", c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.append('"').toString();
    }

    /** All digits that tell it from its neighbours, without an exponent. */
    private static String number(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
