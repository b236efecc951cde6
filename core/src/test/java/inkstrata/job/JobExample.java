package inkstrata.job;

import inkstrata.job.PluginSettings.Setting;
import java.util.Map;

/** Jobs that say something to one plug-in, for tests. */
public final class JobExample {
    /** Line of the plug-in's id in the job file. */
    private static final int LINE = 7;

    private JobExample() {}

    /** From a file called job.yaml; all else is as usual. */
    public static Job using(double registerMm, String plugin, Map<String, Setting> settings) {
        return JobReader.read("job.yaml", "register: " + registerMm + " mm")
                .withUse(Map.of(plugin, new PluginSettings(LINE, settings)));
    }
}
