package inkstrata.trap;

import inkstrata.job.Job;
import inkstrata.job.JobExample;
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
        return withRegister(Job.DEFAULT_REGISTER_MM, settings);
    }

    static Job withRegister(double registerMm, Map<String, Setting> settings) {
        return JobExample.using(registerMm, "trap", settings);
    }
}
