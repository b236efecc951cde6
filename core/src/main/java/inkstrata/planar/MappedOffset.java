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
import java.util.List;
import java.util.stream.IntStream;

/**
 * Outlines moved outwards or inwards by way of a map: the region and a {@link Corridor} along each of its outlines are mapped together. Slower
 * than a buffer, and fails for no outline.
 */
final class MappedOffset {
    private static final Rgb REGION = Rgb.of(1);
    private static final Rgb CORRIDOR = Rgb.of(2);

    private MappedOffset() {}

    /**
     * Moves them.
     *
     * @param region not empty
     * @param steps how far, outwards if positive; at least one grid step either way
     */
    static Region of(Region region, double steps, Corners corners) {
        boolean isGrown = steps > 0;
        Outline.Builder corridors = Outline.builder();
        for (Ring ring : region.rings()) {
            Corridor.draw(chain(ring, isGrown, Math.abs(steps)), corners, Corners.MITRE_LIMIT, corridors);
        }
        List<FlatShape> shapes = List.of(shape(RegionOutlines.of(region), REGION), shape(corridors.build(), CORRIDOR));
        PlanarMap map = PlanarMapper.map(
                new Artwork("offset", frame(region, Math.abs(steps) * Grid.STEP_MM), shapes, List.of()),
                MapSettings.DEFAULT);
        return map.dissolve(StackSet.of(IntStream.range(0, map.stacks().size())
                .filter(number -> isIn(map.stacks().get(number), isGrown))));
    }

    /** An outline whose corridor lies inside the region, or outside if it is to grow. */
    private static BorderChain chain(Ring ring, boolean isGrown, double width) {
        int size = ring.size();
        int[] xy = new int[2 * size + 2];
        for (int i = 0; i <= size; i++) {
            int at = (isGrown ? size - i : i) % size;
            xy[2 * i] = ring.x(at);
            xy[2 * i + 1] = ring.y(at);
        }
        return new BorderChain(0, xy, true, width, 0, 0, 0);
    }

    private static FlatShape shape(Outline outline, Rgb colour) {
        return FlatShape.opaque(new Area(outline, FillRule.NONZERO), colour, Source.UNKNOWN);
    }

    private static Frame frame(Region region, double width) {
        Frame bounds = region.bounds().orElseThrow();
        double margin = Corners.MITRE_LIMIT * width + Grid.STEP_MM;
        return new Frame(
                bounds.x() - margin, bounds.y() - margin, bounds.width() + 2 * margin, bounds.height() + 2 * margin);
    }

    private static boolean isIn(PaintStack stack, boolean isGrown) {
        List<Rgb> colours = stack.paints().stream().map(Paint::colour).toList();
        return isGrown ? !colours.isEmpty() : colours.equals(List.of(REGION));
    }
}
