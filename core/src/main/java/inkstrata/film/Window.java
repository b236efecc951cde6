package inkstrata.film;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The picture's frame, and what of a region lies within it.
 *
 * @param frame upright
 * @param region the same
 */
record Window(Frame frame, Region region) {
    static Window of(Frame frame) {
        Outline outline = Outline.rectangle(frame.x(), frame.y(), frame.width(), frame.height());
        Artwork artwork = new Artwork(
                "window",
                frame,
                List.of(FlatShape.opaque(new Area(outline, FillRule.NONZERO), Rgb.BLACK, Source.UNKNOWN)),
                List.of());
        PlanarMap map = PlanarMapper.map(artwork, MapSettings.DEFAULT);
        StackSet all = StackSet.of(IntStream.range(0, map.stacks().size())
                .filter(stack -> !map.stacks().get(stack).isBare()));
        return new Window(frame, map.dissolve(all));
    }

    Region within(Region all) {
        return split(all, true);
    }

    Region without(Region all) {
        return split(all, false);
    }

    /** Only polygons that reach across the frame are cut. */
    private Region split(Region all, boolean isWithin) {
        List<Region> parts = new ArrayList<>();
        for (Region.Polygon polygon : all.polygons()) {
            Region one = Region.of(polygon);
            Frame bounds = one.bounds().orElseThrow();
            if (isInside(bounds)) {
                parts.add(isWithin ? one : Region.EMPTY);
            } else if (isOutside(bounds)) {
                parts.add(isWithin ? Region.EMPTY : one);
            } else {
                parts.add(isWithin ? one.intersection(region) : one.minus(region));
            }
        }
        return Region.of(parts);
    }

    private boolean isInside(Frame bounds) {
        return bounds.x() >= frame.x() - Grid.STEP_MM
                && bounds.y() >= frame.y() - Grid.STEP_MM
                && bounds.right() <= frame.right() + Grid.STEP_MM
                && bounds.bottom() <= frame.bottom() + Grid.STEP_MM;
    }

    private boolean isOutside(Frame bounds) {
        return bounds.x() >= frame.right()
                || bounds.y() >= frame.bottom()
                || bounds.right() <= frame.x()
                || bounds.bottom() <= frame.y();
    }
}
