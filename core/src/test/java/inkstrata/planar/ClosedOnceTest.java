package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.colour.Rgb;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Closed once is closed: what shows after strips were closed, drawn as a drawing of its own, has none left. */
class ClosedOnceTest {
    private static final double SEAM_MM = 0.05;

    /** What is left of a strip, in millimetres, is no longer. */
    private static final double BIT_MM = 1.5;

    private static final int[] DECIMALS = {1, 2, 3, 9};
    private static final double[] GAPS = {0, 0.005, 0.02, 0.045};

    @Test
    void generatedDrawings() {
        law(0, 1);
    }

    @Test
    @Tag("long")
    void manyGeneratedDrawings() {
        law(1, Integer.getInteger("laws.drawings", 20));
    }

    /** Of all that was closed, by length, a thousandth may be left, in bits: where strips nearly as wide as a seam meet. */
    private static void law(long from, int count) {
        double closed = 0;
        double left = 0;
        for (long seed = from; seed < from + count; seed++) {
            for (String kind : SeamDrawings.KINDS) {
                for (int decimals : DECIMALS) {
                    for (double gap : GAPS) {
                        Artwork artwork = SeamDrawings.of(kind, decimals, gap, seed);
                        PlanarMap map = map(artwork);
                        closed += lengthMm(closed(map));
                        List<Seam> again = closed(map(shown(artwork, map)));
                        left += lengthMm(again);
                        assertThat(again).as(artwork.name()).allMatch(seam -> seam.lengthMm() < BIT_MM);
                    }
                }
            }
        }
        assertThat(closed).isGreaterThan(1_000);
        assertThat(left).isLessThan(closed / 1_000);
    }

    private static List<Seam> closed(PlanarMap map) {
        return map.seams().stream().filter(Seam::closed).toList();
    }

    private static double lengthMm(List<Seam> seams) {
        return seams.stream().mapToDouble(Seam::lengthMm).sum();
    }

    /** Along the top of tg lies a strip of yellow 0.0175 mm high: closed in green, and then, above the red field, in red. */
    @Test
    void whatClosingMadeAStripIsClosedToo() throws IOException {
        PlanarMap map = togo();
        assertThat(shows(map, new Place(10, 0.009))).isEqualTo(shows(map, new Place(10, 1)));
        assertThat(shows(map, new Place(50, 0.009))).isEqualTo(shows(map, new Place(50, 1)));
        assertThat(shows(map, new Place(50, 1))).isNotEqualTo(shows(map, new Place(10, 1)));
    }

    private static PlanarMap togo() throws IOException {
        try (InputStream in = Flags.open("4x3/tg.svg")) {
            return map(SvgReader.read(
                    "tg.svg", in, new ReadOptions(OptionalDouble.of(60), OptionalDouble.empty(), false)));
        }
    }

    /** What is said of tg: the strip of yellow along the top, and that of green above the red field, which closing the first one made. */
    @Test
    void whatClosingMadeAStripIsTold() throws IOException {
        PlanarMap map = togo();
        double scale = 60 / 640.0 * 0.9375;
        List<Seam> closed = closed(map);
        assertThat(closed).hasSize(2);
        assertThat(closed.get(0).lengthMm()).isCloseTo(60, within(1e-9));
        assertThat(closed.get(0).widestMm()).isCloseTo(0.2 * scale, within(Grid.STEP_MM));
        // In the drawing the red field ends at x = 306.5 and begins at y = 0.3; a strip is followed beyond the end of
        // its shorter side, by its width.
        assertThat(closed.get(1).lengthMm()).isBetween(306.5 * scale - Grid.STEP_MM, 306.8 * scale + Grid.STEP_MM);
        assertThat(closed.get(1).widestMm()).isCloseTo(0.3 * scale, within(Grid.STEP_MM));
    }

    private static List<Integer> shows(PlanarMap map, Place place) {
        return IntStream.range(0, map.stacks().size())
                .filter(stack -> map.dissolve(StackSet.of(IntStream.of(stack))).covers(place))
                .boxed()
                .toList();
    }

    private static PlanarMap map(Artwork artwork) {
        return PlanarMapper.map(artwork, MapSettings.DEFAULT.withDepth(1).withSeam(SEAM_MM));
    }

    /** Each polygon of each colour that shows as a shape of its own. */
    private static Artwork shown(Artwork artwork, PlanarMap map) {
        Map<Rgb, List<Integer>> stacks = new TreeMap<>((one, other) -> one.hex().compareTo(other.hex()));
        IntStream.range(0, map.stacks().size())
                .filter(stack -> !map.stacks().get(stack).isBare())
                .forEach(stack -> stacks.computeIfAbsent(
                                map.stacks().get(stack).paints().get(0).colour(), none -> new ArrayList<>())
                        .add(stack));
        List<FlatShape> shapes = new ArrayList<>();
        stacks.forEach((colour, all) -> map.dissolve(StackSet.of(all.stream().mapToInt(Integer::intValue)))
                .polygons()
                .forEach(polygon -> shapes.add(FlatShape.opaque(
                        new Area(RegionOutlines.of(Region.of(polygon)), FillRule.NONZERO), colour, Source.UNKNOWN))));
        return new Artwork(artwork.name(), artwork.frame(), shapes, List.of());
    }
}
