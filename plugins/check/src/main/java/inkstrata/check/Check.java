package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.plan.Pull;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.separation.Finding;
import inkstrata.separation.Separation;
import java.util.List;
import java.util.Optional;

/** Proves how far the pulls may be off from each other. */
public final class Check implements Inspector {
    @Override
    public String id() {
        return "check";
    }

    @Override
    public String description() {
        return "how far pulls may be off from each other before sheet shows between inks, and where it shows first";
    }

    /** A warning for each set of inks between which sheet shows within the job's register, and a note with the limit. */
    @Override
    public List<Finding> inspect(Separation separation, Job job) {
        RegisterLimit limit = RegisterLimit.of(
                separation.printed(), picture(separation), separation.artwork().frame(), job.registerMm());
        List<String> inks = separation.plan().pulls().stream()
                .map(pull -> pull.ink().name())
                .toList();
        return new LimitFindings(limit, inks).findings();
    }

    @Override
    public List<Finding> compare(Separation planned, List<Optional<Film>> films, Job job) {
        return new Comparison(planned, films, job.registerMm()).findings();
    }

    /** All places that some pull is to ink. */
    static Region picture(Separation separation) {
        return separation
                .map()
                .dissolve(separation.plan().pulls().stream().map(Pull::prints).reduce(StackSet.NONE, StackSet::or));
    }
}
