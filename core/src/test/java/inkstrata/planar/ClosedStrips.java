package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * What closing seams changed in the picture of a drawing, and whether it was theirs to change: by JTS and by the JDK's own test of which
 * shapes cover a place, shape by shape.
 *
 * @param seams that were closed
 * @param lengthMm of all of them
 * @param widestMm of them
 * @param changedMm2 of the picture
 * @param parts that changed, each in one colour before and one after
 * @param faults parts that were wider than a seam, or in which a shape showed that does not lie beneath both sides
 */
record ClosedStrips(
        int seams, double lengthMm, double widestMm, double changedMm2, List<Part> parts, List<Fault> faults) {
    /** A part that changed, in millimetres, and how wide a disc it holds. */
    record Part(Geometry where, String before, String after, double wideMm) {}

    /** A part that was not theirs to change, and why. */
    record Fault(Part part, String text) {}

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double SEAM_MM = 0.05;

    /** Vertices of two maps of one drawing differ by a step or two, and curves are followed to 5 µm on either side. */
    private static final double NEAR_MM = 0.011;

    /** Holes where strips meet go to a neighbour up to so many seams both ways. */
    private static final double HOLE_MM = 4 * SEAM_MM + NEAR_MM;

    /** What is narrower is an edge that moved by rounding: up to half a step, and twice that where it is cut once more. */
    private static final double HAIR_MM = 0.0006;

    static ClosedStrips of(Artwork artwork) {
        boolean isOpaque = artwork.shapes().stream().allMatch(FlatShape::isOpaque);
        MapSettings settings = MapSettings.DEFAULT.withDepth(1);
        PlanarMap closed = PlanarMapper.map(artwork, settings.withSeam(SEAM_MM));
        SeamTally tally = SeamTally.closed(closed);
        List<Part> parts = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        double changed = 0;
        if (tally.count() > 0) {
            parts.addAll(changes(PlanarMapper.map(artwork, settings), closed));
            Shapes shapes = new Shapes(artwork);
            for (Part part : parts) {
                changed += part.where().getArea();
                Geometry core = part.where().buffer(-(SEAM_MM + NEAR_MM) / 2).buffer((SEAM_MM + NEAR_MM) / 2);
                double size = Math.max(
                        core.getEnvelopeInternal().getWidth(),
                        core.getEnvelopeInternal().getHeight());
                Coordinate at =
                        MaximumInscribedCircle.getCenter(part.where(), 0.001).getCoordinate();
                String what = String.format(
                        "%s became %s at %.3f, %.3f, %.5f mm², %.4f mm wide",
                        part.before(), part.after(), at.x, at.y, part.where().getArea(), part.wideMm());
                if (!core.isEmpty() && size > HOLE_MM) {
                    faults.add(new Fault(part, "wide: " + what));
                }
                if (isOpaque) {
                    shapes.drawn(part, at).ifPresent(why -> faults.add(new Fault(part, why + ": " + what)));
                }
            }
        }
        return new ClosedStrips(tally.count(), tally.lengthMm(), tally.widestMm(), changed, parts, faults);
    }

    private static List<Part> changes(PlanarMap before, PlanarMap after) {
        Map<String, Integer> colours = new HashMap<>();
        List<String> names = new ArrayList<>();
        for (PlanarMap map : List.of(before, after)) {
            for (PaintStack stack : map.stacks()) {
                String name = name(stack);
                if (colours.putIfAbsent(name, names.size()) == null) {
                    names.add(name);
                }
            }
        }
        int n = names.size();
        List<Region> regions = new ArrayList<>();
        for (PlanarMap map : List.of(before, after)) {
            for (String name : names) {
                regions.add(map.dissolve(
                        StackSet.of(IntStream.range(0, map.stacks().size())
                                .filter(stack -> name(map.stacks().get(stack)).equals(name)))));
            }
        }
        CoverMap both = CoverMap.of(before.frame(), regions);
        List<Part> parts = new ArrayList<>();
        for (int number = 0; number < both.count(); number++) {
            BitSet cover = both.cover(number);
            int was = cover.nextSetBit(0);
            int is = cover.nextSetBit(n) - n;
            if (was >= 0 && was < n && is >= 0 && was != is) {
                BitSet one = new BitSet();
                one.set(number);
                for (Region.Polygon polygon : both.where(one).polygons()) {
                    Geometry apart = polygon(polygon).buffer(-HAIR_MM / 2).buffer(HAIR_MM / 2);
                    for (int i = 0; i < apart.getNumGeometries() && !apart.isEmpty(); i++) {
                        Geometry where = apart.getGeometryN(i);
                        double wide = 2
                                * MaximumInscribedCircle.getRadiusLine(where, 0.001)
                                        .getLength();
                        parts.add(new Part(where, names.get(was), names.get(is), wide));
                    }
                }
            }
        }
        return parts;
    }

    private static String name(PaintStack stack) {
        return stack.isBare() ? "sheet" : stack.paints().get(0).colour().hex();
    }

    private static Polygon polygon(Region.Polygon polygon) {
        return FACTORY.createPolygon(
                ring(polygon.shell()),
                polygon.holes().stream().map(ClosedStrips::ring).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            corners[i] = new Coordinate(ring.x(i % ring.size()) * Grid.STEP_MM, ring.y(i % ring.size()) * Grid.STEP_MM);
        }
        return FACTORY.createLinearRing(corners);
    }

    /** Shapes as paths of the JDK. */
    private static final class Shapes {
        private final List<FlatShape> shapes;
        private final Frame frame;
        private final List<Path2D> paths = new ArrayList<>();
        private final List<List<List<Path2D>>> clips = new ArrayList<>();

        Shapes(Artwork artwork) {
            shapes = artwork.shapes();
            frame = artwork.frame();
            for (FlatShape shape : shapes) {
                paths.add(path(shape.area()));
                List<List<Path2D>> all = new ArrayList<>();
                for (Clip clip : shape.clips()) {
                    all.add(clip.parts().stream().map(Shapes::path).toList());
                }
                clips.add(all);
            }
        }

        /** Topmost first. */
        Set<Integer> at(double x, double y) {
            Set<Integer> found = new LinkedHashSet<>();
            for (int i = shapes.size() - 1; i >= 0; i--) {
                if (paths.get(i).contains(x, y)
                        && clips.get(i).stream()
                                .allMatch(clip -> clip.stream().anyMatch(path -> path.contains(x, y)))) {
                    found.add(i);
                }
            }
            return found;
        }

        /**
         * What tells that a part was drawn: its colour is not beneath what lies at its sides, or the shape that showed in it lies above that.
         *
         * <p>Looked at are places a little outside the part, at which something else shows than did in it; some of them lie
         * beyond its ends.
         */
        Optional<String> drawn(Part part, Coordinate at) {
            Set<Integer> here = at(at.x, at.y);
            if (here.isEmpty()) {
                return Optional.empty();
            }
            int top = here.iterator().next();
            Rgb colour = shapes.get(top).colour();
            if (!colour.hex().equals(part.before())) {
                // A place so near to an outline that a curve and its chords differ.
                return Optional.empty();
            }
            int sides = 0;
            int without = 0;
            int lower = 0;
            for (Coordinate place : around(part)) {
                List<Integer> there = List.copyOf(at(place.x, place.y));
                if (!there.isEmpty() && !shapes.get(there.get(0)).colour().equals(colour)) {
                    sides++;
                    without += there.stream()
                                    .noneMatch(
                                            shape -> shapes.get(shape).colour().equals(colour))
                            ? 1
                            : 0;
                    lower += there.get(0) < top ? 1 : 0;
                }
            }
            if (2 * without > sides) {
                return Optional.of("not beneath its sides");
            }
            return 4 * lower > 3 * sides ? Optional.of("drawn above its sides") : Optional.empty();
        }

        private List<Coordinate> around(Part part) {
            List<Coordinate> places = new ArrayList<>();
            PreparedGeometry where = PreparedGeometryFactory.prepare(part.where());
            Coordinate[] ring = ((Polygon) part.where()).getExteriorRing().getCoordinates();
            for (int i = 0; i + 1 < ring.length; i++) {
                double dx = ring[i + 1].x - ring[i].x;
                double dy = ring[i + 1].y - ring[i].y;
                double size = Math.hypot(dx, dy);
                int pieces = size < NEAR_MM ? 0 : (int) Math.ceil(size / (4 * SEAM_MM));
                for (int k = 0; k < 2 * pieces; k++) {
                    int piece = k / 2;
                    double share = (piece + 0.5) / pieces;
                    double side = k % 2 == 0 ? 1 : -1;
                    double x = ring[i].x + share * dx - side * NEAR_MM * dy / size;
                    double y = ring[i].y + share * dy + side * NEAR_MM * dx / size;
                    boolean isInFrame = x > frame.x()
                            && y > frame.y()
                            && x < frame.x() + frame.width()
                            && y < frame.y() + frame.height();
                    if (isInFrame && !where.intersects(FACTORY.createPoint(new Coordinate(x, y)))) {
                        places.add(new Coordinate(x, y));
                    }
                }
            }
            return places;
        }

        private static Path2D path(Area area) {
            Path2D.Double path =
                    new Path2D.Double(area.rule() == FillRule.EVENODD ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
            area.outline().sendTo(new Into(path));
            return path;
        }
    }

    private record Into(Path2D.Double path) implements CurveSink {
        @Override
        public void moveTo(double x, double y) {
            path.moveTo(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            path.lineTo(x, y);
        }

        @Override
        public void quadTo(double x1, double y1, double x, double y) {
            path.quadTo(x1, y1, x, y);
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
            path.curveTo(x1, y1, x2, y2, x, y);
        }
    }
}
