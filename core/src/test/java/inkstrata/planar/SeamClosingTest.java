package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Strips that nobody drew are closed, by closed formulas; what somebody drew stays. */
class SeamClosingTest {
    private static final Rgb RED = new Rgb(180, 20, 20);
    private static final Rgb YELLOW = new Rgb(250, 220, 60);
    private static final Rgb WHITE = new Rgb(255, 255, 255);
    private static final Frame FRAME = new Frame(0, 0, 40, 40);
    private static final double SEAM = 0.05;

    /** Bricks of an export with three decimals: 7.827 + 12.439 = 20.266, and the next begins at 20.267. */
    @Test
    void bricksAMicrometreApartShareABorder() {
        PlanarMap map = closed(brick(7.827, 10, 12.439, RED), brick(20.267, 10, 12, YELLOW));
        assertThat(shared(map, RED, YELLOW)).isCloseTo(12, within(1e-9));
        assertThat(area(map, YELLOW)).as("the lighter takes the strip").isCloseTo(12 * 12 + 0.012, within(1e-9));
        assertThat(area(map, RED)).isCloseTo(12 * 12.439, within(1e-9));
        assertThat(map.seams()).singleElement().satisfies(seam -> {
            assertThat(seam.closed()).isTrue();
            assertThat(seam.lengthMm()).isCloseTo(12, within(1e-3));
            assertThat(seam.widestMm()).isCloseTo(0.001, within(1e-6));
            assertThat(seam.shows()).isEmpty();
            assertThat(List.of(seam.one().orElseThrow(), seam.other().orElseThrow()))
                    .containsExactlyInAnyOrder(new Paint(RED), new Paint(YELLOW));
        });
    }

    @Test
    void stripsWiderThanTheSeamStayAndAreAskedAbout() {
        PlanarMap map = closed(brick(5, 10, 10, RED), brick(15.06, 10, 10, YELLOW));
        same(map, plain(brick(5, 10, 10, RED), brick(15.06, 10, 10, YELLOW)));
        assertThat(map.seams()).singleElement().satisfies(seam -> {
            assertThat(seam.closed()).isFalse();
            assertThat(seam.lengthMm()).isCloseTo(12, within(1e-3));
            assertThat(seam.widestMm()).isCloseTo(0.06, within(1e-6));
        });
        assertThat(closed(brick(5, 10, 10, RED), brick(15.2, 10, 10, YELLOW)).seams())
                .isEmpty();
    }

    /** The longer side goes on beyond the end of the shorter one, and from there the way to that is slanted; so it is along the picture's edge. */
    @Test
    void stripsAreAsWideAsTheyAreWhereOneSideEnds() {
        for (double gap : new double[] {0.02, 0.08}) {
            for (FlatShape[] sides : List.of(
                    new FlatShape[] {brick(5, 10, 10, RED), polygon(YELLOW, 15 + gap, 12, 25, 12, 25, 20, 15 + gap, 20)
                    },
                    new FlatShape[] {polygon(YELLOW, 15 + gap, 12, 25, 12, 25, 20, 15 + gap, 20), brick(5, 10, 10, RED)
                    },
                    new FlatShape[] {polygon(RED, gap, 10, 20, 10, 20, 18, gap, 18)})) {
                PlanarMap map = closed(sides);
                assertThat(map.seams()).singleElement().satisfies(seam -> {
                    assertThat(seam.closed()).isEqualTo(gap < SEAM);
                    assertThat(seam.lengthMm()).isBetween(8 - 1e-3, 8 + 2 * gap + 1e-3);
                    assertThat(seam.widestMm()).isCloseTo(gap, within(1e-6));
                });
            }
        }
    }

    /** 0.04 mm wide and 0.3 mm long: no wedge, though ways from the longer side to the ends of the shorter one are longer than a seam. */
    @Test
    void aShortStripBesideALongerSideIsClosed() {
        PlanarMap map = closed(polygon(RED, 0.04, 10, 20, 10, 20, 10.3, 0.04, 10.3));
        assertThat(area(map, RED)).isCloseTo(20 * 0.3, within(0.04 * 0.04));
        assertThat(map.seams())
                .singleElement()
                .satisfies(seam -> assertThat(seam.closed()).isTrue());
    }

    /** A gap that opens from 0 to 0.2 mm over 20 mm is closed for the first 5 mm: 0.05 x 5 / 2 mm². */
    @Test
    void aWedgeIsClosedUpToWhereItIsAsWideAsTheSeam() {
        FlatShape slanted = polygon(YELLOW, 20, 10, 30, 10, 30, 30, 20.2, 30);
        PlanarMap map = closed(polygon(RED, 10, 10, 20, 10, 20, 30, 10, 30), slanted);
        double drawn = (10 + 9.8) / 2 * 20;
        assertThat(area(map, YELLOW) - drawn).isCloseTo(0.05 * 5 / 2, within(2e-4));
    }

    @Test
    void aStripInWhichALowerPaintShowsIsClosed() {
        FlatShape ground = polygon(WHITE, 2, 2, 38, 2, 38, 38, 2, 38);
        PlanarMap map = closed(ground, brick(5, 10, 10, RED), brick(15.02, 10, 10, YELLOW));
        assertThat(shared(map, RED, YELLOW)).isCloseTo(12, within(1e-6));
        PlanarMap flat = PlanarMapper.map(
                drawing(ground, brick(5, 10, 10, RED), brick(15.02, 10, 10, YELLOW)),
                MapSettings.DEFAULT.withDepth(1).withSeam(SEAM));
        assertThat(shared(flat, RED, YELLOW)).as("stacks of one paint").isCloseTo(12, within(1e-6));
    }

    /** Three bricks in a T, 20 µm apart: nothing is left between them. */
    @Test
    void whereThreeMeetNoHoleIsLeft() {
        PlanarMap map = closed(
                polygon(RED, 5, 5, 30, 5, 30, 15, 5, 15),
                polygon(YELLOW, 5, 15.02, 17, 15.02, 17, 30, 5, 30),
                polygon(new Rgb(20, 60, 160), 17.02, 15.02, 30, 15.02, 30, 30, 17.02, 30));
        assertThat(bare(map)).isCloseTo(40 * 40 - 25 * 25.0, within(1e-6));
        assertThat(map.dissolve(StackSet.of(map.stacks().indexOf(PaintStack.BARE)))
                        .polygons())
                .hasSize(1);
    }

    /** Teeth of 10 µm, 20 µm from a straight side, with flanks of 60 degrees: from them no way across is square enough, from the straight side every one is. */
    @Test
    void aSawIsClosedFromTheSideThatSeesIt() {
        double step = 0.02 / Math.tan(Math.PI / 3);
        int teeth = 400;
        double[] saw = new double[2 * (2 * teeth + 3)];
        for (int i = 0; i <= 2 * teeth; i++) {
            saw[2 * i] = 10 + i * step / 2;
            saw[2 * i + 1] = i % 2 == 0 ? 20 : 20.01;
        }
        saw[4 * teeth + 2] = 10 + teeth * step;
        saw[4 * teeth + 3] = 10;
        saw[4 * teeth + 4] = 10;
        saw[4 * teeth + 5] = 10;
        FlatShape straight = polygon(YELLOW, 10, 20.03, 10 + teeth * step, 20.03, 10 + teeth * step, 30, 10, 30);
        double whole = teeth * step * 20;
        for (PlanarMap map : List.of(closed(polygon(RED, saw), straight), closed(straight, polygon(RED, saw)))) {
            assertThat(area(map, RED) + area(map, YELLOW)).isCloseTo(whole, within(0.003));
        }
    }

    @Test
    void aStripAlongThePicturesEdgeBelongsToTheInk() {
        PlanarMap map = closed(polygon(RED, 0.01, 0.02, 39.97, 0.02, 39.97, 40, 0.01, 40));
        assertThat(area(map, RED)).isCloseTo(1600, within(1e-9));
    }

    @Test
    void contoursOfOnePathMayMeet() {
        Outline.Builder both = Outline.builder();
        rectangle(both, 5, 10, 15, 20);
        rectangle(both, 15.02, 10, 25, 20);
        PlanarMap map = closed(FlatShape.opaque(new Area(both.build(), FillRule.NONZERO), RED, Source.UNKNOWN));
        assertThat(area(map, RED)).isCloseTo(200, within(1e-9));
    }

    @Test
    void whatOneStrokeDoesToItselfStays() {
        Outline.Builder both = Outline.builder();
        rectangle(both, 5, 10, 15, 20);
        rectangle(both, 15.02, 10, 25, 20);
        isKept(FlatShape.opaque(new Area(both.build(), FillRule.NONZERO, true), RED, Source.UNKNOWN));
    }

    /** The outline of a leaf and its vein: the green between them is no gap between two shapes that were meant to meet. */
    @Test
    void whatLiesBetweenTwoStrokesOfOneColourStays() {
        FlatShape leaf = polygon(YELLOW, 5, 5, 35, 5, 35, 35, 5, 35);
        isKept(leaf, line(10, RED), line(10.06, RED));
        isKept(line(10, RED), line(10.06, RED));
    }

    @Test
    void strokesOfTwoColoursMayMeet() {
        PlanarMap map = closed(line(10, RED), line(10.06, YELLOW));
        assertThat(area(map, RED) + area(map, YELLOW)).isCloseTo(0.08 * 20, within(1e-9));
    }

    /** 0.02 mm wide. */
    private static FlatShape line(double x, Rgb colour) {
        return FlatShape.opaque(
                new Area(Outline.rectangle(x, 10, 0.02, 20), FillRule.NONZERO, true), colour, Source.UNKNOWN);
    }

    @Test
    void aSlitCutIntoOneContourStays() {
        isKept(polygon(RED, 5, 5, 14.985, 5, 14.985, 25, 15.015, 25, 15.015, 5, 30, 5, 30, 30, 5, 30));
    }

    @Test
    void aStarWithNeedlePointsStays() {
        double[] star = new double[48];
        for (int i = 0; i < 24; i++) {
            double r = i % 2 == 0 ? 18 : 0.3;
            star[2 * i] = 20 + r * Math.cos(Math.PI * i / 12);
            star[2 * i + 1] = 20 + r * Math.sin(Math.PI * i / 12);
        }
        isKept(polygon(RED, star));
    }

    @Test
    void aThinLineDrawnOnTopStaysWhateverItsColour() {
        FlatShape ground = polygon(WHITE, 2, 2, 38, 2, 38, 38, 2, 38);
        FlatShape red = polygon(RED, 5, 5, 35, 5, 35, 35, 5, 35);
        for (Rgb colour : List.of(WHITE, YELLOW, RED)) {
            FlatShape line = polygon(colour, 20, 1, 20.03, 1, 20.03, 39, 20, 39);
            isKept(ground, red, line);
            isKept(red, line);
        }
    }

    /** Two white lines side by side on white beneath red: each strip of red between them and beside them was drawn, or they cover it. */
    @Test
    void aThinWhiteShapeOverRedOverWhiteStays() {
        FlatShape ground = polygon(WHITE, 2, 2, 38, 2, 38, 38, 2, 38);
        FlatShape red = polygon(RED, 5, 5, 35, 5, 35, 35, 5, 35);
        isKept(
                ground,
                red,
                polygon(WHITE, 20, 1, 20.02, 1, 20.02, 39, 20, 39),
                polygon(WHITE, 20.01, 1, 20.03, 1, 20.03, 39, 20.01, 39));
    }

    @Test
    void cornersThatTouchStay() {
        isKept(brick(5, 5, 10, RED), polygon(YELLOW, 15.01, 17.01, 25, 17.01, 25, 27, 15.01, 27));
    }

    @Test
    void nothingMovesWhereThereAreNoStrips() {
        for (String kind : List.of("bricks", "sectors", "rings")) {
            Artwork artwork = SeamDrawings.of(kind, 9, 0.2, 5);
            MapSettings settings = MapSettings.DEFAULT.withDepth(3);
            PlanarMap map = PlanarMapper.map(artwork, settings.withSeam(SEAM));
            assertThat(map.seams()).noneMatch(Seam::closed);
            same(map, PlanarMapper.map(artwork, settings));
        }
    }

    private static void isKept(FlatShape... shapes) {
        PlanarMap map = closed(shapes);
        assertThat(map.seams()).noneMatch(Seam::closed);
        same(map, plain(shapes));
    }

    static void same(PlanarMap one, PlanarMap other) {
        assertThat(one.stacks()).isEqualTo(other.stacks());
        assertThat(Arrays.deepToString(arrays(one.edges()))).isEqualTo(Arrays.deepToString(arrays(other.edges())));
    }

    private static int[][] arrays(EdgeTable t) {
        return new int[][] {t.x(), t.y(), t.from(), t.to(), t.left(), t.right(), t.source()};
    }

    private static PlanarMap closed(FlatShape... shapes) {
        PlanarMap map = PlanarMapper.map(
                drawing(shapes), MapSettings.DEFAULT.withDepth(3).withSeam(SEAM));
        MapChecks.edgesMeetOnlyAtVertices(map, "closed");
        MapChecks.stacksAgreeAroundVertices(map, "closed");
        return map;
    }

    private static PlanarMap plain(FlatShape... shapes) {
        return PlanarMapper.map(drawing(shapes), MapSettings.DEFAULT.withDepth(3));
    }

    private static Artwork drawing(FlatShape... shapes) {
        return new Artwork("strips", FRAME, List.of(shapes), List.of());
    }

    private static FlatShape brick(double x, double y, double width, Rgb colour) {
        return FlatShape.opaque(new Area(Outline.rectangle(x, y, width, 12), FillRule.NONZERO), colour, Source.UNKNOWN);
    }

    private static FlatShape polygon(Rgb colour, double... p) {
        Outline.Builder outline = Outline.builder();
        outline.moveTo(p[0], p[1]);
        for (int i = 2; i < p.length; i += 2) {
            outline.lineTo(p[i], p[i + 1]);
        }
        return FlatShape.opaque(new Area(outline.build(), FillRule.NONZERO), colour, Source.UNKNOWN);
    }

    private static void rectangle(Outline.Builder outline, double left, double top, double right, double bottom) {
        outline.moveTo(left, top);
        outline.lineTo(right, top);
        outline.lineTo(right, bottom);
        outline.lineTo(left, bottom);
    }

    private static double area(PlanarMap map, Rgb colour) {
        double area = 0;
        for (int i = 0; i < map.stacks().size(); i++) {
            if (shows(map, i, colour)) {
                area += map.areaMm2(i);
            }
        }
        return area;
    }

    private static double bare(PlanarMap map) {
        return map.areaMm2(map.stacks().indexOf(PaintStack.BARE));
    }

    private static double shared(PlanarMap map, Rgb one, Rgb other) {
        return map.neighbours().stream()
                .filter(pair -> (shows(map, pair.one(), one) && shows(map, pair.other(), other))
                        || (shows(map, pair.one(), other) && shows(map, pair.other(), one)))
                .mapToDouble(Neighbours::lengthMm)
                .sum();
    }

    private static boolean shows(PlanarMap map, int stack, Rgb colour) {
        List<Paint> paints = map.stacks().get(stack).paints();
        return !paints.isEmpty() && paints.get(0).colour().equals(colour);
    }
}
