package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.Job;
import inkstrata.knockout.Knockout;
import inkstrata.overprint.Overprint;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import inkstrata.trap.Trap;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The limit of flags, 60 mm wide, planned and trapped as usual, against films that are moved and laid over each other (flag-icons 7). */
class FlagLimitsTest {
    private static final double WIDTH_MM = 60;

    /** A flag of more edges is left out: laying it over itself 64 times takes minutes. */
    private static final int MOST_EDGES = 4_000;

    @Test
    void flagsHold() throws IOException {
        assertThat(flags(8, 25)).isEqualTo(8);
    }

    @Tag("long")
    @Test
    void manyFlagsHold() throws IOException {
        assertThat(flags(200, 1)).isEqualTo(200);
    }

    /** So many of every so many-th. */
    private static int flags(int most, int every) throws IOException {
        int done = 0;
        List<String> names = Flags.names();
        for (int i = 0; i < names.size() && done < most; i += every) {
            Optional<Separation> separation = separated(names.get(i));
            if (separation.isPresent() && edges(separation.get()) <= MOST_EDGES) {
                Simulation simulation = new Simulation(names.get(i), separation.get(), Job.DEFAULT.registerMm());
                simulation.whatHoldsShowsNoSheet();
                simulation.beyondTheLimitSheetShows();
                done++;
            }
        }
        return done;
    }

    private static int edges(Separation separation) {
        return separation.printed().stream()
                .flatMap(region -> NearOutlines.rings(region).stream())
                .mapToInt(ring -> ring.size())
                .sum();
    }

    /** None for flags with gradients, which can't be printed. */
    private static Optional<Separation> separated(String name) throws IOException {
        try (InputStream in = Flags.open(name)) {
            Artwork artwork = SvgReader.read(
                    name, in, new ReadOptions(OptionalDouble.of(WIDTH_MM), OptionalDouble.empty(), false));
            Plugins plugins =
                    new Plugins(List.of(new Knockout(), new Overprint()), List.of(new Trap()), List.of(), List.of());
            return Optional.of(new Separator(plugins).separate(artwork, Job.DEFAULT));
        } catch (ArtworkException refused) {
            assertThat(refused).hasMessageContaining("fill is a gradient");
            return Optional.empty();
        }
    }
}
