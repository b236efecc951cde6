package inkstrata.plugin;

import inkstrata.job.Job;
import inkstrata.separation.Finding;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.util.List;

/** Writes files into a folder that appears whole or not at all. */
public non-sealed interface Writer extends Plugin {
    /** Same separation, same bytes: no clocks, no locale, no hash order. */
    void write(Separation separation, List<Finding> findings, Job job, OutputFolder folder) throws IOException;
}
