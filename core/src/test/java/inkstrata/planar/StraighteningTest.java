package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StraighteningTest {
    /** Larger maps are not tried pair by pair. */
    private static final int MOST_EDGES = 1_500;

    @Test
    void aBendThatRoundingLeftGoes() {
        assertThat(vertices(straightened("0,0 50,1 100,1", "0,0 100,40 100,1")))
                .containsExactlyInAnyOrder("0,0", "100,40", "100,1");
    }

    @Test
    void aBendOfMoreThanAStepStays() {
        assertThat(vertices(straightened("0,0 50,2 100,1", "0,0 100,40 100,1")))
                .containsExactlyInAnyOrder("0,0", "50,2", "100,40", "100,1");
    }

    @Test
    void aBendStaysWhereAnotherVertexLiesBetweenItAndTheChord() {
        String bent = "0,0 30,1 60,2 100,2";
        String above = "0,0 100,40 100,2";
        assertThat(vertices(straightened(bent, above, "40,0 40,-9 44,-9 40,0")))
                .contains("100,2")
                .doesNotContain("30,1", "60,2");
        assertThat(vertices(straightened(bent, above, "40,1 40,-9 44,-9 40,1")))
                .contains("60,2")
                .doesNotContain("30,1");
    }

    @Test
    void twoWaysThatWouldFallIntoOneBothKeepTheirBends() {
        assertThat(vertices(straightened("0,0 50,1 100,0", "0,0 50,0 100,0", "0,0 100,40 100,0")))
                .containsExactlyInAnyOrder("0,0", "50,1", "100,0", "100,40");
        assertThat(vertices(straightened("0,0 50,1 100,1", "0,0 50,0 100,1", "0,0 100,40 100,1")))
                .containsExactlyInAnyOrder("0,0", "50,1", "100,1", "50,0", "100,40");
    }

    @Test
    void aWayIsNotJoinedToAnEdgeThatIsThere() {
        assertThat(vertices(straightened("0,0 50,1 100,1", "0,0 100,1", "0,0 100,40 100,1")))
                .contains("50,1");
    }

    @Test
    void verticesOnAStraightLineGoWhateverTheyCameFrom() {
        EdgeTable box = table(
                new int[] {-1, -1, -1, -1}, "0,0 30,0 60,0 100,0", "100,0 100,100", "100,100 0,100", "0,100 0,50 0,0");
        assertThat(vertices(MapChecks.straightened(box, new Segments())))
                .containsExactly("0,0", "100,0", "100,100", "0,100");
    }

    @Test
    void aCurveKeepsItsOwnVertices() {
        Segments curve = new Segments();
        curve.add(0, 0, 10, 10, 0, 1, 0, 0.5);
        curve.add(10, 10, 20, 20, 0, 1, 0.5, 1);
        curve.add(20, 20, 0, 20, 0, 2, 0, 1);
        curve.add(0, 20, 0, 0, 0, 3, 0, 1);
        EdgeTable outline = table(new int[] {0, 1, 2, 3}, "0,0 10,10", "10,10 20,20", "20,20 0,20", "0,20 0,0");
        assertThat(vertices(MapChecks.straightened(outline, curve))).contains("10,10");
    }

    @Test
    void tileCutsLeaveNothingBehind() {
        for (long seed = 0; seed < 20; seed++) {
            Artwork artwork = WideDrawings.scattered(seed);
            PlanarMap whole = PlanarMapper.map(artwork, MapSettings.DEFAULT.withTilePieces(1_000_000));
            for (int pieces : new int[] {16, 100, 500}) {
                PlanarMap tiled = PlanarMapper.map(artwork, MapSettings.DEFAULT.withTilePieces(pieces));
                assertThat(tiled.stacks()).isEqualTo(whole.stacks());
                assertThat(tiled.edges().x())
                        .as("vertices of %s, tiles of %d", artwork.name(), pieces)
                        .hasSameSizeAs(whole.edges().x());
                assertThat(farthest(tiled.edges(), whole.edges())).isLessThanOrEqualTo(2);
            }
        }
    }

    @Test
    void hiddenOutlinesLeaveNothingBehind() {
        for (long seed = 0; seed < 20; seed++) {
            MapSettings topOnly = MapSettings.DEFAULT.withDepth(1).withTilePieces(1_000_000);
            PlanarMap plain = PlanarMapper.map(WideDrawings.scattered(seed), topOnly);
            PlanarMap map = PlanarMapper.map(WideDrawings.scatteredOverHidden(seed), topOnly);
            assertThat(map.edges().x())
                    .as("vertices, seed %d", seed)
                    .hasSameSizeAs(plain.edges().x());
            assertThat(farthest(map.edges(), plain.edges())).isLessThanOrEqualTo(2);
        }
    }

    @Test
    void facesAndTheirNeighboursStayAsTheyWere() {
        int removed = 0;
        int small = 0;
        for (long seed = 0; seed < 200; seed++) {
            Artwork artwork = seed % 2 == 0 ? NastyDrawings.opaque(seed) : NastyDrawings.translucent(seed);
            int tile = new int[] {8, 30, 500}[(int) (seed % 3)];
            PlanarMapper.Noded map = MapChecks.noded(artwork, MapSettings.DEFAULT.withTilePieces(tile));
            EdgeTable before = map.edges();
            EdgeTable after = MapChecks.straightened(before, map.segments());
            assertThat(faces(after)).as(artwork.name()).isEqualTo(faces(before));
            if (before.from().length < MOST_EDGES) {
                drift(before, after, artwork.name());
                small++;
            }
            fromSource(after, map.segments(), artwork.name());
            removed += before.x().length - after.x().length;
        }
        assertThat(removed).isGreaterThan(5_000);
        assertThat(small).isGreaterThan(100);
    }

    /** How many cycles of each orientation each stack has: contours and islands. */
    private static Map<String, Integer> faces(EdgeTable t) {
        HalfEdges halves = new HalfEdges(t.x(), t.y(), t.from(), t.to());
        Map<String, Integer> faces = new HashMap<>();
        for (int cycle = 0; cycle < halves.cycleCount(); cycle++) {
            int half = halves.firstHalf(cycle);
            int stack = (half & 1) == 0 ? t.left()[half >> 1] : t.right()[half >> 1];
            faces.merge(stack + (halves.doubledArea(cycle) > 0 ? " inside" : " outside"), 1, Integer::sum);
        }
        return faces;
    }

    /** Every vertex taken out lies within a step of an edge between the same two stacks. */
    private static void drift(EdgeTable before, EdgeTable after, String name) {
        Map<String, Set<String>> beside = beside(after);
        Set<String> kept = new HashSet<>(vertices(after));
        Map<String, Set<String>> was = beside(before);
        Map<String, List<double[]>> lines = new HashMap<>();
        for (int e = 0; e < after.from().length; e++) {
            lines.computeIfAbsent(pair(after, e), p -> new ArrayList<>()).add(new double[] {
                after.x()[after.from()[e]],
                after.y()[after.from()[e]],
                after.x()[after.to()[e]],
                after.y()[after.to()[e]]
            });
        }
        assertThat(was.keySet()).containsAll(beside.keySet());
        was.forEach((vertex, pairs) -> {
            if (!kept.contains(vertex)) {
                assertThat(pairs).as("%s: %s", name, vertex).hasSize(1);
                String[] xy = vertex.split(",", -1);
                double x = Integer.parseInt(xy[0]);
                double y = Integer.parseInt(xy[1]);
                double nearest = lines.get(pairs.iterator().next()).stream()
                        .mapToDouble(l -> Line2D.ptSegDist(l[0], l[1], l[2], l[3], x, y))
                        .min()
                        .orElseThrow();
                assertThat(nearest).as("%s: %s", name, vertex).isLessThanOrEqualTo(1);
            }
        });
    }

    private static Map<String, Set<String>> beside(EdgeTable t) {
        Map<String, Set<String>> beside = new HashMap<>();
        for (int e = 0; e < t.from().length; e++) {
            for (int v : new int[] {t.from()[e], t.to()[e]}) {
                beside.computeIfAbsent(t.x()[v] + "," + t.y()[v], k -> new HashSet<>())
                        .add(pair(t, e));
            }
        }
        return beside;
    }

    private static String pair(EdgeTable t, int e) {
        return Math.min(t.left()[e], t.right()[e]) + "|" + Math.max(t.left()[e], t.right()[e]);
    }

    /** Cutting at tile lines and snapping bend a segment by at most half a step each, the latter in x and y: sqrt(5) / 2 together. */
    private static void fromSource(EdgeTable t, Segments segments, String name) {
        for (int e = 0; e < t.from().length; e++) {
            int s = t.source()[e];
            if (s < 0) {
                continue;
            }
            for (int v : new int[] {t.from()[e], t.to()[e]}) {
                double distance = Line2D.ptSegDist(
                        segments.x0(s), segments.y0(s), segments.x1(s), segments.y1(s), t.x()[v], t.y()[v]);
                if (distance > Math.sqrt(5) / 2) {
                    throw new AssertionError(
                            name + ": " + t.x()[v] + "," + t.y()[v] + " is " + distance + " from its segment");
                }
            }
        }
    }

    /** The farthest of one map's vertices from the other's edges, in steps. */
    private static double farthest(EdgeTable one, EdgeTable other) {
        double farthest = 0;
        for (int v = 0; v < one.x().length; v++) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int e = 0; e < other.from().length; e++) {
                int a = other.from()[e];
                int b = other.to()[e];
                nearest = Math.min(
                        nearest,
                        Line2D.ptSegDist(
                                other.x()[a], other.y()[a], other.x()[b], other.y()[b], one.x()[v], one.y()[v]));
            }
            farthest = Math.max(farthest, nearest);
        }
        return farthest;
    }

    private static List<String> vertices(EdgeTable t) {
        List<String> vertices = new ArrayList<>();
        for (int v = 0; v < t.x().length; v++) {
            vertices.add(t.x()[v] + "," + t.y()[v]);
        }
        return vertices;
    }

    /** Each way follows a segment of its own. */
    private static EdgeTable straightened(String... ways) {
        Segments segments = new Segments();
        int[] source = new int[ways.length];
        for (int w = 0; w < ways.length; w++) {
            int[] xy = Arrays.stream(ways[w].split("[, ]", -1))
                    .mapToInt(Integer::parseInt)
                    .toArray();
            source[w] = w;
            segments.add(xy[0], xy[1], xy[xy.length - 2], xy[xy.length - 1], w, 1, 0, 1);
        }
        return MapChecks.straightened(table(source, ways), segments);
    }

    /** Way w has the stack 2w on the left and 2w + 1 on the right, so ways are chains of their own. */
    private static EdgeTable table(int[] source, String... ways) {
        PointTable points = new PointTable(16);
        Ints from = new Ints(16);
        Ints to = new Ints(16);
        Ints left = new Ints(16);
        Ints right = new Ints(16);
        Ints sources = new Ints(16);
        for (int w = 0; w < ways.length; w++) {
            int before = -1;
            for (String place : ways[w].split(" ", -1)) {
                String[] xy = place.split(",", -1);
                int vertex = points.number(Integer.parseInt(xy[0]), Integer.parseInt(xy[1]));
                if (before >= 0) {
                    from.add(before);
                    to.add(vertex);
                    left.add(2 * w);
                    right.add(2 * w + 1);
                    sources.add(source[w]);
                }
                before = vertex;
            }
        }
        return new EdgeTable(
                points.xs(),
                points.ys(),
                from.toArray(),
                to.toArray(),
                left.toArray(),
                right.toArray(),
                sources.toArray());
    }
}
