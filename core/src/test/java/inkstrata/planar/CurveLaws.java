package inkstrata.planar;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** What must hold of regions drawn with curves, measured without the code that draws them. */
public final class CurveLaws {
    /** The most by which the chords that stand for a curve here may leave it. */
    private static final double SAG_MM = 0.00005;

    private final List<Region> regions;
    private final List<List<Outline>> outlines;
    /** Each piece as often as it is drawn, by its control points in the order of their ends. */
    private final Map<String, Integer> drawn = new TreeMap<>();

    private int pieces;

    private CurveLaws(List<Region> regions, List<List<Outline>> outlines) {
        this.regions = regions;
        this.outlines = outlines;
        for (List<Outline> region : outlines) {
            region.forEach(outline -> new Pieces() {
                @Override
                void piece(double... c) {
                    pieces++;
                    drawn.merge(text(c), 1, Integer::sum);
                }
            }.all(outline));
        }
    }

    public static CurveLaws of(List<Region> regions, PlanarMap map, Artwork artwork) {
        return new CurveLaws(regions, CurvedOutlines.of(regions, map, artwork));
    }

    public List<List<Outline>> outlines() {
        return outlines;
    }

    /** How many lines and curves all outlines have together. */
    public int pieces() {
        return pieces;
    }

    /** How many vertices the regions have. */
    public int vertices() {
        return regions.stream()
                .flatMap(region -> region.rings().stream())
                .mapToInt(Ring::size)
                .sum();
    }

    /**
     * How many pieces there must be for those edges that follow the artwork: of each stretch that just the same two regions share, one
     * for each command of the artwork in a row along it. Edges that follow nothing count each.
     */
    public static int needed(List<Region> regions, PlanarMap map) {
        BorderNet net = BorderNet.of(regions);
        EdgeCurves curves = EdgeCurves.of(net, map);
        int[] uses = new int[net.chainCount()];
        for (Region region : regions) {
            for (Ring ring : region.rings()) {
                for (int i = 0; i < ring.size(); i++) {
                    int next = (i + 1) % ring.size();
                    int edge = net.edge(net.vertex(ring.x(i), ring.y(i)), net.vertex(ring.x(next), ring.y(next)));
                    if (net.placeInChain(edge) == 0) {
                        uses[net.chainOf(edge)]++;
                    }
                }
            }
        }
        int needed = 0;
        for (int chain = 0; chain < net.chainCount(); chain++) {
            int[] vertices = net.chain(chain);
            List<String> commands = new ArrayList<>();
            for (int i = 0; i + 1 < vertices.length; i++) {
                String unknown = "edge " + i;
                commands.add(curves.part(vertices[i], vertices[i + 1])
                        .map(part -> part.outline() + " " + part.command())
                        .orElse(unknown));
            }
            boolean isClosed = vertices[0] == vertices[vertices.length - 1];
            int changes = isClosed ? 0 : 1;
            for (int i = isClosed ? 0 : 1; i < commands.size(); i++) {
                String before = commands.get((i + commands.size() - 1) % commands.size());
                changes += before.equals(commands.get(i)) ? 0 : 1;
            }
            needed += uses[chain] * Math.max(1, changes);
        }
        return needed;
    }

    /** Pieces that are drawn more or less than twice though they do not lie along the frame, where regions fill it. */
    public List<String> unshared(PlanarMap map) {
        List<String> wrong = new ArrayList<>();
        drawn.forEach((piece, times) -> {
            String[] numbers = piece.split(" ", -1);
            boolean onFrame = onOneLine(numbers, 0, map.frame().x(), map.frame().right())
                    || onOneLine(numbers, 1, map.frame().y(), map.frame().bottom());
            if (times != (onFrame ? 1 : 2)) {
                wrong.add(times + " times " + piece);
            }
        });
        return wrong;
    }

    private static boolean onOneLine(String[] numbers, int axis, double low, double high) {
        boolean isLow = true;
        boolean isHigh = true;
        for (int i = axis; i < numbers.length; i += 2) {
            double v = Double.parseDouble(numbers[i]);
            isLow &= Math.abs(v - low) < 1e-9;
            isHigh &= Math.abs(v - high) < 1e-9;
        }
        return isLow || isHigh;
    }

    /** The farthest that a point of an outline lies from its region's edges, or a point of an edge from the outline, in millimetres. */
    public double distanceMm() {
        double most = 0;
        for (int r = 0; r < regions.size(); r++) {
            for (int p = 0; p < outlines.get(r).size(); p++) {
                List<double[]> edges = edges(regions.get(r).polygons().get(p));
                List<double[]> curves = chords(outlines.get(r).get(p));
                most = Math.max(most, Math.max(farthest(curves, edges, 1), farthest(edges, curves, 8)));
            }
        }
        return most;
    }

    /**
     * Regions whose area is not that of their outlines, followed by chords a twentieth of a micrometre from them: off by more than two
     * millionths of the picture and a quarter of a grid step along the whole outline. The artwork's points lie beside the grid, and of
     * a curve that is drawn twice, with other points, the map has whichever chords lie outside.
     */
    public List<String> areas(Frame frame) {
        List<String> wrong = new ArrayList<>();
        for (int r = 0; r < regions.size(); r++) {
            Region region = regions.get(r);
            double area = 0;
            for (Outline outline : outlines.get(r)) {
                double twice = 0;
                for (double[] s : chords(outline)) {
                    twice += s[0] * s[3] - s[2] * s[1];
                }
                area += Math.abs(twice) / 2;
            }
            double off = Math.abs(area - region.areaMm2());
            if (!(off <= 2e-6 * frame.width() * frame.height() + region.perimeterMm() * Grid.STEP_MM / 4)) {
                wrong.add(off + " mm2 off");
            }
        }
        return wrong;
    }

    private static double farthest(List<double[]> from, List<double[]> to, int looks) {
        STRtree tree = new STRtree();
        for (double[] s : to) {
            tree.insert(new Envelope(s[0], s[2], s[1], s[3]), s);
        }
        double most = 0;
        for (double[] s : from) {
            for (int i = 0; i < looks; i++) {
                double x = s[0] + (s[2] - s[0]) * i / looks;
                double y = s[1] + (s[3] - s[1]) * i / looks;
                double least = Double.MAX_VALUE;
                for (double reach = 0.02; least > reach; reach *= 4) {
                    for (Object near : tree.query(new Envelope(x - reach, x + reach, y - reach, y + reach))) {
                        double[] o = (double[]) near;
                        least = Math.min(
                                least,
                                org.locationtech.jts.algorithm.Distance.pointToSegment(
                                        new Coordinate(x, y), new Coordinate(o[0], o[1]), new Coordinate(o[2], o[3])));
                    }
                }
                most = Math.max(most, least);
            }
        }
        return most;
    }

    private static List<double[]> edges(Region.Polygon polygon) {
        List<double[]> edges = new ArrayList<>();
        List<Ring> rings = new ArrayList<>(polygon.holes());
        rings.add(polygon.shell());
        for (Ring ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                int next = (i + 1) % ring.size();
                edges.add(new double[] {
                    Grid.millimetres(ring.x(i)),
                    Grid.millimetres(ring.y(i)),
                    Grid.millimetres(ring.x(next)),
                    Grid.millimetres(ring.y(next))
                });
            }
        }
        return edges;
    }

    private static List<double[]> chords(Outline outline) {
        List<double[]> chords = new ArrayList<>();
        new Pieces() {
            @Override
            void piece(double... c) {
                double bend = 0;
                for (int i = 0; i + 5 < c.length; i += 2) {
                    bend = Math.max(
                            bend, Math.hypot(c[i] - 2 * c[i + 2] + c[i + 4], c[i + 1] - 2 * c[i + 3] + c[i + 5]));
                }
                int looks = 1 + (int) Math.ceil(Math.sqrt(bend / SAG_MM));
                double x = c[0];
                double y = c[1];
                for (int i = 1; i <= looks; i++) {
                    double[] p = at(c, i / (double) looks);
                    chords.add(new double[] {x, y, p[0], p[1]});
                    x = p[0];
                    y = p[1];
                }
            }
        }.all(outline);
        return chords;
    }

    /** Hands over the control points of each line and curve. */
    static void forEachPiece(Outline outline, Consumer<double[]> piece) {
        new Pieces() {
            @Override
            void piece(double... c) {
                piece.accept(c);
            }
        }.all(outline);
    }

    private static double[] at(double[] c, double t) {
        double[] p = c.clone();
        for (int n = c.length - 2; n > 0; n -= 2) {
            for (int i = 0; i < n; i++) {
                p[i] += (p[i + 2] - p[i]) * t;
            }
        }
        return p;
    }

    private static String text(double[] c) {
        StringBuilder one = new StringBuilder();
        StringBuilder other = new StringBuilder();
        for (int i = 0; i < c.length; i += 2) {
            one.append(c[i]).append(' ').append(c[i + 1]).append(' ');
            other.append(c[c.length - 2 - i])
                    .append(' ')
                    .append(c[c.length - 1 - i])
                    .append(' ');
        }
        String a = one.toString().strip();
        String b = other.toString().strip();
        return a.compareTo(b) < 0 ? a : b;
    }

    /** Lines and curves with their starts, and the lines that close contours. */
    private abstract static class Pieces implements CurveSink {
        private double startX;
        private double startY;
        private double x;
        private double y;
        private boolean open;

        abstract void piece(double... c);

        void all(Outline outline) {
            outline.sendTo(this);
            close();
        }

        @Override
        public void moveTo(double toX, double toY) {
            close();
            startX = x = toX;
            startY = y = toY;
            open = true;
        }

        void close() {
            if (open && (x != startX || y != startY)) {
                piece(x, y, startX, startY);
            }
        }

        @Override
        public void lineTo(double toX, double toY) {
            piece(x, y, toX, toY);
            x = toX;
            y = toY;
        }

        @Override
        public void quadTo(double x1, double y1, double toX, double toY) {
            piece(x, y, x1, y1, toX, toY);
            x = toX;
            y = toY;
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
            piece(x, y, x1, y1, x2, y2, toX, toY);
            x = toX;
            y = toY;
        }
    }
}
