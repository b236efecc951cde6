package inkstrata.plugin;

import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.NearestWord;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;

/**
 * The plug-ins that were found, each role in the order in which it runs: by rank, then by id.
 *
 * @param planners decide which pulls print where
 * @param shapers change printed regions
 * @param inspectors report what can go wrong
 * @param writers make files
 * @param formats read films from files
 */
public record Plugins(
        List<Planner> planners,
        List<Shaper> shapers,
        List<Inspector> inspectors,
        List<Writer> writers,
        List<FilmFormat> formats) {
    private static final Comparator<Plugin> RUNNING_ORDER =
            Comparator.comparingInt(Plugin::rank).thenComparing(Plugin::id);

    /**
     * Puts them in running order.
     *
     * @throws PluginException if two have the same id
     */
    public Plugins {
        planners = planners.stream().sorted(RUNNING_ORDER).toList();
        shapers = shapers.stream().sorted(RUNNING_ORDER).toList();
        inspectors = inspectors.stream().sorted(RUNNING_ORDER).toList();
        writers = writers.stream().sorted(RUNNING_ORDER).toList();
        formats = formats.stream().sorted(RUNNING_ORDER).toList();
        Map<String, Plugin> byId = new HashMap<>();
        for (List<? extends Plugin> role : List.of(planners, shapers, inspectors, writers, formats)) {
            for (Plugin plugin : role) {
                Plugin other = byId.put(plugin.id(), plugin);
                if (other != null) {
                    throw new PluginException("two plug-ins are called '" + plugin.id() + "': "
                            + other.getClass().getName() + " and "
                            + plugin.getClass().getName() + ". Take one of them away.");
                }
            }
        }
    }

    /** Without any that reads films. */
    public Plugins(List<Planner> planners, List<Shaper> shapers, List<Inspector> inspectors, List<Writer> writers) {
        this(planners, shapers, inspectors, writers, List.of());
    }

    /**
     * Finds every plug-in a class loader can see.
     *
     * @throws PluginException if one can't be loaded, or two have the same id
     */
    public static Plugins load(ClassLoader loader) {
        return new Plugins(
                found(Planner.class, loader),
                found(Shaper.class, loader),
                found(Inspector.class, loader),
                found(Writer.class, loader),
                found(FilmFormat.class, loader));
    }

    /** In the order in which they run: planners, shapers, inspectors, writers; then those that read films. */
    public List<Plugin> all() {
        List<Plugin> all = new ArrayList<>(planners);
        all.addAll(shapers);
        all.addAll(inspectors);
        all.addAll(writers);
        all.addAll(formats);
        return List.copyOf(all);
    }

    /**
     * Checks what a job says to plug-ins against what they declare.
     *
     * @throws JobException at the first unknown plug-in, unknown option or value that can't be read or makes no sense; it names
     *     the line, and what is near or known
     */
    public void check(Job job) {
        job.use().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(entry -> {
            Plugin plugin = all().stream()
                    .filter(candidate -> candidate.id().equals(entry.getKey()))
                    .findFirst()
                    .orElseThrow(() -> new JobException(
                            job.file(),
                            entry.getValue().line(),
                            "use names the plug-in '" + entry.getKey() + "', which was not found. "
                                    + NearestWord.orAll(
                                            entry.getKey(),
                                            all().stream()
                                                    .map(Plugin::id)
                                                    .sorted()
                                                    .toList())));
            Options.of(plugin, job).check();
        });
        all().forEach(plugin -> plugin.check(job));
    }

    private static <T extends Plugin> List<T> found(Class<T> role, ClassLoader loader) {
        try {
            return ServiceLoader.load(role, loader).stream()
                    .map(ServiceLoader.Provider::get)
                    .toList();
        } catch (ServiceConfigurationError e) {
            throw new PluginException(
                    "a plug-in can't be loaded: " + e.getMessage() + ". Take its jar away or mend it.", e);
        }
    }
}
