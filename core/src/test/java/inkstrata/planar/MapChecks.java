package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import java.awt.geom.Line2D;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;

/** What must hold for every map, checked by means that share nothing with how maps are made but the flattening. */
final class MapChecks {
    private MapChecks() {}

    /** No edge crosses, overlaps or passes through a vertex; all pairs are tried. */
    static void edgesMeetOnlyAtVertices(PlanarMap map, String name) {
        EdgeTable t = map.edges();
        int n = t.from().length;
        Set<Long> places = new HashSet<>();
        for (int v = 0; v < t.x().length; v++) {
            assertThat(places.add((long) t.x()[v] << 32 | (t.y()[v] & 0xffffffffL)))
                    .as("%s: vertex %d is there twice", name, v)
                    .isTrue();
        }
        for (int e = 0; e < n; e++) {
            for (int f = e + 1; f < n; f++) {
                if (meetBadly(t, e, f)) {
                    throw new AssertionError(name + ": edges " + text(t, e) + " and " + text(t, f) + " meet");
                }
            }
        }
    }

    private static String text(EdgeTable t, int e) {
        return "(" + t.x()[t.from()[e]] + "," + t.y()[t.from()[e]] + ")-(" + t.x()[t.to()[e]] + "," + t.y()[t.to()[e]]
                + ")";
    }

    private static boolean meetBadly(EdgeTable t, int e, int f) {
        int a = t.from()[e];
        int b = t.to()[e];
        int c = t.from()[f];
        int d = t.to()[f];
        if ((a == c && b == d) || (a == d && b == c)) {
            return true;
        }
        return inside(t, a, c, d)
                || inside(t, b, c, d)
                || inside(t, c, a, b)
                || inside(t, d, a, b)
                || (side(t, a, b, c) * side(t, a, b, d) < 0 && side(t, c, d, a) * side(t, c, d, b) < 0);
    }

    /** Whether vertex v lies on the edge from a to b but is not one of its ends. */
    private static boolean inside(EdgeTable t, int v, int a, int b) {
        return v != a
                && v != b
                && side(t, a, b, v) == 0
                && between(t.x()[a], t.x()[v], t.x()[b])
                && between(t.y()[a], t.y()[v], t.y()[b]);
    }

    private static boolean between(int a, int v, int b) {
        return Math.min(a, b) <= v && v <= Math.max(a, b);
    }

    private static int side(EdgeTable t, int a, int b, int p) {
        return Long.signum(((long) t.x()[b] - t.x()[a]) * ((long) t.y()[p] - t.y()[a])
                - ((long) t.y()[b] - t.y()[a]) * ((long) t.x()[p] - t.x()[a]));
    }

    /** Going around a vertex, each edge's far side is the next edge's near side. */
    static void stacksAgreeAroundVertices(PlanarMap map, String name) {
        EdgeTable t = map.edges();
        int n = t.from().length;
        int[] from = t.from();
        int[] to = t.to();
        HalfEdges halves = new HalfEdges(t.x(), t.y(), from, to);
        for (int h = 0; h < 2 * n; h++) {
            int here = leftOf(t, h);
            int next = leftOf(t, halves.next(h));
            assertThat(here == next)
                    .as(
                            "%s: stack %d turns into %d at %d,%d",
                            name,
                            here,
                            next,
                            t.x()[halves.origin(halves.next(h))],
                            t.y()[halves.origin(halves.next(h))])
                    .isTrue();
        }
    }

    private static int leftOf(EdgeTable t, int half) {
        return (half & 1) == 0 ? t.left()[half >> 1] : t.right()[half >> 1];
    }

    /** At random points that no outline comes near, the map's stack is what plain winding counts on the input give. */
    static int stacksEqualWindingCounts(
            Artwork artwork, PlanarMap map, MapSettings settings, Random random, int points) {
        Box frame = Box.of(artwork.frame());
        PlainStacks plain = new PlainStacks(artwork, settings);
        int tried = 0;
        for (int i = 0; i < points; i++) {
            double x = frame.left() + random.nextDouble() * frame.width();
            double y = frame.low() + random.nextDouble() * frame.height();
            // A snapped outline lies within a unit of where it was, on each tile anew.
            if (plain.isNearAnOutline(x, y, 2)) {
                continue;
            }
            tried++;
            List<Paint> found = map.stacks().get(stackAt(map, x, y)).paints();
            assertThat(found).as("%s at %f, %f", artwork.name(), x, y).isEqualTo(plain.at(x, y));
        }
        return tried;
    }

    /** The flattened outlines, numbered as the mapper does it. */
    static Segments segments(Artwork artwork, MapSettings settings) {
        try (Crew crew = new Crew(1)) {
            return Flattened.of(Drawing.of(artwork), settings.flatnessMm(), Box.of(artwork.frame()), crew)
                    .segments();
        }
    }

    /** The map with all vertices that came up on the way. */
    static PlanarMapper.Noded noded(Artwork artwork, MapSettings settings) {
        try (Crew crew = new Crew(settings.threads())) {
            return PlanarMapper.noded(artwork, settings, UnaryOperator.identity(), crew);
        }
    }

    /** Without the vertices that need not be. */
    static EdgeTable straightened(EdgeTable table, Segments segments) {
        try (Crew crew = new Crew(2)) {
            return Straightening.of(table, segments, crew);
        }
    }

    /** All pieces within the frame. */
    static Tile cropped(Drawing drawing, Segments segments, Box frame) {
        try (Crew crew = new Crew(2)) {
            return Cropping.toFrame(drawing, segments, frame, crew);
        }
    }

    /** Every edge inside the frame names a segment that runs beside it: rounding and tile cuts move it by less than 1.5 steps. */
    static void sourcesRunBesideTheirEdges(EdgeTable t, Segments segments, String name) {
        for (int e = 0; e < t.from().length; e++) {
            boolean onFrame = t.left()[e] == EdgeTable.OUTSIDE || t.right()[e] == EdgeTable.OUTSIDE;
            int s = t.source()[e];
            assertThat(s >= 0).as("%s: source of edge %s", name, text(t, e)).isEqualTo(!onFrame);
            if (s >= 0) {
                for (int v : new int[] {t.from()[e], t.to()[e]}) {
                    double away = Line2D.ptSegDist(
                            segments.x0(s), segments.y0(s), segments.x1(s), segments.y1(s), t.x()[v], t.y()[v]);
                    assertThat(away)
                            .as("%s: segment %d, source of edge %s", name, s, text(t, e))
                            .isLessThan(1.5);
                }
            }
        }
    }

    /** The stack on the near side of the nearest edge to the left; the bare one where there is none. */
    static int stackAt(PlanarMap map, double x, double y) {
        EdgeTable t = map.edges();
        double nearest = Double.NEGATIVE_INFINITY;
        int stack = 0;
        for (int e = 0; e < t.from().length; e++) {
            int ax = t.x()[t.from()[e]];
            int ay = t.y()[t.from()[e]];
            int bx = t.x()[t.to()[e]];
            int by = t.y()[t.to()[e]];
            if ((ay <= y) == (by <= y)) {
                continue;
            }
            double at = ax + (y - ay) / (by - ay) * (bx - ax);
            if (at < x && at > nearest) {
                nearest = at;
                stack = by > ay ? t.right()[e] : t.left()[e];
            }
        }
        return Math.max(0, stack);
    }
}
