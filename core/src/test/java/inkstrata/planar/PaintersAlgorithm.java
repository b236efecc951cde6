package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.algorithm.InteriorPointArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** What shows of each colour, the way a painter would say it: each shape less all that lie above it, one overlay at a time. */
final class PaintersAlgorithm {
    private PaintersAlgorithm() {}

    /** For each colour of an artwork without clips and translucency what of it is to be seen. */
    static Map<Integer, Region> visible(Artwork artwork, double flatnessMm) {
        Map<Integer, List<Region>> seen = new TreeMap<>();
        Geometry free = JtsShapes.multiPolygon(frame(artwork));
        for (int i = artwork.shapes().size() - 1; i >= 0; i--) {
            FlatShape shape = artwork.shapes().get(i);
            Geometry covered = covered(shape.area(), artwork.frame(), flatnessMm);
            Region shows = JtsShapes.region(OverlayNG.overlay(free, covered, OverlayNG.INTERSECTION, JtsShapes.GRID));
            free = JtsShapes.multiPolygon(
                    JtsShapes.region(OverlayNG.overlay(free, covered, OverlayNG.DIFFERENCE, JtsShapes.GRID)));
            seen.computeIfAbsent(packed(shape.colour()), colour -> new ArrayList<>())
                    .add(shows);
        }
        Map<Integer, Region> visible = new TreeMap<>();
        seen.forEach((colour, parts) -> visible.put(colour, Region.union(parts)));
        return visible;
    }

    static int packed(Rgb colour) {
        return colour.red() << 16 | colour.green() << 8 | colour.blue();
    }

    private static Region frame(Artwork artwork) {
        return RegionExample.of(RegionExample.polygon(RegionExample.rectangle(
                artwork.frame().x(),
                artwork.frame().y(),
                artwork.frame().width(),
                artwork.frame().height())));
    }

    /** The places an area covers, as valid polygons. */
    private static Geometry covered(Area area, Frame frame, double flatnessMm) {
        List<SegmentString> noded = PlainOutlines.noded(PlainOutlines.segments(area, frame, flatnessMm));
        Polygonizer polygonizer = new Polygonizer();
        noded.stream()
                .flatMap(string -> segments(string).stream())
                .map(ends -> JtsShapes.FACTORY.createLineString(ends))
                .map(line -> line.norm())
                .distinct()
                .forEach(polygonizer::add);
        List<Polygon> inside = new ArrayList<>();
        for (Object each : polygonizer.getPolygons()) {
            Polygon face = (Polygon) each;
            if (PlainOutlines.encloses(noded, area.rule(), InteriorPointArea.getInteriorPoint(face))) {
                inside.add(face);
            }
        }
        return UnaryUnionNG.union(JtsShapes.FACTORY.createMultiPolygon(inside.toArray(Polygon[]::new)), JtsShapes.GRID);
    }

    private static List<Coordinate[]> segments(SegmentString string) {
        List<Coordinate[]> segments = new ArrayList<>();
        Coordinate[] c = string.getCoordinates();
        for (int i = 1; i < c.length; i++) {
            segments.add(new Coordinate[] {c[i - 1], c[i]});
        }
        return segments;
    }
}
