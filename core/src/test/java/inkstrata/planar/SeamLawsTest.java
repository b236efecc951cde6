package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Generated drawings whose shapes miss each other, held against distances to their outlines.
 *
 * <p>At a place between two shapes, with ways of less than a seam in all to both of them in opposite directions, the strip is closed. At a
 * place that is covered nothing changes. At a place that is farther from anything than a seam is wide nothing changes.
 */
class SeamLawsTest {
    private static final double SEAM_MM = 0.05;
    private static final double SEAM = 200;
    private static final int[] DECIMALS = {1, 2, 3};
    private static final double[] GAPS = {0, 0.001, 0.005, 0.02, 0.045, 0.06};

    @Test
    void aFew() {
        long seed = 0;
        int strips = 0;
        for (String kind : SeamDrawings.KINDS) {
            for (double gap : GAPS) {
                strips += hold(kind, DECIMALS[(int) (seed % 3)], gap, seed++, 150);
            }
        }
        assertThat(strips).as("places in strips").isGreaterThan(150);
    }

    @Test
    @Tag("long")
    void many() {
        int first = Integer.getInteger("laws.from", 0);
        int count = Integer.getInteger("laws.drawings", 20);
        int strips = 0;
        for (long seed = first; seed < first + count; seed++) {
            for (String kind : SeamDrawings.KINDS) {
                for (int decimals : DECIMALS) {
                    for (double gap : GAPS) {
                        strips += hold(kind, decimals, gap, seed, 150);
                    }
                }
            }
        }
        assertThat(strips).as("places in strips").isGreaterThan(1000);
    }

    private static int hold(String kind, int decimals, double gap, long seed, int places) {
        Artwork artwork = SeamDrawings.of(kind, decimals, gap, seed);
        String name = artwork.name();
        MapSettings plain = MapSettings.DEFAULT.withDepth(3);
        MapSettings settings = plain.withSeam(SEAM_MM);
        PlanarMap before = PlanarMapper.map(artwork, plain);
        PlanarMap map = PlanarMapper.map(artwork, settings.withThreads(1));
        MapLaws.mapsAreTheSame(map, PlanarMapper.map(artwork, settings.withThreads(3)), name);
        MapLaws.movingArtworkMovesRegions(artwork, map, settings, name);
        MapChecks.edgesMeetOnlyAtVertices(map, name);
        MapChecks.stacksAgreeAroundVertices(map, name);
        Outlines outlines = new Outlines(artwork, plain);
        Random random = new Random(seed);
        EdgeTable edges = before.edges();
        int strips = 0;
        for (int i = 0; i < places; i++) {
            int e = random.nextInt(edges.from().length);
            double t = random.nextDouble();
            double off = i % 3 == 0 ? 150 : 40;
            double x =
                    edges.x()[edges.from()[e]] * (1 - t) + edges.x()[edges.to()[e]] * t + off * random.nextGaussian();
            double y =
                    edges.y()[edges.from()[e]] * (1 - t) + edges.y()[edges.to()[e]] * t + off * random.nextGaussian();
            strips += holdAt(x, y, outlines, before, map, name) ? 1 : 0;
        }
        return strips;
    }

    /** Whether it is a place in a strip. */
    private static boolean holdAt(double x, double y, Outlines outlines, PlanarMap before, PlanarMap map, String name) {
        List<double[]> nearest = outlines.nearest(x, y);
        if (nearest.get(0)[2] < 3) {
            return false;
        }
        List<Paint> drawn = before.stacks().get(MapChecks.stackAt(before, x, y)).paints();
        List<Paint> found = map.stacks().get(MapChecks.stackAt(map, x, y)).paints();
        String where = String.format("%s at %.5f, %.5f mm", name, x / 4000, y / 4000);
        if (!drawn.isEmpty() || nearest.get(0)[2] > 2 * SEAM) {
            assertThat(found).as(where).isEqualTo(drawn);
            return false;
        }
        double[] one = nearest.get(0);
        double[] other = nearest.get(1);
        double apart = Math.hypot(one[0] - other[0], one[1] - other[1]);
        double cosine = ((one[0] - x) * (other[0] - x) + (one[1] - y) * (other[1] - y)) / (one[2] * other[2]);
        if (cosine < -0.97 && apart < SEAM - 3 && outlines.isLong(x, y, one, other, before)) {
            assertThat(found)
                    .as(where + ", " + apart + " steps between two shapes")
                    .isNotEmpty();
            return true;
        }
        return false;
    }

    /** Distances from shapes by their segments alone; each shape is one outline. */
    private static final class Outlines {
        private final List<List<int[]>> all = new ArrayList<>();

        Outlines(Artwork artwork, MapSettings settings) {
            Segments segments = MapChecks.segments(artwork, settings);
            artwork.shapes().forEach(shape -> all.add(new ArrayList<>()));
            for (int s = 0; s < segments.size(); s++) {
                all.get(segments.outline(s))
                        .add(new int[] {segments.x0(s), segments.y0(s), segments.x1(s), segments.y1(s)});
            }
        }

        /** Of the two shapes nearest by, the nearest place, how far it is, and which shape. */
        List<double[]> nearest(double x, double y) {
            return IntStream.range(0, all.size())
                    .mapToObj(shape -> nearest(shape, x, y))
                    .sorted((a, b) -> Double.compare(a[2], b[2]))
                    .limit(2)
                    .toList();
        }

        /**
         * Whether the strip goes on at both sides of a place: it is no point at which shapes touch, no end, and none of the wedges beside places where
         * outlines cross or diverge, unless that is ten times as long as it is wide ({@code core/docs/seams.md}).
         */
        boolean isLong(double x, double y, double[] one, double[] other, PlanarMap before) {
            double dx = (one[1] - other[1]) / Math.hypot(one[0] - other[0], one[1] - other[1]);
            double dy = -(one[0] - other[0]) / Math.hypot(one[0] - other[0], one[1] - other[1]);
            for (double along = -5.5 * SEAM; along <= 5.5 * SEAM; along += SEAM / 4) {
                double toX = x + along * dx;
                double toY = y + along * dy;
                List<double[]> there = nearest(toX, toY);
                double[] a = there.get(0);
                double[] b = there.get(1);
                boolean isCovered = !before.stacks()
                        .get(MapChecks.stackAt(before, (a[0] + b[0]) / 2, (a[1] + b[1]) / 2))
                        .isBare();
                boolean isOfBoth = Math.min(a[3], b[3]) == Math.min(one[3], other[3])
                        && Math.max(a[3], b[3]) == Math.max(one[3], other[3]);
                boolean isBeyondEnd = Math.hypot((a[0] + b[0]) / 2 - toX, (a[1] + b[1]) / 2 - toY) > SEAM;
                if (isCovered || !isOfBoth || isBeyondEnd || Math.hypot(a[0] - b[0], a[1] - b[1]) > SEAM) {
                    return false;
                }
            }
            return true;
        }

        private double[] nearest(int shape, double x, double y) {
            double[] best = {0, 0, Double.MAX_VALUE, shape};
            for (int[] s : all.get(shape)) {
                double dx = s[2] - s[0];
                double dy = s[3] - s[1];
                double t = Math.max(0, Math.min(1, ((x - s[0]) * dx + (y - s[1]) * dy) / (dx * dx + dy * dy)));
                double px = s[0] + t * dx;
                double py = s[1] + t * dy;
                double far = Math.hypot(px - x, py - y);
                if (far < best[2]) {
                    best = new double[] {px, py, far, shape};
                }
            }
            return best;
        }
    }
}
