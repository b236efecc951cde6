package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A drawing of what spreads and into what, to be mapped like any other: a shape for each kind of stack, as it lies in the map,
 * and over them one for each spread's corridors. Colours stand for numbers.
 */
final class SpreadDrawing {
    private SpreadDrawing() {}

    /**
     * Draws all kinds and corridors.
     *
     * @param lines between the kinds
     * @param mitreLimit in widths
     */
    static Artwork of(
            Frame frame,
            Borderlines lines,
            int kinds,
            List<BorderChain> chains,
            List<Contact> contacts,
            List<Spread> spreads,
            Corners corners,
            double mitreLimit) {
        Outline.Builder[] outlines = IntStream.range(0, kinds + spreads.size())
                .mapToObj(i -> Outline.builder())
                .toArray(Outline.Builder[]::new);
        boolean[] done = new boolean[lines.size()];
        for (int h = 0; h < done.length; h++) {
            if (!done[h] && lines.kind(h) != Borderlines.NONE) {
                walk(h, lines, done, outlines[lines.kind(h)]);
            }
        }
        for (BorderChain chain : chains) {
            if (chain.width() >= 1) {
                Corridor.draw(chain, corners, mitreLimit, outlines[kinds + chain.spread()]);
            }
        }
        for (Contact contact : contacts) {
            double width = spreads.get(contact.spread()).widthMm() * Grid.STEPS_PER_MM;
            if (width >= 1) {
                Corridor.drawAround(contact.x(), contact.y(), width, outlines[kinds + contact.spread()]);
            }
        }
        List<FlatShape> shapes = new ArrayList<>();
        for (int i = 0; i < outlines.length; i++) {
            shapes.add(FlatShape.opaque(new Area(outlines[i].build(), FillRule.NONZERO), Rgb.of(i), Source.UNKNOWN));
        }
        return new Artwork("spread", frame, shapes, List.of());
    }

    private static void walk(int start, Borderlines lines, boolean[] done, Outline.Builder outline) {
        int h = start;
        do {
            done[h] = true;
            double x = Grid.millimetres(lines.x(lines.origin(h)));
            double y = Grid.millimetres(lines.y(lines.origin(h)));
            if (h == start) {
                outline.moveTo(x, y);
            } else {
                outline.lineTo(x, y);
            }
            h = lines.next(h);
        } while (h != start);
    }
}
