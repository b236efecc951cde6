package inkstrata.plugin;

import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.util.List;
import java.util.Optional;

/** Looks for what can go wrong in the print. */
public non-sealed interface Inspector extends Plugin {
    /** Findings in an order that is the same on every run; with a verdict if it knows how far pulls may be off. */
    Inspection inspect(Separation separation, Job job);

    /**
     * Compares films that were read back with what was planned. Finds nothing unless an inspector knows how.
     *
     * @param planned what films of that artwork and job were to print
     * @param films for each pull, by position, its film; empty where there is none
     */
    default Inspection compare(Separation planned, List<Optional<Film>> films, Job job) {
        return Inspection.NOTHING;
    }
}
