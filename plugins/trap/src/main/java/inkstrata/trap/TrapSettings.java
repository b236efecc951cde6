package inkstrata.trap;

import inkstrata.job.Job;
import inkstrata.job.JobException;
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
 * @param corners how the rim turns corners
 */
record TrapSettings(double widthMm, Corners corners) {
    /** Wider rims show as a second outline (our own choice; by hand 0.3 to 1 mm is common practice, no source). */
    static final Option.Range WIDTH_MM = new Option.Range(0, 5);

    static final List<Option> OPTIONS = List.of(
            Option.length(
                    "width",
                    "as register",
                    WIDTH_MM,
                    "how far the lighter ink grows under the darker; 0 mm is no trap. Left out, the job's register"),
            Option.choice(
                    "corners",
                    name(Corners.ROUND),
                    Arrays.stream(Corners.values()).map(TrapSettings::name).toList(),
                    "how the rim turns outer corners"));

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
        return new TrapSettings(width, Corners.valueOf(options.choice("corners").toUpperCase(Locale.ROOT)));
    }

    private static String name(Corners corners) {
        return corners.name().toLowerCase(Locale.ROOT);
    }
}
