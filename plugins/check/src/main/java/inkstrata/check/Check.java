package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.plan.Pull;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.separation.Finding;
import inkstrata.separation.Separation;
import java.util.ArrayList;
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
        return limit(separation, separation.printed(), job.registerMm()).findings();
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

    /**
     * How far films hold. A ground that shows nowhere does not count: where nothing but it shows, the inks above it have parted. Nor do
     * drawings of their own: they lie over whatever there is, and fit nothing.
     *
     * @param films for each pull, by position
     */
    static LimitFindings limit(Separation planned, List<Region> films, double registerMm) {
        List<Region> seen = new ArrayList<>();
        List<String> inks = new ArrayList<>();
        StackSet inked = StackSet.NONE;
        for (int pull = 0; pull < films.size(); pull++) {
            Pull printed = planned.plan().pulls().get(pull);
            if (!planned.isOnlyGround(pull) && printed.ink().from().isEmpty()) {
                seen.add(films.get(pull));
                inks.add(printed.ink().name());
                inked = inked.or(printed.prints());
            }
        }
        Region picture = planned.map().dissolve(inked);
        return new LimitFindings(
                RegisterLimit.of(seen, picture, planned.artwork().frame(), registerMm), inks);
    }
}
