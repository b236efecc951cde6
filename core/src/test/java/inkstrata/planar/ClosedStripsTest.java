package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.Resvg;
import inkstrata.artwork.svg.SvgReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Closing the seams of flags changes nothing but strips: each part that looks another way is no wider than a seam, or a hole where strips
 * meet, and what showed in it lies beneath both sides.
 *
 * <p>{@code -Dseams.width=200} asks for another width, in millimetres, {@code -Dseams.from=0 -Dseams.step=6} for every sixth of the long forms.
 */
class ClosedStripsTest {
    private static final double WIDTH_MM = Integer.getInteger("seams.width", 200);
    private static final int FROM = Integer.getInteger("seams.from", 0);
    private static final int STEP = Integer.getInteger("seams.step", 1);
    private static final ReadOptions WIDE = wide(WIDTH_MM);

    /** A flag no wider than this has fills that nobody can print, of which {@code core/docs/seams.md} says that they go. */
    private static final double SMALL_MM = 100;

    /** In which small flags: shades of palm leaves, and of a volcano and a llama. */
    private static final List<String> FINE = List.of("4x3/do.svg", "4x3/sv.svg", "4x3/bo.svg");

    /** Whose volcano has such shades, 0.03 to 0.04 mm wide, where it is 200 mm wide, too. */
    private static final String FINEST = "1x1/sv.svg";

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
        assertThat(strips).isGreaterThan(30);
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
        List<String> names = Flags.names();
        for (int i = FROM; i < names.size(); i += STEP) {
            String name = names.get(i);
            Optional<Artwork> flag = flag(name);
            if (flag.isPresent()) {
                ClosedStrips closed = ClosedStrips.of(flag.get());
                flags++;
                withSeams += closed.seams() > 0 ? 1 : 0;
                closed.faults().forEach(fault -> reporter.publishEntry(name, fault.text()));
                double widest = (WIDTH_MM < SMALL_MM && FINE.contains(name)) || name.equals(FINEST) ? 0.05 : 0.03;
                closed.faults().stream()
                        .filter(fault -> fault.part().wideMm() > widest)
                        .forEach(fault -> large.add(name + ": " + fault.text()));
            }
        }
        reporter.publishEntry(withSeams + " of " + flags + " flags have seams");
        assertThat(large).isEmpty();
    }

    /** All of @twemoji/svg 15.0.0. Most of their seams lie where a curve comes near the picture's edge. */
    @Test
    @Tag("long")
    void allEmojiLoseNothingThatWasDrawn(TestReporter reporter) throws IOException, InterruptedException {
        List<String> faults = new ArrayList<>();
        int emoji = 0;
        int withSeams = 0;
        try (Resvg installed = Resvg.start();
                Stream<Path> all = Files.list(Resvg.emoji())) {
            List<Path> files = all.filter(path -> path.toString().endsWith(".svg"))
                    .sorted()
                    .toList();
            for (int i = FROM; i < files.size(); i += STEP) {
                ClosedStrips closed = ClosedStrips.of(SvgReader.read(files.get(i), WIDE));
                emoji++;
                withSeams += closed.seams() > 0 ? 1 : 0;
                String name = files.get(i).getFileName().toString();
                closed.faults().forEach(fault -> faults.add(name + ": " + fault.text()));
            }
            assertThat(installed).isNotNull();
        }
        reporter.publishEntry(withSeams + " of " + emoji + " emoji have seams");
        assertThat(emoji).isPositive();
        assertThat(faults).isEmpty();
    }

    /** Outlines and veins of leaves, 0.015 mm wide and 0.05 mm apart. */
    @Test
    void leavesStayBetweenTheirOutlinesAndVeins() throws IOException {
        for (String name : List.of("4x3/py.svg", "1x1/mt.svg")) {
            Artwork flag = flag(name, wide(60)).orElseThrow();
            assertThat(ClosedStrips.of(flag).changedMm2()).as(name).isZero();
        }
    }

    /** None if it has gradients. */
    private static Optional<Artwork> flag(String name) throws IOException {
        return flag(name, WIDE);
    }

    private static Optional<Artwork> flag(String name, ReadOptions size) throws IOException {
        try (InputStream in = Flags.open(name)) {
            return Optional.of(SvgReader.read(name, in, size));
        } catch (ArtworkException refused) {
            assertThat(refused).hasMessageContaining("fill is a gradient");
            return Optional.empty();
        }
    }

    private static ReadOptions wide(double mm) {
        return new ReadOptions(OptionalDouble.of(mm), OptionalDouble.empty(), false);
    }
}
