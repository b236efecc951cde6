package inkstrata.positive;

import inkstrata.job.Job;
import inkstrata.measure.Grid;
import inkstrata.plugin.Option;
import inkstrata.plugin.Options;
import java.util.List;

/**
 * What a job may say about what lies around the picture.
 *
 * @param marks whether register, crop and centre marks are drawn
 * @param size of a register mark from end to end, in grid steps
 * @param stroke width of the marks' lines, in grid steps
 * @param bar whether the 100 mm bar is drawn
 * @param wedge whether the step wedge is drawn
 * @param date for the label; empty for none
 */
record FilmSettings(boolean marks, int size, int stroke, boolean bar, boolean wedge, String date) {
    /** Thinner lines are lost in the emulsion, wider ones no longer show where their middle is (common practice, no source). */
    private static final Option.Range STROKE_MM = new Option.Range(0.05, 1);

    /** Smaller rings fill in, larger ones waste film (our own choice). */
    private static final Option.Range SIZE_MM = new Option.Range(5, 30);

    private static final String NO_DATE = "none";

    static final List<Option> OPTIONS = List.of(
            Option.flag(
                    "marks",
                    true,
                    "register marks at corners and sides, crop and centre marks, the same on every film"),
            Option.length("size", "10 mm", SIZE_MM, "width of a register mark"),
            Option.length("stroke", "0.15 mm", STROKE_MM, "line width of the marks; 0.1 to 0.25 mm is usual"),
            Option.flag("bar", true, "a bar of 100 mm that shows whether the film is at true size"),
            Option.flag("wedge", true, "lines from 0.1 to 1 mm that show whether a screen was exposed well"),
            Option.text("date", NO_DATE, "for the label, as you write it"));

    /** Reads the job. */
    static FilmSettings of(Positive positive, Job job) {
        Options options = Options.of(positive, job);
        return new FilmSettings(
                options.flag("marks"),
                Grid.steps(options.lengthMm("size").orElseThrow()),
                Grid.steps(options.lengthMm("stroke").orElseThrow()),
                options.flag("bar"),
                options.flag("wedge"),
                options.text("date").equals(NO_DATE) ? "" : options.text("date"));
    }
}
