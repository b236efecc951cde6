package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The yardstick itself, on drawings whose areas anyone can work out. */
class ReferenceMapperTest {
    private static final Rgb RED = new Rgb(255, 0, 0);
    private static final Rgb BLUE = new Rgb(0, 0, 255);

    @Test
    void twoSquaresOverlap() {
        PlanarMap map = ReferenceMapper.map(
                drawing(shape(square(1, 1, 4), RED, 1), shape(square(3, 3, 4), BLUE, 1)),
                Rgb.WHITE,
                Tolerance.FLATNESS_MM);
        assertThat(area(map)).isEqualTo(100 - 28);
        assertThat(area(map, RED)).isEqualTo(12);
        assertThat(area(map, BLUE)).isEqualTo(12);
        assertThat(area(map, BLUE, RED)).isEqualTo(4);
    }

    @Test
    void whatSticksOutOfTheFrameIsCutOff() {
        PlanarMap map =
                ReferenceMapper.map(drawing(shape(square(8, -3, 40), RED, 1)), Rgb.WHITE, Tolerance.FLATNESS_MM);
        assertThat(area(map, RED)).isEqualTo(20);
        assertThat(area(map)).isEqualTo(80);
    }

    @Test
    void fillRulesDifferInsideASquareDrawnTwice() {
        Outline.Builder twice = Outline.builder();
        square(1, 1, 8).sendTo(twice);
        square(2, 2, 4).sendTo(twice);
        assertThat(area(
                        ReferenceMapper.map(drawing(shape(twice.build(), RED, 1)), Rgb.WHITE, Tolerance.FLATNESS_MM),
                        RED))
                .isEqualTo(64);
        FlatShape odd = FlatShape.opaque(new Area(twice.build(), FillRule.EVENODD), RED, Source.UNKNOWN);
        assertThat(area(ReferenceMapper.map(drawing(odd), Rgb.WHITE, Tolerance.FLATNESS_MM), RED))
                .isEqualTo(48);
    }

    @Test
    void clipsLetThroughWhatLiesInOneOfTheirParts() {
        Clip clip = new Clip(List.of(area(square(0, 0, 2)), area(square(1, 1, 2))));
        FlatShape clipped =
                new FlatShape(area(square(0, 0, 10)), RED, 1, Optional.empty(), List.of(clip), Source.UNKNOWN);
        assertThat(area(ReferenceMapper.map(drawing(clipped), Rgb.WHITE, Tolerance.FLATNESS_MM), RED))
                .isEqualTo(7);
    }

    @Test
    void translucentShapesAddTheColourTheyMake() {
        PlanarMap map = ReferenceMapper.map(
                drawing(shape(square(0, 0, 5), RED, 1), shape(square(0, 0, 10), BLUE, 0.2)),
                Rgb.WHITE,
                Tolerance.FLATNESS_MM);
        assertThat(area(map, new Rgb(204, 0, 51), RED)).isEqualTo(25);
        assertThat(area(map, new Rgb(204, 204, 255))).isEqualTo(75);
    }

    @Test
    void aGroupShinesThroughAsOne() {
        Optional<TranslucentGroup> group = Optional.of(new TranslucentGroup(0, 0.2, Optional.empty()));
        PlanarMap map = ReferenceMapper.map(
                drawing(
                        new FlatShape(area(square(0, 0, 10)), RED, 1, group, List.of(), Source.UNKNOWN),
                        new FlatShape(area(square(0, 0, 5)), BLUE, 1, group, List.of(), Source.UNKNOWN)),
                Rgb.WHITE,
                Tolerance.FLATNESS_MM);
        assertThat(area(map, new Rgb(204, 204, 255))).isEqualTo(25);
        assertThat(area(map, new Rgb(255, 204, 204))).isEqualTo(75);
    }

    private static Artwork drawing(FlatShape... shapes) {
        return new Artwork("by hand", new Frame(0, 0, 10, 10), List.of(shapes), List.of());
    }

    private static FlatShape shape(Outline outline, Rgb colour, double opacity) {
        return new FlatShape(area(outline), colour, opacity, Optional.empty(), List.of(), Source.UNKNOWN);
    }

    private static Area area(Outline outline) {
        return new Area(outline, FillRule.NONZERO);
    }

    private static Outline square(double x, double y, double side) {
        return Outline.rectangle(x, y, side, side);
    }

    private static double area(PlanarMap map, Rgb... colours) {
        List<Paint> paints = new ArrayList<>();
        for (Rgb colour : colours) {
            paints.add(new Paint(colour));
        }
        return map.areaMm2(map.stacks().indexOf(new PaintStack(paints)));
    }
}
