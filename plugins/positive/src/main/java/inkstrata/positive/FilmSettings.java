package inkstrata.positive;

import inkstrata.job.Job;
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
    private static final Option.Range STROKE_MM = new Option.Range(0.05, 1);

    static final List<Option> OPTIONS = List.of(
            Option.flag("marks", true, "register marks at corners and sides, the same on every film"),
            Option.length("stroke", "0.15 mm", STROKE_MM, "line width of the register marks; 0.1 to 0.25 mm is usual"),
            Option.flag("bar", true, "a bar of 100 mm that shows whether the film is at true size"));

    /** Reads the job. */
    static FilmSettings of(Positive positive, Job job) {
        Options options = Options.of(positive, job);
        double stroke = options.lengthMm("stroke").orElseThrow();
        return new FilmSettings(options.flag("marks"), Grid.steps(stroke), options.flag("bar"));
    }
}
