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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CullingTest {
    private static final Frame FRAME = new Frame(0, 0, 8, 8);
    private static final Rgb RED = new Rgb(200, 0, 0);
    private static final Rgb BLUE = new Rgb(0, 0, 200);

    @Test
    void anOpaqueShapeUnderACoverOfItsColourGoesThoughSomethingAboveTheCoverShinesThrough() {
        assertThat(kept(
                        shape(whole(), RED, 1),
                        shape(part(), RED, 1),
                        shape(whole(), RED, 1),
                        shape(part(), BLUE, 0.5)))
                .containsExactly(0, 1);
    }

    @Test
    void anOpaqueShapeStaysWhereSomethingBetweenItAndTheCoverShinesThrough() {
        assertThat(kept(shape(part(), RED, 1), shape(part(), BLUE, 0.5), shape(whole(), RED, 1)))
                .containsExactly(0, 1, 2);
    }

    @Test
    void aTranslucentShapeStaysUnderACoverOfItsColour() {
        assertThat(kept(shape(part(), RED, 0.5), shape(whole(), RED, 1))).containsExactly(0, 1);
    }

    /** What is left out never changes the first paints of any place: tried at places in and out of each shape. */
    @Test
    void stacksAreTheSameWithAndWithoutWhatIsLeftOut() {
        int leftOut = 0;
        for (long seed = 0; seed < 1_500; seed++) {
            Random random = new Random(seed);
            Artwork artwork = drawing(random);
            int depth = random.nextBoolean() ? MapSettings.ALL : 1 + random.nextInt(3);
            Drawing drawing = Drawing.of(artwork);
            Tile all = everything(artwork, drawing);
            Paints paints = new Paints(drawing);
            Tile culled = new Culling(drawing, paints, depth).cull(all);
            leftOut += all.shapes().length - culled.shapes().length;
            Stacker stacker = new TranslucentStacker(drawing.shapes(), paints, depth, Rgb.WHITE);
            for (int i = 0; i < 16; i++) {
                double x = random.nextInt(8) + 0.5;
                double y = random.nextInt(8) + 0.5;
                assertThat(stacker.stack(culled.shapes(), covers(culled, drawing, x, y)))
                        .as("seed %d, depth %d, at %f, %f", seed, depth, x, y)
                        .isEqualTo(stacker.stack(all.shapes(), covers(all, drawing, x, y)));
            }
        }
        assertThat(leftOut).isGreaterThan(1_500);
    }

    /** Of the shapes listed in a tile those whose rectangles hold a place. */
    private static long[] covers(Tile tile, Drawing drawing, double x, double y) {
        long[] bits = new long[1];
        for (int s = 0; s < tile.shapes().length; s++) {
            FlatShape shape = drawing.shapes().get(tile.shapes()[s]);
            boolean clipped = shape.clips().stream()
                    .allMatch(clip -> clip.parts().stream().anyMatch(part -> holds(part, x, y)));
            if (clipped && holds(shape.area(), x, y)) {
                bits[0] |= 1L << s;
            }
        }
        return bits;
    }

    private static boolean holds(Area rectangle, double x, double y) {
        Extent e = Extent.ofRectangle(rectangle.outline()).orElseThrow();
        return e.left() < x && x < e.right() && e.low() < y && y < e.high();
    }

    private static Artwork drawing(Random random) {
        List<FlatShape> shapes = new ArrayList<>();
        Optional<TranslucentGroup> group = Optional.empty();
        int n = 2 + random.nextInt(12);
        for (int i = 0; i < n; i++) {
            if (random.nextInt(4) == 0) {
                group = random.nextInt(3) > 0
                        ? Optional.empty()
                        : Optional.of(new TranslucentGroup(i, 0.5, Optional.empty()));
            }
            Rgb colour = random.nextBoolean() ? RED : BLUE;
            double opacity = random.nextInt(4) == 0 ? 0.25 + 0.5 * random.nextInt(2) : 1;
            List<Clip> clips = random.nextInt(4) > 0
                    ? List.of()
                    : List.of(new Clip(List.of(rectangle(random), rectangle(random))));
            shapes.add(new FlatShape(rectangle(random), colour, opacity, group, clips, Source.UNKNOWN));
        }
        return new Artwork("of rectangles", FRAME, shapes, List.of());
    }

    private static Area rectangle(Random random) {
        return switch (random.nextInt(4)) {
            case 0, 1 -> whole();
            case 2 -> part();
            default ->
                new Area(
                        Outline.rectangle(
                                random.nextInt(8), random.nextInt(8), 1 + random.nextInt(9), 1 + random.nextInt(9)),
                        FillRule.EVENODD);
        };
    }

    private static Area whole() {
        return new Area(Outline.rectangle(-1, -1, 10, 10), FillRule.NONZERO);
    }

    private static Area part() {
        return new Area(Outline.rectangle(2, 2, 3, 3), FillRule.NONZERO);
    }

    private static FlatShape shape(Area area, Rgb colour, double opacity) {
        return new FlatShape(area, colour, opacity, Optional.empty(), List.of(), Source.UNKNOWN);
    }

    /** Numbers of the shapes that stay, topmost 0. */
    private static List<Integer> kept(FlatShape... lowestFirst) {
        Artwork artwork = new Artwork("by hand", FRAME, List.of(lowestFirst), List.of());
        Drawing drawing = Drawing.of(artwork);
        Culling culling = new Culling(drawing, new Paints(drawing), MapSettings.ALL);
        return Arrays.stream(culling.cull(everything(artwork, drawing)).shapes())
                .boxed()
                .toList();
    }

    private static Tile everything(Artwork artwork, Drawing drawing) {
        return MapChecks.cropped(drawing, MapChecks.segments(artwork, MapSettings.DEFAULT), Box.of(artwork.frame()));
    }
}
