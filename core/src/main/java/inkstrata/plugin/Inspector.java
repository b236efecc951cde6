package inkstrata.plugin;

import inkstrata.job.Job;
import inkstrata.separation.Finding;
import inkstrata.separation.Separation;
import java.util.List;

/** Looks for what can go wrong in the print. */
public non-sealed interface Inspector extends Plugin {
    /** Findings in an order that is the same on every run. */
    List<Finding> inspect(Separation separation, Job job);
}
