package inkstrata.plugin;

import inkstrata.job.Job;
import inkstrata.separation.Separation;

/** Changes the printed regions, never the plan. */
public non-sealed interface Shaper extends Plugin {
    /** The separation with other printed regions, and notes on what was done. */
    Separation shape(Separation separation, Job job);
}
