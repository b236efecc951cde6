package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.plan.Pull;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.separation.Finding;
import inkstrata.separation.Inspection;
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

    /** A warning for each set of inks between which sheet shows within the job's register, and the verdict. */
    @Override
    public Inspection inspect(Separation separation, Job job) {
        LimitFindings limit = limit(separation, separation.printed(), job.registerMm());
        List<Finding> findings = limit.findings();
        return Inspection.of(findings).withVerdict(limit.verdict(Obstacles.among(findings)));
    }

    @Override
    public Inspection compare(Separation planned, List<Optional<Film>> films, Job job) {
        return new Comparison(planned, films, job.registerMm()).inspection();
    }

    /** All places that some pull is to ink. */
    static Region picture(Separation separation) {
        return separation
                .map()
                .dissolve(separation.plan().pulls().stream().map(Pull::prints).reduce(StackSet.NONE, StackSet::or));
    }

    /**
     * How far films hold, by those that are {@link Counted}.
     *
     * @param films for each pull, by position
     */
    static LimitFindings limit(Separation planned, List<Region> films, double registerMm) {
        Counted counted = Counted.of(planned);
        RegisterLimit limit = RegisterLimit.of(
                counted.of(films, registerMm),
                counted.of(planned.printed(), registerMm),
                counted.picture(),
                planned.artwork().frame(),
                registerMm);
        return new LimitFindings(limit, counted, LostRegister.among(limit.openings(), films, counted, registerMm));
    }
}
