package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.separation.Verdict;
import inkstrata.shop.Separator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Shards left out and slits filled cost no register, by the limit that is proved for the films before and after. */
class SliversLawTest {
    private static final int FEW = 20;
    private static final int MANY = Integer.getInteger("laws.drawings", 1_000);

    /** The limit is found to 2 µm. */
    private static final double EXACT_MM = 0.004;

    @Test
    void noRegisterIsLost() {
        law(FEW, 1);
    }

    @Test
    @Tag("long")
    void noRegisterIsLostInManyDrawings() {
        law(MANY, 50);
    }

    private static void law(int drawings, int changed) {
        Plugins all = Press.plugins();
        Plugins untidy = new Plugins(
                all.planners(),
                all.shapers().stream()
                        .filter(shaper -> !shaper.id().equals("slivers"))
                        .toList(),
                all.inspectors(),
                all.writers());
        Job job = JobReader.read("job.yaml", "use: {overprint: {tolerance: 8}}");
        int different = 0;
        for (long seed = 0; seed < drawings; seed++) {
            Artwork artwork = StackedDrawing.of(seed);
            Separation before = new Separator(untidy).separate(artwork, job);
            Separation after = new Separator(all).separate(artwork, job);
            if (IntStream.range(0, before.printed().size())
                    .anyMatch(pull -> !before.printed().get(pull).equals(after.printed().get(pull)))) {
                different++;
                assertThat(limit(all, after, job))
                        .as("drawing %d", seed)
                        .isGreaterThanOrEqualTo(Math.min(limit(untidy, before, job), job.registerMm()) - EXACT_MM);
            }
        }
        assertThat(different).as("drawings that were tidied").isGreaterThanOrEqualTo(changed);
    }

    private static double limit(Plugins plugins, Separation separation, Job job) {
        Verdict verdict = new Separator(plugins).inspect(separation, job).verdict().orElseThrow();
        return verdict.heldMm().orElse(Double.POSITIVE_INFINITY);
    }
}
