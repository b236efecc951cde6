package inkstrata.trap;

import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.PluginSettings;
import inkstrata.plan.PrintPlan;
import inkstrata.planar.Corners;
import inkstrata.plugin.Option;
import inkstrata.plugin.Options;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What the job asks of the trap.
 *
 * @param widthMm how far the lighter ink grows; 0 is no trap
 * @param widths of single inks and pairs, as written
 * @param alike two inks nearer in lightness (L*) than this give half each
 * @param corners how the rim turns corners
 * @param mitreLimit how many widths a mitred corner may reach
 * @param job for messages
 */
record TrapSettings(double widthMm, String widths, double alike, Corners corners, double mitreLimit, Job job) {
    /** Wider rims show as a second outline (our own choice; by hand 0.3 to 1 mm is common practice, no source). */
    static final Option.Range WIDTH_MM = new Option.Range(0, 5);

    static final List<Option> OPTIONS = List.of(
            Option.length(
                    "width",
                    "as register",
                    WIDTH_MM,
                    "how far the lighter ink grows under the darker; 0 mm is no trap. Left out, the job's register"),
            Option.text(
                    "widths",
                    "",
                    "other widths for an ink or between two inks: gold 0.6 mm, sand and rust 0.2 mm; two inks count more than one"),
            Option.number(
                    "alike",
                    "0",
                    new Option.Range(0, 100),
                    "two inks nearer in lightness (L*) than this give half the width each, one of them in plain sight; 0: never"),
            Option.choice(
                    "corners",
                    name(Corners.ROUND),
                    Arrays.stream(Corners.values()).map(TrapSettings::name).toList(),
                    "how the rim turns outer corners"),
            Option.number(
                    "limit",
                    String.valueOf(Corners.MITRE_LIMIT),
                    new Option.Range(1, 10),
                    "how many widths a mitred corner may reach; a sharper one is cut off there"));

    /** @throws JobException if the register, taken for the width, is too large for it */
    static TrapSettings of(Trap trap, Job job) {
        Options options = Options.of(trap, job);
        double width = options.lengthMm("width").orElse(job.registerMm());
        if (width > WIDTH_MM.most()) {
            throw new JobException(
                    job.file(),
                    0,
                    "a trap as wide as the register, " + width + " mm, is outside " + WIDTH_MM
                            + " mm. Set use.trap.width or register.");
        }
        return new TrapSettings(
                width,
                options.text("widths"),
                options.number("alike").orElseThrow(),
                Corners.valueOf(options.choice("corners").toUpperCase(Locale.ROOT)),
                options.number("limit").orElseThrow(),
                job);
    }

    /** @throws JobException if a width is asked for an ink that the plan does not have, or can't be read */
    TrapWidths widths(PrintPlan plan) {
        try {
            return WidthWords.read(widths, widthMm, plan);
        } catch (IllegalArgumentException fault) {
            PluginSettings.Setting setting = job.settingsFor("trap").values().get("widths");
            throw new JobException(job.file(), setting.line(), "trap.widths: " + fault.getMessage());
        }
    }

    private static String name(Corners corners) {
        return corners.name().toLowerCase(Locale.ROOT);
    }
}
