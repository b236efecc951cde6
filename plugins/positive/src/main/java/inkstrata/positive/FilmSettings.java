package inkstrata.positive;

import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.PluginSettings;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Grid;
import inkstrata.plugin.Option;
import inkstrata.plugin.Options;
import java.util.List;

/**
 * What a job may say about films.
 *
 * @param marks whether register marks are drawn
 * @param stroke width of their lines, in grid steps
 * @param bar whether the 100 mm bar is drawn
 */
record FilmSettings(boolean marks, int stroke, boolean bar) {
    /** Thinner lines are lost in the emulsion, wider ones no longer show where their middle is (common practice, no source). */
    private static final double THINNEST_MM = 0.05;

    private static final double WIDEST_MM = 1;

    static final List<Option> OPTIONS = List.of(
            Option.flag("marks", true, "register marks at corners and sides, the same on every film"),
            Option.length("stroke", "0.15 mm", "line width of the register marks, 0.05 to 1 mm"),
            Option.flag("bar", true, "a bar of 100 mm that shows whether the film is at true size"));

    /**
     * Reads the job.
     *
     * @throws JobException if a value is out of its range
     */
    static FilmSettings of(Positive positive, Job job) {
        Options options = Options.of(positive, job);
        double stroke = options.lengthMm("stroke").orElseThrow();
        if (!(stroke >= THINNEST_MM && stroke <= WIDEST_MM)) {
            PluginSettings written = job.settingsFor(positive.id());
            Setting setting = written.values().get("stroke");
            throw new JobException(
                    job.file(),
                    setting.line(),
                    positive.id() + ".stroke: '" + setting.text() + "' is outside " + THINNEST_MM + " to " + WIDEST_MM
                            + " mm. Lines of 0.1 to 0.25 mm are usual.");
        }
        return new FilmSettings(options.flag("marks"), Grid.steps(stroke), options.flag("bar"));
    }
}
