package inkstrata.plugin;

import inkstrata.job.Job;
import java.util.List;

/**
 * What all plug-ins have in common. Implement one of the five roles, not this.
 *
 * <p>A plug-in is a public class with a public constructor without parameters, named in {@code
 * META-INF/services/inkstrata.plugin.<Role>} of its jar. It keeps no state between calls.
 */
public sealed interface Plugin permits Planner, Shaper, Inspector, Writer, FilmFormat {
    /** Small letters and hyphens; the name job files use. Unique among all plug-ins. */
    String id();

    /** One line for {@code inkstrata plugins}. */
    String description();

    /** What a job file may set; none by default. */
    default List<Option> options() {
        return List.of();
    }

    /**
     * Looks at what a job says to this plug-in, beyond what its options declare; asked before anything runs.
     *
     * @throws inkstrata.job.JobException if it makes no sense
     */
    default void check(Job job) {}

    /** Plug-ins of one role run by rising rank, then by id. */
    default int rank() {
        return 100;
    }
}
