package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.house.Stopwatch;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMapper;
import inkstrata.plugin.Option;
import inkstrata.plugin.Plugins;
import inkstrata.plugin.Shaper;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What trap and check of the poster cost beside its map, all in one run. */
@Tag("long")
class PosterCostTest {
    private static final int RUNS = 20;

    @Test
    void trapAndCheckBesideTheMap() throws IOException {
        Sample poster = new Sample("orchard");
        Job job = JobReader.read(poster.job());
        Plugins all = Press.plugins();
        Separation drawn = new Separator(new Plugins(
                        all.planners(), List.of(new NoTrap(all.shapers().get(0))), List.of(), all.writers()))
                .separate(Press.read(poster), job);
        Artwork placed = drawn.artwork();
        double map = Stopwatch.least(
                RUNS,
                () -> PlanarMapper.map(placed, MapSettings.DEFAULT.withDepth(MapSettings.ALL))
                        .stacks()
                        .size());
        Separation trapped = all.shapers().get(0).shape(drawn, job);
        double trap = Stopwatch.least(
                RUNS, () -> all.shapers().get(0).shape(drawn, job).printed().size());
        double check = Stopwatch.least(
                RUNS,
                () -> all.inspectors().get(0).inspect(trapped, job).findings().size() + 1);
        System.out.printf(
                Locale.ROOT,
                "poster: map %.3f s, trap %.3f s, check %.3f s, ratio %.2f%n",
                map,
                trap,
                check,
                (trap + check) / map);
        assertThat((trap + check) / map)
                .as("keeps what was reached so far; 2 is wanted")
                .isLessThan(18);
    }

    /** Knows the trap's options and does nothing. */
    private record NoTrap(Shaper trap) implements Shaper {
        @Override
        public String id() {
            return trap.id();
        }

        @Override
        public String description() {
            return "no trap";
        }

        @Override
        public List<Option> options() {
            return trap.options();
        }

        @Override
        public Separation shape(Separation separation, Job job) {
            return separation;
        }
    }
}
