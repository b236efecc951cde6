package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CoversTest {
    private static final int SHAPES = 4_000;

    /** Counted in time this thread has run, so that a busy machine does not matter. */
    @Test
    void manyShapesUnderOneClipOfManyPartsTakeNoLongerThanUnderAClipOfFew() {
        nanosToLabel(100);
        long few = nanosToLabel(2);
        long many = nanosToLabel(2_000);
        // Trying each part for each shape takes some hundred times longer.
        assertThat(many).isLessThan(15 * few);
    }

    private static long nanosToLabel(int parts) {
        Artwork artwork = underOneClip(parts);
        Drawing drawing = Drawing.of(artwork);
        Paints paints = new Paints(drawing);
        Tile everything =
                MapChecks.cropped(drawing, MapChecks.segments(artwork, MapSettings.DEFAULT), Box.of(artwork.frame()));
        long least = Long.MAX_VALUE;
        for (int run = 0; run < 3; run++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Tile tile = new Culling(drawing, paints, MapSettings.ALL).cull(everything);
            Covers covers = new Covers(tile, drawing);
            for (int outline = 0; outline < tile.outlines().length; outline++) {
                covers.add(outline, 1);
                covers.add(outline, -1);
            }
            least = Math.min(least, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start);
        }
        return least;
    }

    /** One part around all shapes, so that the clip stays open while the others open and close. */
    private static Artwork underOneClip(int parts) {
        List<Area> windows = new ArrayList<>();
        windows.add(new Area(triangle(-50, -50, 300), FillRule.NONZERO));
        for (int i = 1; i < parts; i++) {
            int column = i % 50;
            int row = i / 50;
            windows.add(new Area(triangle(2.0 * column, 2.0 * row, 1), FillRule.NONZERO));
        }
        Clip clip = new Clip(windows);
        List<FlatShape> shapes = new ArrayList<>();
        for (int i = 0; i < SHAPES; i++) {
            int column = i % 90;
            int row = i / 90;
            Area area = new Area(Outline.rectangle(column, row, 3, 3), FillRule.NONZERO);
            shapes.add(new FlatShape(area, Rgb.of(i), 1, Optional.empty(), List.of(clip), Source.UNKNOWN));
        }
        return new Artwork("under one clip", new Frame(0, 0, 100, 100), shapes, List.of());
    }

    private static Outline triangle(double x, double y, double size) {
        Outline.Builder outline = Outline.builder();
        outline.moveTo(x, y);
        outline.lineTo(x + size, y);
        outline.lineTo(x, y + size);
        return outline.build();
    }
}
