package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.Resvg;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.colour.Rgb;
import inkstrata.house.HowMany;
import inkstrata.measure.Frame;
import inkstrata.measure.Tolerance;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/** Regions drawn with curves: near enough, no more pieces than the artwork's own, and neighbours with the same numbers. */
class CurvedOutlinesTest {
    private static final ReadOptions WIDE = new ReadOptions(OptionalDouble.of(200), OptionalDouble.empty(), false);

    /** The bound on pieces that films promise. */
    private static final double MOST_PIECES = 1.3;

    /** Drawings in which curves come within a few micrometres of each other for long, so that many edges are drawn as they are to keep faces. */
    private static final List<String> NEARLY_TOUCHING = List.of("1f1f5-1f1f0.svg", "1f34a.svg", "1f380.svg");

    /** The bound for those. */
    private static final double MORE_PIECES = 1.5;

    @Test
    void aShapeOfCurvesIsDrawnWithItsOwn() {
        Outline.Builder builder = Outline.builder();
        builder.moveTo(10, 10);
        builder.cubicTo(18, 2, 38, 12, 30, 20);
        builder.quadTo(24, 30, 12, 26);
        builder.lineTo(10, 10);
        Outline drop = builder.build();
        List<List<Outline>> drawn = drawn(drop);
        assertThat(pieces(drawn.get(1).get(0))).containsExactlyElementsOf(pieces(drop));
    }

    @Test
    void aCurveThatAnotherShapeCrossesIsCutByDeCasteljau() {
        Outline.Builder half = Outline.builder();
        half.moveTo(0, 20);
        half.cubicTo(0, 0, 40, 0, 40, 20);
        Outline lid = Outline.rectangle(20, 0, 30, 30);
        List<List<Outline>> drawn = drawn(half.build(), lid);
        // Left half of the curve at t = 1/2: (0 20) (0 10) (10 5) (20 5).
        List<double[]> cubics = cubics(drawn.get(1).get(0));
        assertThat(cubics).hasSize(1);
        double[] expected = {0, 20, 0, 10, 10, 5, 20, 5};
        double[] reversed = {20, 5, 10, 5, 0, 10, 0, 20};
        double[] found = cubics.get(0);
        double[] wanted = found[0] < 10 ? expected : reversed;
        for (int i = 0; i < wanted.length; i++) {
            // The end lies on the chord across t = 1/2.
            assertThat(found[i]).isCloseTo(wanted[i], within(Tolerance.FLATNESS_MM));
        }
    }

    @Test
    void lawsHoldForTroublesomeDrawings(TestReporter reporter) {
        Tally tally = new Tally();
        for (long seed = 0; seed < HowMany.of(70); seed++) {
            tally.check("seed " + seed, NastyDrawings.opaque(seed), true);
        }
        tally.tell(reporter);
        assertThat(tally.faults).isEmpty();
    }

    @Test
    void lawsHoldForFlags(TestReporter reporter) throws IOException {
        Tally tally = flags(HowMany.of(16));
        tally.tell(reporter);
        assertThat(tally.faults).isEmpty();
    }

    /** Coats of arms with faces so thin that their sides would be drawn as one line, or a side as a point. */
    @Test
    void lawsHoldForFlagsWithSlivers(TestReporter reporter) throws IOException {
        Tally tally = new Tally();
        for (String name : List.of("1x1/mt.svg", "1x1/sh-ac.svg", "4x3/mp.svg", "4x3/sm.svg")) {
            flag(name, tally);
        }
        tally.tell(reporter);
        assertThat(tally.drawings).isEqualTo(4);
        assertThat(tally.faults).isEmpty();
    }

    @Test
    @Tag("long")
    void lawsHoldForAllFlags(TestReporter reporter) throws IOException {
        Tally tally = flags(Integer.MAX_VALUE);
        tally.tell(reporter);
        assertThat(tally.drawings).isGreaterThan(520);
        assertThat(tally.faults).isEmpty();
    }

    /** The first 500 by name of @twemoji/svg 15.0.0. */
    @Test
    @Tag("long")
    void lawsHoldFor500Emoji(TestReporter reporter) throws IOException, InterruptedException {
        Tally tally = new Tally();
        try (Resvg installed = Resvg.start();
                Stream<Path> all = Files.list(Resvg.emoji())) {
            for (Path file : all.filter(path -> path.toString().endsWith(".svg"))
                    .sorted()
                    .limit(500)
                    .toList()) {
                tally.check(file.getFileName().toString(), SvgReader.read(file, WIDE), false);
            }
            assertThat(installed).isNotNull();
        }
        tally.tell(reporter);
        assertThat(tally.drawings).isEqualTo(500);
        assertThat(tally.faults).isEmpty();
    }

    private static Tally flags(int most) throws IOException {
        Tally tally = new Tally();
        for (String name : Flags.names()) {
            if (tally.drawings == most) {
                break;
            }
            flag(name, tally);
        }
        return tally;
    }

    private static void flag(String name, Tally tally) throws IOException {
        try (InputStream in = Flags.open(name)) {
            tally.check(name, SvgReader.read(name, in, WIDE), false);
        } catch (ArtworkException refused) {
            assertThat(refused).hasMessageContaining("fill is a gradient");
        }
    }

    /** Lowest first, each of another colour, in a frame of 50 mm; the bare sheet's region comes first. */
    private static List<List<Outline>> drawn(Outline... outlines) {
        List<FlatShape> shapes = new ArrayList<>();
        for (Outline outline : outlines) {
            shapes.add(
                    FlatShape.opaque(new Area(outline, FillRule.NONZERO), Rgb.of(shapes.size() + 1), Source.UNKNOWN));
        }
        Artwork artwork = new Artwork("curves", new Frame(0, 0, 50, 50), shapes, List.of());
        PlanarMap map = PlanarMapper.map(artwork, MapSettings.DEFAULT.withDepth(1));
        List<StackSet> sets = new ArrayList<>();
        for (int colour = 0; colour <= shapes.size(); colour++) {
            int asked = colour;
            sets.add(StackSet.of(IntStream.range(0, map.stacks().size())
                    .filter(s -> map.stacks().get(s).isBare()
                            ? asked == 0
                            : map.stacks().get(s).paints().get(0).colour().equals(Rgb.of(asked)))));
        }
        return CurvedOutlines.of(map.dissolveAll(sets), map, artwork);
    }

    private static List<String> pieces(Outline outline) {
        List<String> pieces = new ArrayList<>();
        CurveLaws.forEachPiece(outline, c -> pieces.add(Arrays.toString(c)));
        return pieces;
    }

    private static List<double[]> cubics(Outline outline) {
        List<double[]> cubics = new ArrayList<>();
        CurveLaws.forEachPiece(outline, c -> {
            if (c.length == 8) {
                cubics.add(c);
            }
        });
        return cubics;
    }

    /** What was looked at, and what was wrong. */
    private static final class Tally {
        private final List<String> faults = new ArrayList<>();
        private int drawings;
        private long pieces;
        private long needed;
        private long vertices;
        private double distance;

        /**
         * Looks at one drawing.
         *
         * @param tangled whether slivers thinner than a micrometre, whose sides are drawn vertex by vertex lest they become one, may
         *     cost more pieces, and areas of all they are be off
         */
        void check(String name, Artwork artwork, boolean tangled) {
            drawings++;
            PlanarMap map = PlanarMapper.map(artwork, MapSettings.DEFAULT.withDepth(1));
            List<Region> regions =
                    map.dissolveAll(IntStream.range(0, map.stacks().size())
                            .mapToObj(StackSet::of)
                            .toList());
            CurveLaws laws = CurveLaws.of(regions, map, artwork);
            int least = CurveLaws.needed(regions, map);
            double far = laws.distanceMm();
            if (!(far <= Tolerance.FLATNESS_MM)) {
                faults.add(name + ": " + far + " mm");
            }
            laws.areas(artwork.frame()).forEach(fault -> {
                if (!tangled) {
                    faults.add(name + ": " + fault);
                }
            });
            double most = NEARLY_TOUCHING.contains(name) ? MORE_PIECES : MOST_PIECES;
            if (!(laws.pieces() <= most * least) && !tangled) {
                faults.add(name + ": " + laws.pieces() + " pieces for " + least);
            }
            laws.unshared(map).forEach(piece -> faults.add(name + ": " + piece));
            pieces += laws.pieces();
            needed += least;
            vertices += laws.vertices();
            distance = Math.max(distance, far);
        }

        void tell(TestReporter reporter) {
            reporter.publishEntry(String.format(
                    Locale.ROOT,
                    "%d drawings: %d pieces for %d of the artwork's own in place of %d edges, at most %.5f mm off",
                    drawings,
                    pieces,
                    needed,
                    vertices,
                    distance));
        }
    }
}
