package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

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
        Drawing drawing = Drawing.of(artwork);
        Box frame = Box.of(artwork.frame());
        Segments segments = new Segments();
        Flattener flattener = new Flattener(segments, settings.flatnessMm(), frame);
        for (int o = 0; o < drawing.areas().size(); o++) {
            flattener.add(drawing.areas().get(o).outline(), o);
        }
        int tried = 0;
        for (int i = 0; i < points; i++) {
            double x = frame.left() + random.nextDouble() * frame.width();
            double y = frame.low() + random.nextDouble() * frame.height();
            if (nearAny(segments, x, y)) {
                continue;
            }
            tried++;
            List<Paint> found = map.stacks().get(stackAt(map, x, y)).paints();
            List<Paint> expected = expected(drawing, segments, settings, x, y);
            assertThat(found).as("%s at %f, %f", artwork.name(), x, y).isEqualTo(expected);
        }
        return tried;
    }

    /** A snapped outline lies within a unit of where it was, on each tile anew. */
    private static boolean nearAny(Segments s, double x, double y) {
        for (int i = 0; i < s.size(); i++) {
            if (java.awt.geom.Line2D.ptSegDist(s.x0(i), s.y0(i), s.x1(i), s.y1(i), x, y) < 2) {
                return true;
            }
        }
        return false;
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

    private static List<Paint> expected(Drawing drawing, Segments s, MapSettings settings, double x, double y) {
        int[] winding = new int[drawing.areas().size()];
        for (int i = 0; i < s.size(); i++) {
            if ((s.y0(i) <= y) != (s.y1(i) <= y)) {
                double at = s.x0(i) + (y - s.y0(i)) / ((double) s.y1(i) - s.y0(i)) * ((double) s.x1(i) - s.x0(i));
                if (at > x) {
                    winding[s.outline(i)] += s.y1(i) > s.y0(i) ? 1 : -1;
                }
            }
        }
        int[] all = new int[drawing.shapes().size()];
        Arrays.setAll(all, i -> i);
        long[] covers = new long[(all.length + 63) / 64];
        for (int i = 0; i < all.length; i++) {
            boolean in = isInside(drawing, winding, drawing.ownOutline()[i]);
            int[][] clips = drawing.clips()[i];
            for (int c = 0; clips != null && c < clips.length; c++) {
                boolean any = false;
                for (int part : clips[c]) {
                    any |= isInside(drawing, winding, part);
                }
                in &= any;
            }
            if (in) {
                covers[i >> 6] |= 1L << (i & 63);
            }
        }
        int[] colours =
                Stacker.of(drawing, new Paints(drawing.shapes()), settings).stack(all, covers);
        return Arrays.stream(colours)
                .mapToObj(colour -> new Paint(inkstrata.colour.Rgb.of(colour)))
                .toList();
    }

    private static boolean isInside(Drawing drawing, int[] winding, int outline) {
        return drawing.areas().get(outline).rule().inside(winding[outline]);
    }
}
