package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Drawings of large shapes on a large sheet, from a seed: nothing lies a hair apart but by chance. */
final class WideDrawings {
    private static final double SIDE = 500;
    private static final int STRIPES = 15;

    private WideDrawings() {}

    /** Polygons with 3 to 12 corners anywhere, on stripes that fill the sheet. */
    static Artwork scattered(long seed) {
        return drawing("scattered " + seed, List.of(), seed);
    }

    /** The same with more such polygons beneath the stripes. */
    static Artwork scatteredOverHidden(long seed) {
        return drawing("scattered over hidden " + seed, polygons(new Random(~seed)), seed);
    }

    private static Artwork drawing(String name, List<FlatShape> beneath, long seed) {
        Random random = new Random(seed);
        List<FlatShape> shapes = new ArrayList<>(beneath);
        for (int i = 0; i < STRIPES; i++) {
            double left = (i - 0.5 * random.nextDouble()) * SIDE / STRIPES;
            shapes.add(FlatShape.opaque(
                    new Area(Outline.rectangle(left, -1, SIDE - left + 1, SIDE + 2), FillRule.NONZERO),
                    Rgb.of(random.nextInt(1 << 24)),
                    Source.UNKNOWN));
        }
        shapes.addAll(polygons(random));
        return new Artwork(name, new Frame(0, 0, SIDE, SIDE), shapes, List.of());
    }

    private static List<FlatShape> polygons(Random random) {
        List<FlatShape> shapes = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            shapes.add(polygon(
                    random.nextDouble() * SIDE, random.nextDouble() * SIDE, 20 + random.nextDouble() * 120, random));
        }
        return shapes;
    }

    private static FlatShape polygon(double x, double y, double radius, Random random) {
        int corners = 3 + random.nextInt(10);
        Outline.Builder outline = Outline.builder();
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * (c + random.nextDouble()) / corners;
            double px = x + radius * Math.cos(angle);
            double py = y + radius * Math.sin(angle);
            if (c == 0) {
                outline.moveTo(px, py);
            } else {
                outline.lineTo(px, py);
            }
        }
        Rgb colour = Rgb.of(random.nextInt(1 << 24));
        return FlatShape.opaque(new Area(outline.build(), FillRule.NONZERO), colour, Source.UNKNOWN);
    }
}
