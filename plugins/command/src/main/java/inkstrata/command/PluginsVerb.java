package inkstrata.command;

import inkstrata.plugin.Inspector;
import inkstrata.plugin.Option;
import inkstrata.plugin.Planner;
import inkstrata.plugin.Plugin;
import inkstrata.plugin.Shaper;
import inkstrata.plugin.Writer;
import inkstrata.report.Json;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Lists the plug-ins in the order in which they run. */
@Command(
        name = "plugins",
        header = "Lists the plug-ins in running order, where each was found, and what a job file may set.",
        description = {"", "What is set goes into the job file under \"use\", by plug-in and option.", ""},
        footer = {"", "Example: inkstrata plugins --plugins my-jars"})
final class PluginsVerb implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @ParentCommand
    private InkstrataCommand inkstrata;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        try (FoundPlugins found = FoundPlugins.in(inkstrata.plugins())) {
            List<Plugin> all = found.plugins().all();
            if (inkstrata.json()) {
                Map<String, Object> result = new LinkedHashMap<>();
                result.put("format", Json.FORMAT);
                result.put("plugins", all.stream().map(PluginsVerb::json).toList());
                out.println(Json.text(result));
            } else {
                all.forEach(plugin -> print(plugin, out));
            }
        }
        return ExitCode.DONE;
    }

    private static void print(Plugin plugin, PrintWriter out) {
        out.println(
                plugin.id() + " (" + role(plugin) + ", " + FoundPlugins.home(plugin) + "): " + plugin.description());
        for (Option option : plugin.options()) {
            String choices = option.choices().isEmpty() ? "" : " (" + String.join(", ", option.choices()) + ")";
            out.println("  " + option.name() + ": " + option.byDefault() + choices + " - " + option.description());
        }
    }

    private static Map<String, Object> json(Plugin plugin) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("id", plugin.id());
        entry.put("role", role(plugin));
        entry.put("from", FoundPlugins.home(plugin));
        entry.put("description", plugin.description());
        entry.put("options", plugin.options().stream().map(PluginsVerb::json).toList());
        return entry;
    }

    private static Map<String, Object> json(Option option) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("name", option.name());
        entry.put("kind", option.kind().name().toLowerCase(Locale.ROOT));
        entry.put("default", option.byDefault());
        entry.put("choices", option.choices());
        entry.put("description", option.description());
        return entry;
    }

    private static String role(Plugin plugin) {
        if (plugin instanceof Planner) {
            return "planner";
        }
        if (plugin instanceof Shaper) {
            return "shaper";
        }
        if (plugin instanceof Inspector) {
            return "inspector";
        }
        return plugin instanceof Writer ? "writer" : "reader";
    }
}
