package inkstrata.samples;

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
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.locationtech.jts.triangulate.VoronoiDiagramBuilder;

/**
 * Drawings as programs trace them, made by JTS: Voronoi cells, and a field of noise in levels, either each over the one below (stacked) or
 * each cut out where the next begins (butted). Every shape is traced by itself: with a tolerance of its own, and rounded.
 */
final class TracedDrawings {
    static final List<String> KINDS = List.of("voronoi", "stacked", "butted");

    private static final Rgb[] COLOURS = {
        new Rgb(250, 220, 120), new Rgb(220, 120, 60), new Rgb(60, 130, 170), new Rgb(30, 40, 60), new Rgb(180, 40, 60)
    };

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double SIDE = 60;
    private static final double EDGE = 6;

    private TracedDrawings() {}

    /**
     * One of them.
     *
     * @param decimals to which coordinates are rounded, in millimetres
     * @param gap left between neighbours, in millimetres; none where they are stacked
     */
    static Artwork of(String kind, int decimals, double gap, long seed) {
        Random random = new Random(seed);
        List<FlatShape> shapes = new ArrayList<>();
        double perMm = Math.pow(10, decimals);
        if (kind.equals("voronoi")) {
            for (Geometry cell : voronoi(random)) {
                add(shapes.size(), shrunk(cell, gap), perMm, shapes);
            }
        } else {
            List<Geometry> levels = levels(random);
            for (int k = 0; k < levels.size(); k++) {
                boolean isButted = kind.equals("butted") && k + 1 < levels.size();
                Geometry level = isButted
                        ? shrunk(OverlayNGRobust.overlay(levels.get(k), levels.get(k + 1), OverlayNG.DIFFERENCE), gap)
                        : levels.get(k);
                add(k, DouglasPeuckerSimplifier.simplify(level, 0.004 + 0.008 * (k % 2)), perMm, shapes);
            }
        }
        return new Artwork(
                kind + " " + decimals + " " + gap + " " + seed, new Frame(0, 0, SIDE, SIDE), shapes, List.of());
    }

    private static Geometry shrunk(Geometry geometry, double gap) {
        if (gap == 0) {
            return geometry;
        }
        BufferParameters square = new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 10);
        return BufferOp.bufferOp(geometry, -gap / 2, square);
    }

    private static List<Geometry> voronoi(Random random) {
        List<Coordinate> sites = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            sites.add(new Coordinate(
                    EDGE + (SIDE - 2 * EDGE) * random.nextDouble(), EDGE + (SIDE - 2 * EDGE) * random.nextDouble()));
        }
        VoronoiDiagramBuilder builder = new VoronoiDiagramBuilder();
        builder.setSites(sites);
        Envelope box = new Envelope(EDGE, SIDE - EDGE, EDGE, SIDE - EDGE);
        builder.setClipEnvelope(box);
        Geometry all = builder.getDiagram(FACTORY);
        Geometry frame = FACTORY.toGeometry(box);
        List<Geometry> cells = new ArrayList<>();
        for (int i = 0; i < all.getNumGeometries(); i++) {
            cells.add(all.getGeometryN(i).intersection(frame));
        }
        return cells;
    }

    /** Where a sum of waves is higher than 0, 1, 2 and 3, each within the one before. */
    private static List<Geometry> levels(Random random) {
        int n = 32;
        double[][] waves = new double[8][];
        for (int i = 0; i < waves.length; i++) {
            double turn = 2 * Math.PI * random.nextDouble();
            double often = 2 * Math.PI / (14 + 16 * random.nextDouble());
            waves[i] = new double[] {often * Math.cos(turn), often * Math.sin(turn), 2 * Math.PI * random.nextDouble()};
        }
        double step = (SIDE - 2 * EDGE) / n;
        double[][] height = new double[n + 1][n + 1];
        for (int row = 0; row <= n; row++) {
            for (int column = 0; column <= n; column++) {
                double sum = 1.2;
                for (double[] wave : waves) {
                    sum += 0.8 * Math.sin(wave[0] * column * step + wave[1] * row * step + wave[2]);
                }
                height[row][column] = sum;
            }
        }
        List<Geometry> levels = new ArrayList<>();
        for (int level = 0; level < 4; level++) {
            List<Geometry> parts = new ArrayList<>();
            for (int row = 0; row < n; row++) {
                for (int column = 0; column < n; column++) {
                    corner(height, row, column, 1, level, step, parts);
                    corner(height, row, column, -1, level, step, parts);
                }
            }
            // Grown and shrunk by 1 µm: unions leave slits between parts that meet.
            Geometry all = shrunk(shrunk(CascadedPolygonUnion.union(parts), -0.002), 0.002);
            levels.add(level == 0 ? all : OverlayNGRobust.overlay(all, levels.get(level - 1), OverlayNG.INTERSECTION));
        }
        return levels;
    }

    /** What of half a cell lies higher than a level: of the triangle on one side of its diagonal. */
    private static void corner(
            double[][] height, int row, int column, int side, int level, double step, List<Geometry> parts) {
        int[][] corners = side > 0
                ? new int[][] {{row, column}, {row, column + 1}, {row + 1, column + 1}}
                : new int[][] {{row, column}, {row + 1, column + 1}, {row + 1, column}};
        List<Coordinate> p = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int[] from = corners[i];
            int[] to = corners[(i + 1) % 3];
            double a = height[from[0]][from[1]] - level;
            double b = height[to[0]][to[1]] - level;
            if (a >= 0) {
                p.add(place(from[0], from[1], step));
            }
            if (a >= 0 != b >= 0) {
                double t = a / (a - b);
                p.add(place(from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1]), step));
            }
        }
        if (p.size() >= 3) {
            p.add(p.get(0));
            Polygon polygon = FACTORY.createPolygon(p.toArray(Coordinate[]::new));
            if (polygon.getArea() > 1e-9) {
                parts.add(polygon);
            }
        }
    }

    private static Coordinate place(double row, double column, double step) {
        return new Coordinate(EDGE + column * step, EDGE + row * step);
    }

    private static void add(int colour, Geometry geometry, double perMm, List<FlatShape> shapes) {
        Outline.Builder outline = Outline.builder();
        boolean any = false;
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                any = true;
                contour(polygon.getExteriorRing(), perMm, outline);
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    contour(polygon.getInteriorRingN(hole), perMm, outline);
                }
            }
        }
        if (any) {
            shapes.add(FlatShape.opaque(
                    new Area(outline.build(), FillRule.EVENODD), COLOURS[colour % COLOURS.length], Source.UNKNOWN));
        }
    }

    private static void contour(LineString ring, double perMm, Outline.Builder outline) {
        for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
            Coordinate at = ring.getCoordinateN(i);
            double x = Math.rint(at.x * perMm) / perMm;
            double y = Math.rint(at.y * perMm) / perMm;
            if (i == 0) {
                outline.moveTo(x, y);
            } else {
                outline.lineTo(x, y);
            }
        }
    }
}
