package inkstrata.samples;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.separation.Discs;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Small random drawings of rectangles, bars and discs in few colours, many over each other, many beside each other, on 24 x 24 mm: some lie
 * hidden beneath others.
 */
final class StackedDrawing {
    private static final double SIDE_MM = 24;

    private StackedDrawing() {}

    static Artwork of(long seed) {
        Random random = new Random(seed * 104_729 + 3);
        List<Rgb> colours = new ArrayList<>(List.of(Rgb.WHITE));
        for (int inks = 2 + random.nextInt(5); inks > 0; inks--) {
            colours.add(Rgb.of(random.nextInt(1 << 24)));
        }
        List<FlatShape> shapes = new ArrayList<>();
        for (int count = 2 + random.nextInt(14); count > 0; count--) {
            Rgb colour = colours.get(random.nextInt(colours.size()));
            shapes.add(FlatShape.opaque(new Area(outline(random), FillRule.NONZERO), colour, Source.UNKNOWN));
        }
        return new Artwork("stacked-" + seed + ".svg", new Frame(0, 0, SIDE_MM, SIDE_MM), shapes, List.of());
    }

    private static Outline outline(Random random) {
        double x = SIDE_MM * random.nextDouble();
        double y = SIDE_MM * random.nextDouble();
        return switch (random.nextInt(5)) {
            case 0 -> Discs.circle(x, y, 0.2 + 8 * random.nextDouble());
            case 1 -> Outline.rectangle(x, y, 0.1 + random.nextDouble(), 12 * random.nextDouble());
            case 2 -> Outline.rectangle(x, y, 12 * random.nextDouble(), 0.1 + random.nextDouble());
            // On a raster, so that edges meet.
            case 3 ->
                Outline.rectangle(
                        3 * random.nextInt(6),
                        3 * random.nextInt(6),
                        3 + 3 * random.nextInt(4),
                        3 + 3 * random.nextInt(4));
            default -> Outline.rectangle(x - 6, y - 6, 1 + 14 * random.nextDouble(), 1 + 14 * random.nextDouble());
        };
    }
}
