package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.InteriorPointArea;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Maps small drawings the slow way, to check the real mapper by: everything noded at once by JTS, faces from its polygonizer,
 * and for each face plain winding counts of every outline around a point in it. It shares nothing with the real one but how
 * curves are flattened.
 */
public final class ReferenceMapper {
    private final IdentityHashMap<Area, List<SegmentString>> outlines = new IdentityHashMap<>();
    private final Map<Coordinate, Integer> vertices = new LinkedHashMap<>();
    /** For each edge from a smaller to a larger vertex number: the stacks on its left and right. */
    private final Map<Long, int[]> edges = new LinkedHashMap<>();

    private final List<PaintStack> stacks = new ArrayList<>();
    private final Map<PaintStack, Integer> stackNumbers = new HashMap<>();

    private final Frame frame;
    private final double flatnessMm;

    private ReferenceMapper(Frame frame, double flatnessMm) {
        this.frame = frame;
        this.flatnessMm = flatnessMm;
    }

    /** Whole stacks, on a backdrop that shows through translucent shapes. */
    public static PlanarMap map(Artwork artwork, Rgb backdrop, double flatnessMm) {
        return new ReferenceMapper(artwork.frame(), flatnessMm).mapped(artwork, backdrop);
    }

    private PlanarMap mapped(Artwork artwork, Rgb backdrop) {
        number(PaintStack.BARE);
        Coordinate[] corners = corners(frame);
        Polygonizer polygonizer = node(artwork, corners);
        for (Object each : polygonizer.getPolygons()) {
            Polygon face = (Polygon) each;
            Coordinate inside = InteriorPointArea.getInteriorPoint(face);
            if (SimplePointInAreaLocator.locate(inside, face) != Location.INTERIOR) {
                throw new IllegalStateException("no point found inside " + face);
            }
            if (inside.x > corners[0].x
                    && inside.x < corners[2].x
                    && inside.y > corners[0].y
                    && inside.y < corners[2].y) {
                label(face, number(ReferencePaints.of(shapesAt(inside, artwork), backdrop)));
            }
        }
        return new PlanarMap(table(), new Segments(), frame, stacks, List.of(), List.of(), 1);
    }

    private static Coordinate[] corners(Frame frame) {
        int left = Grid.steps(frame.x());
        int top = Grid.steps(frame.y());
        int right = Grid.steps(frame.right());
        int bottom = Grid.steps(frame.bottom());
        return new Coordinate[] {
            new Coordinate(left, top),
            new Coordinate(right, top),
            new Coordinate(right, bottom),
            new Coordinate(left, bottom),
            new Coordinate(left, top)
        };
    }

    private Polygonizer node(Artwork artwork, Coordinate[] corners) {
        List<NodedSegmentString> strings = new ArrayList<>();
        strings.add(new NodedSegmentString(corners, null));
        for (FlatShape shape : artwork.shapes()) {
            add(shape.area(), strings);
            shape.clips().forEach(clip -> clip.parts().forEach(part -> add(part, strings)));
        }
        Polygonizer polygonizer = new Polygonizer();
        for (SegmentString string : PlainOutlines.noded(strings)) {
            if (string.getData() != null) {
                outlines.get((Area) string.getData()).add(string);
            }
            Coordinate[] c = string.getCoordinates();
            for (int i = 1; i < c.length; i++) {
                if (edges.put(key(c[i - 1], c[i]), new int[] {EdgeTable.OUTSIDE, EdgeTable.OUTSIDE}) == null) {
                    LineString line = JtsShapes.FACTORY.createLineString(new Coordinate[] {c[i - 1], c[i]});
                    polygonizer.add(line);
                }
            }
        }
        return polygonizer;
    }

    private void add(Area area, List<NodedSegmentString> strings) {
        if (outlines.put(area, new ArrayList<>()) == null) {
            strings.addAll(PlainOutlines.segments(area, frame, flatnessMm));
        }
    }

    private List<FlatShape> shapesAt(Coordinate point, Artwork artwork) {
        IdentityHashMap<Area, Boolean> known = new IdentityHashMap<>();
        return artwork.shapes().stream()
                .filter(shape -> holds(shape.area(), point, known)
                        && shape.clips().stream().allMatch(clip -> lets(clip, point, known)))
                .toList();
    }

    private boolean lets(Clip clip, Coordinate point, IdentityHashMap<Area, Boolean> known) {
        return clip.parts().stream().anyMatch(part -> holds(part, point, known));
    }

    private boolean holds(Area area, Coordinate point, IdentityHashMap<Area, Boolean> known) {
        return known.computeIfAbsent(area, a -> PlainOutlines.encloses(outlines.get(a), a.rule(), point));
    }

    private int number(PaintStack stack) {
        return stackNumbers.computeIfAbsent(stack, added -> {
            stacks.add(added);
            return stacks.size() - 1;
        });
    }

    private void label(Polygon face, int stack) {
        label(face.getExteriorRing().getCoordinates(), stack, true);
        for (int i = 0; i < face.getNumInteriorRing(); i++) {
            label(face.getInteriorRingN(i).getCoordinates(), stack, false);
        }
    }

    private void label(Coordinate[] ring, int stack, boolean shell) {
        boolean faceOnLeft = Orientation.isCCW(ring) == shell;
        for (int i = 1; i < ring.length; i++) {
            boolean forward = vertex(ring[i - 1]) < vertex(ring[i]);
            edges.get(key(ring[i - 1], ring[i]))[forward == faceOnLeft ? 0 : 1] = stack;
        }
    }

    private long key(Coordinate a, Coordinate b) {
        int from = vertex(a);
        int to = vertex(b);
        return (long) Math.min(from, to) << 32 | Math.max(from, to);
    }

    private int vertex(Coordinate place) {
        return vertices.computeIfAbsent(new Coordinate(place.x, place.y), added -> vertices.size());
    }

    private EdgeTable table() {
        List<Map.Entry<Long, int[]>> kept = edges.entrySet().stream()
                .filter(edge -> edge.getValue()[0] != edge.getValue()[1])
                .toList();
        return new EdgeTable(
                vertices.keySet().stream().mapToInt(place -> (int) place.x).toArray(),
                vertices.keySet().stream().mapToInt(place -> (int) place.y).toArray(),
                kept.stream().mapToInt(edge -> (int) (edge.getKey() >> 32)).toArray(),
                kept.stream().mapToInt(edge -> edge.getKey().intValue()).toArray(),
                kept.stream().mapToInt(edge -> edge.getValue()[0]).toArray(),
                kept.stream().mapToInt(edge -> edge.getValue()[1]).toArray(),
                new int[kept.size()]);
    }
}
