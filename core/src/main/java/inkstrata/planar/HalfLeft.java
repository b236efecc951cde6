package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Makes chains narrower where what they spread into is thin, so that at least half of it stays free: a quarter of its width for each of two
 * sides that both lose something, half of it where the far side loses nothing.
 *
 * <p>How wide it is, is measured straight across from each edge, a few times for each width of the spread. Widths come in
 * parts of 32 of the spread's, rounded down; a chain is cut where the width changes, at points on the grid.
 */
final class HalfLeft {
    private static final int LEVELS = 32;

    /** Where an edge is measured: so many times on each piece, which is no longer than half the width. */
    private static final int RAYS = 3;

    /** Shorter pieces are not told apart, in grid steps (10 µm): so work is bounded by the borders' length, however narrow the spread. */
    private static final double SHORTEST_PIECE = 40;

    /** Of what lies straight across this part may be taken from either side, and from one alone. */
    private static final double OF_BOTH = 0.25;

    private static final double OF_ONE = 0.5;

    private final Borderlines lines;
    private final StackKinds kinds;
    private final List<Spread> spreads;
    private final int[] spreadOf;
    private final HPRtree halves = new HPRtree();

    /** @param spreadOf for each half-edge the spread that comes across it to its left, or less than 0 */
    HalfLeft(Borderlines lines, StackKinds kinds, List<Spread> spreads, int[] spreadOf) {
        this.lines = lines;
        this.kinds = kinds;
        this.spreads = spreads;
        this.spreadOf = spreadOf;
        for (int h = 0; h < lines.size(); h++) {
            if (lines.kind(h) != Borderlines.NONE) {
                halves.insert(new Envelope(x(h), x(h ^ 1), y(h), y(h ^ 1)), h);
            }
        }
    }

    /**
     * The chain in one piece, or in pieces of different widths; what gets no width at all is left out.
     *
     * <p>One that is to spread by less than a grid step, or not at all, stays as it is: nothing is drawn along it.
     */
    List<BorderChain> limited(BorderChain chain) {
        if (chain.width() < 1) {
            return List.of(chain);
        }
        Ints xy = new Ints(chain.xy().length);
        Ints levels = new Ints(chain.xy().length / 2);
        for (int e = 0; e < chain.edges(); e++) {
            cut(chain, e, xy, levels);
        }
        xy.add(chain.xy()[2 * chain.edges()]);
        xy.add(chain.xy()[2 * chain.edges() + 1]);
        return pieces(chain, xy.toArray(), levels.toArray());
    }

    /** Adds the start of an edge and the points at which the level changes along it, and the level from each. */
    private void cut(BorderChain chain, int e, Ints xy, Ints levels) {
        int x = chain.xy()[2 * e];
        int y = chain.xy()[2 * e + 1];
        double dx = chain.xy()[2 * e + 2] - x;
        double dy = chain.xy()[2 * e + 3] - y;
        double length = Math.hypot(dx, dy);
        int pieces = (int) Math.max(1, Math.ceil(2 * length / Math.max(chain.width(), 2 * SHORTEST_PIECE)));
        int before = -1;
        for (int piece = 0; piece < pieces; piece++) {
            double least = chain.width();
            for (int ray = 0; ray < RAYS; ray++) {
                double along = (piece + (ray + 0.5) / RAYS) / pieces;
                least = Math.min(least, taken(chain, x + along * dx, y + along * dy, -dy / length, dx / length));
            }
            int level = (int) Math.floor(LEVELS * least / chain.width());
            if (level != before) {
                double along = (double) piece / pieces;
                xy.add(x + (int) Math.rint(along * dx));
                xy.add(y + (int) Math.rint(along * dy));
                levels.add(level);
            }
            before = level;
        }
    }

    /** How much may be taken of what lies straight across from a point on an edge of a chain. */
    private double taken(BorderChain chain, double x, double y, double nx, double ny) {
        double reach = chain.width() / OF_BOTH;
        double[] nearest = {reach, OF_BOTH};
        halves.query(new Envelope(x, x + reach * nx, y, y + reach * ny), found -> {
            int h = (Integer) found;
            if (isFarSide(h, chain.spread())) {
                double across = across(h, x, y, nx, ny);
                if (across < nearest[0]) {
                    nearest[0] = across;
                    nearest[1] = spreadOf[h] >= 0 && spreads.get(spreadOf[h]).leavesHalf() ? OF_BOTH : OF_ONE;
                }
            }
        });
        return nearest[0] * nearest[1];
    }

    private boolean isFarSide(int half, int spread) {
        StackSet into = spreads.get(spread).into();
        return kinds.isIn(into, lines.kind(half)) && !kinds.isIn(into, lines.kind(half ^ 1));
    }

    /** How far it is to where a ray leaves what lies to the left of a half-edge; infinite if it does not leave there. */
    private double across(int half, double x, double y, double nx, double ny) {
        double ex = x(half ^ 1) - x(half);
        double ey = y(half ^ 1) - y(half);
        double leaving = ex * ny - ey * nx;
        double fx = x(half) - x;
        double fy = y(half) - y;
        double along = (nx * fy - ny * fx) / leaving;
        double across = (ex * fy - ey * fx) / leaving;
        return leaving < 0 && along >= 0 && along <= 1 && across >= 0 ? across : Double.POSITIVE_INFINITY;
    }

    private List<BorderChain> pieces(BorderChain chain, int[] xy, int[] levels) {
        int n = levels.length;
        int start = 0;
        if (chain.isClosed()) {
            while (start < n && levels[start] == levels[(start + n - 1) % n]) {
                start++;
            }
            if (start == n) {
                return levels[0] == LEVELS ? List.of(chain) : whole(chain, xy, levels[0]);
            }
        }
        List<BorderChain> pieces = new ArrayList<>();
        // Ends: each turn takes at least one of the n levels.
        for (int first = 0; first < n; ) {
            int level = levels[(start + first) % n];
            int end = first;
            Ints piece = new Ints(16);
            while (end < n && levels[(start + end) % n] == level) {
                add(xy, (start + end) % n, piece);
                end++;
            }
            add(xy, chain.isClosed() ? (start + end) % n : end, piece);
            double width = level * chain.width() / LEVELS;
            if (width >= 1) {
                pieces.add(new BorderChain(
                        chain.spread(),
                        piece.toArray(),
                        false,
                        width,
                        first == 0 && !chain.isClosed()
                                ? chain.startSweep()
                                : sweep(level, levels[(start + first + n - 1) % n]),
                        end == n && !chain.isClosed() ? chain.endSweep() : sweep(level, levels[(start + end) % n]),
                        0));
            }
            first = end;
        }
        return pieces;
    }

    /** Where two widths meet, the narrower one is round. */
    private static double sweep(int level, int beside) {
        return level < beside ? BorderChain.ALL_ROUND : 0;
    }

    private static List<BorderChain> whole(BorderChain chain, int[] xy, int level) {
        double width = level * chain.width() / LEVELS;
        return width < 1 ? List.of() : List.of(new BorderChain(chain.spread(), xy, true, width, 0, 0, 0));
    }

    private static void add(int[] xy, int vertex, Ints to) {
        to.add(xy[2 * vertex]);
        to.add(xy[2 * vertex + 1]);
    }

    private int x(int half) {
        return lines.x(lines.origin(half));
    }

    private int y(int half) {
        return lines.y(lines.origin(half));
    }
}
