package inkstrata.command;

import inkstrata.artwork.ArtworkException;
import inkstrata.job.JobException;
import inkstrata.plugin.PluginException;
import inkstrata.report.Json;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.ParameterException;

/** A fault for programs. Keys that have nothing to hold are left out. */
final class FaultReport {
    private FaultReport() {}

    /**
     * Makes it.
     *
     * @param message what is said to people
     */
    static Map<String, Object> json(int exitCode, Throwable fault, String message) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("exitCode", exitCode);
        entry.put("kind", kind(fault));
        if (fault instanceof ArtworkException artwork) {
            putPlace(artwork.file(), artwork.line(), entry);
            if (!artwork.element().isEmpty()) {
                entry.put("element", artwork.element());
            }
        }
        if (fault instanceof JobException job) {
            putPlace(job.file(), job.line(), entry);
        }
        entry.put("message", message);
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("fault", entry);
        result.put("format", Json.FORMAT);
        return result;
    }

    private static void putPlace(String file, int line, Map<String, Object> entry) {
        if (!file.isEmpty()) {
            entry.put("file", file);
        }
        if (line > 0) {
            entry.put("line", line);
        }
    }

    /** What is at fault. */
    private static String kind(Throwable fault) {
        if (fault instanceof ArtworkException || fault instanceof MemoryFault) {
            return "artwork";
        }
        if (fault instanceof JobException) {
            return "job";
        }
        if (fault instanceof PluginException) {
            return "plugin";
        }
        if (fault instanceof CommandFault || fault instanceof ParameterException) {
            return "command";
        }
        return fault instanceof IOException ? "file" : "program";
    }
}
