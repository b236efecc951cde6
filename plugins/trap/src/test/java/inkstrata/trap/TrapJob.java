package inkstrata.trap;

import inkstrata.job.Job;
import inkstrata.job.PluginSettings;
import inkstrata.job.PluginSettings.Setting;
import java.util.Locale;
import java.util.Map;

/** Jobs that ask for a trap, for tests. */
final class TrapJob {
    private TrapJob() {}

    static Job with(double widthMm, String corners) {
        return using(Map.of(
                "width", new Setting(String.format(Locale.ROOT, "%s mm", widthMm), 7),
                "corners", new Setting(corners, 8)));
    }

    static Job using(Map<String, Setting> settings) {
        Job job = Job.DEFAULT;
        return withRegister(job.registerMm(), settings);
    }

    static Job withRegister(double registerMm, Map<String, Setting> settings) {
        Job job = Job.DEFAULT;
        return new Job(
                "job.yaml",
                job.title(),
                job.sheet(),
                job.sheetColour(),
                job.side(),
                job.artworkWidthMm(),
                job.artworkPlace(),
                registerMm,
                job.merge(),
                job.inks(),
                job.order(),
                job.edition(),
                Map.of(),
                Map.of("trap", new PluginSettings(6, settings)));
    }
}
