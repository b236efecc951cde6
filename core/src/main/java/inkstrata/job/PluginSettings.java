package inkstrata.job;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a job file says to one plug-in, as written.
 *
 * @param line of the plug-in's id in the job file
 * @param values by option name, in order of name
 */
public record PluginSettings(int line, Map<String, Setting> values) {
    public static final PluginSettings NONE = new PluginSettings(0, Map.of());

    public PluginSettings {
        values = Collections.unmodifiableMap(new TreeMap<>(values));
    }

    /**
     * One value.
     *
     * @param text as written
     * @param line in the job file
     */
    public record Setting(String text, int line) {}
}
