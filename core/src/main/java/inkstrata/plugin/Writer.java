package inkstrata.plugin;

import inkstrata.job.Job;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.IOException;

/** Writes files into a folder that appears whole or not at all. */
public non-sealed interface Writer extends Plugin {
    /**
     * Same separation, same bytes: no clocks, no locale, no hash order.
     *
     * @param inspection what all inspectors found
     */
    void write(Separation separation, Inspection inspection, Job job, OutputFolder folder) throws IOException;
}
