package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/**
 * Films really moved and laid over each other, by JTS alone.
 *
 * <p>Sheet shows between inks at q if no moved film covers q though every film, moved back, has picture there; unless the sheet is
 * there anyway: if, somewhere between the places that lie at q now, there was sheet or what counts as such.
 */
final class MovedFilms {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Vertices of overlays go to sixteenths of a grid step: that is what never fails. */
    private static final PrecisionModel PRECISION = new PrecisionModel(16);

    /** Polygons around discs reach that much farther, in grid steps. */
    private static final double FACETS = 0.1;

    private final List<Geometry> films;
    private final Geometry picture;
    private final STRtree sheet = new STRtree();

    MovedFilms(Separation separation, double forgivenMm) {
        films = separation.printed().stream().map(MovedFilms::geometry).toList();
        Region inked = Check.picture(separation);
        picture = geometry(inked);
        for (Region.Polygon polygon : inked.polygons()) {
            addShore(polygon.shell());
            polygon.holes().forEach(this::addShore);
        }
        FilmMap map =
                FilmMap.of(separation.printed(), inked, separation.artwork().frame());
        for (Spot crossing : Crossings.of(map)) {
            addSheet(disc(crossing, forgivenMm * Grid.STEPS_PER_MM));
        }
        sheet.build();
    }

    int count() {
        return films.size();
    }

    Geometry moved(int film, Spot offset) {
        return moved(films.get(film), offset);
    }

    /**
     * Where sheet shows between inks.
     *
     * @param offsets of each film, in grid steps
     * @param width of gaps that don't count, likewise
     */
    Geometry gaps(List<Spot> offsets, double width) {
        Geometry inked = picture;
        Geometry printed = FACTORY.createPolygon();
        for (int film = 0; film < films.size(); film++) {
            Spot offset = offsets.get(film);
            Geometry moved = moved(picture, offset);
            inked = film == 0 ? moved : overlay(inked, moved, OverlayNG.INTERSECTION);
            printed = overlay(printed, moved(film, offset), OverlayNG.UNION);
        }
        Geometry bare = overlay(inked, printed, OverlayNG.DIFFERENCE);
        // A shrunk needle now and then comes out turned over: what lies outside is dropped.
        Geometry wide = overlay(bare, bare.buffer(-width / 2), OverlayNG.INTERSECTION);
        List<Geometry> left = new ArrayList<>();
        for (int i = 0; i < wide.getNumGeometries(); i++) {
            Geometry part = wide.getGeometryN(i);
            left.add(overlay(part, forgiven(part, offsets), OverlayNG.DIFFERENCE));
        }
        left.removeIf(Geometry::isEmpty);
        return polygons(FACTORY.buildGeometry(left));
    }

    private static Geometry overlay(Geometry one, Geometry other, int operation) {
        return polygons(OverlayNG.overlay(one, other, operation, PRECISION));
    }

    /** Without points and lines where things touch. */
    private static Geometry polygons(Geometry geometry) {
        return FACTORY.createMultiPolygon(GeometryFactory.toPolygonArray(PolygonExtracter.getPolygons(geometry)));
    }

    /** The sheet, moved by everything between the offsets. */
    private Geometry forgiven(Geometry part, List<Spot> offsets) {
        double farthest = 0;
        for (Spot offset : offsets) {
            farthest = Math.max(farthest, offset.distanceTo(new Spot(0, 0)));
        }
        Envelope around = part.getEnvelopeInternal();
        around.expandBy(farthest);
        List<Geometry> all = new ArrayList<>();
        for (Object found : sheet.query(around)) {
            Coordinate[] corners = ((Geometry) found).getCoordinates();
            Coordinate[] moved = offsets.stream()
                    .flatMap(offset -> Arrays.stream(corners)
                            .map(corner -> new Coordinate(corner.x + offset.x(), corner.y + offset.y())))
                    .toArray(Coordinate[]::new);
            all.add(FACTORY.createMultiPointFromCoords(moved).convexHull());
        }
        Geometry union = CascadedPolygonUnion.union(all);
        return union == null ? FACTORY.createPolygon() : union;
    }

    private void addShore(Ring ring) {
        for (int i = 0; i < ring.size(); i++) {
            int j = (i + 1) % ring.size();
            Geometry one = disc(new Spot(ring.x(i), ring.y(i)), Shore.SEAM);
            Geometry other = disc(new Spot(ring.x(j), ring.y(j)), Shore.SEAM);
            addSheet(FACTORY.createGeometryCollection(new Geometry[] {one, other})
                    .convexHull());
        }
    }

    private void addSheet(Geometry convex) {
        sheet.insert(convex.getEnvelopeInternal(), convex);
    }

    /** A regular polygon around it. */
    private static Geometry disc(Spot centre, double radius) {
        int sides = (int) Math.ceil(Math.PI / Math.acos(radius / (radius + FACETS)));
        double far = radius / Math.cos(Math.PI / sides);
        Coordinate[] corners = new Coordinate[sides + 1];
        for (int i = 0; i <= sides; i++) {
            double angle = 2 * Math.PI * (i % sides) / sides;
            corners[i] = new Coordinate(centre.x() + far * Math.cos(angle), centre.y() + far * Math.sin(angle));
        }
        return FACTORY.createPolygon(corners);
    }

    private static Geometry moved(Geometry geometry, Spot offset) {
        return AffineTransformation.translationInstance(offset.x(), offset.y()).transform(geometry);
    }

    private static Geometry geometry(Region region) {
        return FACTORY.createMultiPolygon(
                region.polygons().stream().map(MovedFilms::polygon).toArray(Polygon[]::new));
    }

    private static Polygon polygon(Region.Polygon polygon) {
        return FACTORY.createPolygon(
                ring(polygon.shell()),
                polygon.holes().stream().map(MovedFilms::ring).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            corners[i] = new Coordinate(ring.x(i % ring.size()), ring.y(i % ring.size()));
        }
        return FACTORY.createLinearRing(corners);
    }
}
