package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Closing the seams of flags changes nothing but strips: each part that looks another way is no wider than a seam, or a hole where strips
 * meet, and what showed in it lies beneath both sides.
 *
 * <p>{@code -Dseams.width=200} asks for another width, in millimetres.
 */
class ClosedStripsTest {
    private static final double WIDTH_MM = Integer.getInteger("seams.width", 200);

    @Test
    void flagsLoseNothingThatWasDrawn() throws IOException {
        int strips = 0;
        for (String name : List.of("4x3/jo.svg", "4x3/ag.svg", "4x3/tm.svg")) {
            ClosedStrips closed = ClosedStrips.of(flag(name).orElseThrow());
            assertThat(closed.faults()).as(name).isEmpty();
            assertThat(closed.changedMm2())
                    .as("%s: %s", name, closed)
                    .isLessThanOrEqualTo(closed.lengthMm() * closed.widestMm() + 0.001);
            strips += closed.seams();
        }
        assertThat(strips).isGreaterThan(40);
    }

    /**
     * Of fine coats of arms a few parts are left of which more than half of the outline lies beside something else than the strip did: corners
     * of a few micrometres where three outlines cross, and letters of 0.05 mm. They are told, and none may hold a disc of 0.03 mm.
     */
    @Test
    @Tag("long")
    void allFlagsLoseNothingThatWasDrawn(TestReporter reporter) throws IOException {
        List<String> large = new ArrayList<>();
        int flags = 0;
        int withSeams = 0;
        for (String name : Flags.names()) {
            Optional<Artwork> flag = flag(name);
            if (flag.isPresent()) {
                ClosedStrips closed = ClosedStrips.of(flag.get());
                flags++;
                withSeams += closed.seams() > 0 ? 1 : 0;
                closed.faults().forEach(fault -> reporter.publishEntry(name, fault.text()));
                closed.faults().stream()
                        .filter(fault -> fault.part().wideMm() > 0.03)
                        .forEach(fault -> large.add(name + ": " + fault.text()));
            }
        }
        reporter.publishEntry(withSeams + " of " + flags + " flags have seams");
        assertThat(large).isEmpty();
    }

    /** None if it has gradients. */
    private static Optional<Artwork> flag(String name) throws IOException {
        try (InputStream in = Flags.open(name)) {
            return Optional.of(SvgReader.read(
                    name, in, new ReadOptions(OptionalDouble.of(WIDTH_MM), OptionalDouble.empty(), false)));
        } catch (ArtworkException refused) {
            assertThat(refused).hasMessageContaining("fill is a gradient");
            return Optional.empty();
        }
    }
}
