package inkstrata.job;

import inkstrata.job.PluginSettings.Setting;
import inkstrata.plan.Ink;
import java.util.List;
import java.util.Map;

/** Jobs that say something to one plug-in, for tests. */
public final class JobExample {
    /** Line of the plug-in's id in the job file. */
    private static final int LINE = 7;

    private JobExample() {}

    /** From a file called job.yaml; all else is as usual. */
    public static Job using(double registerMm, String plugin, Map<String, Setting> settings) {
        Job job = JobReader.read("job.yaml", "register: " + registerMm + " mm");
        return with(job, job.inks(), Map.of(plugin, new PluginSettings(LINE, settings)));
    }

    /** The same with other inks listed. */
    public static Job withInks(Job job, List<Ink> inks) {
        return with(job, inks, job.use());
    }

    /** The same with other settings of plug-ins. */
    public static Job withUse(Job job, Map<String, PluginSettings> use) {
        return with(job, job.inks(), use);
    }

    private static Job with(Job job, List<Ink> inks, Map<String, PluginSettings> use) {
        return new Job(
                job.file(),
                job.title(),
                job.sheet(),
                job.sheetColour(),
                job.side(),
                job.sheetFilm(),
                job.artworkWidthMm(),
                job.artworkPlace(),
                job.registerMm(),
                job.seamMm(),
                job.merge(),
                inks,
                job.also(),
                job.order(),
                job.edition(),
                job.films(),
                use);
    }
}
