package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Areas of clipped and translucent drawings that a formula gives, in mm². */
class ClosedFormTest {
    private static final Rgb RED = new Rgb(255, 0, 0);
    private static final Rgb BLUE = new Rgb(0, 0, 255);

    /** A quarter of a circle by one cubic, with the constant that is off by at most 2.7e-4 of the radius. */
    private static final double KAPPA = 4.0 / 3 * (Math.sqrt(2) - 1);

    @Test
    void aDiscClippedByAHalfPlaneIsASegmentOfIt() {
        double r = 20;
        double h = 8;
        PlanarMap map = map(shape(disc(50, 50, r), RED, 1, new Clip(List.of(box(50 + h, 0, 60, 100)))));
        double segment = r * r * Math.acos(h / r) - h * Math.sqrt(r * r - h * h);
        assertThat(area(map, RED)).isCloseTo(segment, within(allowed(2 * Math.PI * r, segment)));
    }

    @Test
    void aDiscClippedByADiscIsALens() {
        double r = 20;
        double d = 24;
        PlanarMap map = map(shape(disc(40, 50, r), RED, 1, new Clip(List.of(disc(40 + d, 50, r)))));
        double lens = 2 * r * r * Math.acos(d / (2 * r)) - d / 2 * Math.sqrt(4 * r * r - d * d);
        assertThat(area(map, RED)).isCloseTo(lens, within(allowed(4 * Math.PI * r, lens)));
    }

    @Test
    void partsOfAClipAddUpAndSeveralClipsMustAllLetThrough() {
        Clip cross = new Clip(List.of(box(40, 0, 20, 100), box(0, 40, 100, 20)));
        Clip half = new Clip(List.of(box(0, 0, 50, 100)));
        PlanarMap map = map(shape(box(0, 0, 100, 100), RED, 1, cross, half));
        assertThat(area(map, RED)).isEqualTo((20 * 100 + 100 * 20 - 20 * 20) / 2.0);
    }

    @Test
    void aClipWithoutPartsHidesAllAndARectangleAroundTheShapeNothing() {
        PlanarMap map = map(
                shape(box(10, 10, 30, 30), RED, 1, new Clip(List.of())),
                shape(box(50, 50, 30, 20), BLUE, 1, new Clip(List.of(box(50, 50, 30, 30), box(0, 0, 5, 5)))));
        assertThat(area(map, RED)).isZero();
        assertThat(area(map, BLUE)).isEqualTo(600);
    }

    @Test
    void halfBlueOverRedIsAColourOfItsOwnWhereTheyOverlap() {
        PlanarMap map = map(shape(box(0, 0, 60, 100), RED, 1), shape(box(40, 0, 60, 50), BLUE, 0.5));
        // 255 / 2 is 127.5 and halves go up.
        assertThat(area(map, new Rgb(128, 0, 128), RED)).isEqualTo(20 * 50);
        assertThat(area(map, new Rgb(128, 128, 255))).isEqualTo(40 * 50);
        assertThat(area(map, RED)).isEqualTo(60 * 100 - 20 * 50);
    }

    @Test
    void aGroupShinesThroughOnceWhereItsShapesOverlap() {
        Optional<TranslucentGroup> group = Optional.of(new TranslucentGroup(0, 0.5, Optional.empty()));
        PlanarMap map = map(
                new FlatShape(box(0, 0, 60, 100), RED, 1, group, List.of(), Source.UNKNOWN),
                new FlatShape(box(40, 0, 60, 100), RED, 1, group, List.of(), Source.UNKNOWN));
        assertThat(area(map, new Rgb(255, 128, 128))).isEqualTo(100 * 100);
    }

    /** What flattening may take off or add along a border, and the error of the cubic circle. */
    private static double allowed(double length, double area) {
        return length * Tolerance.FLATNESS_MM + 6e-4 * area;
    }

    private static FlatShape shape(Area area, Rgb colour, double opacity, Clip... clips) {
        return new FlatShape(area, colour, opacity, Optional.empty(), List.of(clips), Source.UNKNOWN);
    }

    private static Area box(double x, double y, double width, double height) {
        return new Area(Outline.rectangle(x, y, width, height), FillRule.NONZERO);
    }

    private static Area disc(double x, double y, double r) {
        double k = KAPPA * r;
        Outline.Builder o = Outline.builder();
        o.moveTo(x + r, y);
        o.cubicTo(x + r, y + k, x + k, y + r, x, y + r);
        o.cubicTo(x - k, y + r, x - r, y + k, x - r, y);
        o.cubicTo(x - r, y - k, x - k, y - r, x, y - r);
        o.cubicTo(x + k, y - r, x + r, y - k, x + r, y);
        return new Area(o.build(), FillRule.NONZERO);
    }

    /** Lowest first. */
    private static PlanarMap map(FlatShape... shapes) {
        return PlanarMapper.map(
                new Artwork("by formula", new Frame(0, 0, 100, 100), List.of(shapes), List.of()),
                MapSettings.DEFAULT.withTilePieces(30));
    }

    private static double area(PlanarMap map, Rgb... topFirst) {
        List<Paint> paints =
                new ArrayList<>(Arrays.stream(topFirst).map(Paint::new).toList());
        int stack = map.stacks().indexOf(new PaintStack(paints));
        return stack < 0 ? 0 : map.areaMm2(stack);
    }
}
