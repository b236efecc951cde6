package inkstrata.planar;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Edges beside which curves would not be told apart once they are mapped again: where something is thinner than curves and their chords
 * may be off, chains come to touch, change places around a vertex, turn inside out or become nothing.
 *
 * <p>Where nothing of the kind happens, the map of the curves has the very faces that the net has: its chains meet only at their
 * ends, in the same order around each, which determines the faces of a drawing in the plane.
 */
final class Clashes {
    /** How far a chord may lie from its edges, in grid steps: the curve's distance from those, and the chord's from it. */
    private static final double REACH = 40;

    private final BorderNet net;
    private final List<GridChain> read;
    private final BitSet edges = new BitSet();
    private final List<int[]> passed = new ArrayList<>();

    private Clashes(BorderNet net, List<GridChain> read) {
        this.net = net;
        this.read = read;
    }

    /**
     * Finds them.
     *
     * @param owners for each chain the regions that it bounds: chains of none in common may touch
     * @param pieces for each chain what it is drawn with
     */
    static Clashes of(BorderNet net, List<BitSet> owners, List<List<Bezier>> pieces, Box frame) {
        Clashes clashes = new Clashes(net, Rereading.of(pieces, frame));
        clashes.addLost();
        clashes.addReordered();
        Touches.find(net, clashes.read, owners, (one, i, other, j, at) -> {
            clashes.addNear(one, at);
            clashes.addNear(other, at);
            clashes.addPassed(one, i, at);
            clashes.addPassed(other, j, at);
        });
        return clashes;
    }

    /** The numbers of such edges. */
    BitSet edges() {
        return edges;
    }

    /** Chords and points that they touch between their ends: x and y of one end, of the other and of the point. */
    List<int[]> passed() {
        return passed;
    }

    /** Chains that are nothing, and closed ones that run the other way around. */
    private void addLost() {
        for (int chain = 0; chain < read.size(); chain++) {
            boolean isTurned = net.isClosed(chain)
                    && Long.signum(read.get(chain).doubledArea())
                            != Long.signum(GridChain.of(net, chain).doubledArea());
            if (read.get(chain).isNothing() || isTurned) {
                net.edgesOf(chain).forEach(edges::set);
            }
        }
    }

    private void addReordered() {
        HalfEdges before = ends(false);
        HalfEdges now = ends(true);
        for (int half = 0; half < before.size(); half++) {
            if (before.next(half) != now.next(half)) {
                int vertex = before.origin(before.next(half));
                for (int i = 0; i < net.degree(vertex); i++) {
                    edges.set(net.edge(vertex, net.neighbour(vertex, i)));
                }
            }
        }
    }

    /** The first and the last edge of each chain that is something, and one between them. */
    private HalfEdges ends(boolean isReread) {
        int inner = net.vertexCount();
        int[] x = new int[inner + 2 * read.size()];
        int[] y = new int[x.length];
        Ints from = new Ints(3 * read.size());
        Ints to = new Ints(3 * read.size());
        for (int chain = 0; chain < read.size(); chain++) {
            if (read.get(chain).isNothing()) {
                continue;
            }
            GridChain points = isReread ? read.get(chain) : GridChain.of(net, chain);
            int[] vertices = net.chain(chain);
            int[] way = {vertices[0], inner, inner + 1, vertices[vertices.length - 1]};
            int[] at = {0, 1, points.last() - 1, points.last()};
            for (int i = 0; i < way.length; i++) {
                x[way[i]] = points.x()[at[i]];
                y[way[i]] = points.y()[at[i]];
                if (i > 0) {
                    from.add(way[i - 1]);
                    to.add(way[i]);
                }
            }
            inner += 2;
        }
        return new HalfEdges(x, y, from.toArray(), to.toArray());
    }

    private void addNear(int chain, Coordinate at) {
        int[] v = net.chain(chain);
        for (int i = 0; i + 1 < v.length; i++) {
            double away = Polyline.distance(at.x, at.y, net.x(v[i]), net.y(v[i]), net.x(v[i + 1]), net.y(v[i + 1]));
            if (away <= REACH) {
                edges.set(net.edge(v[i], v[i + 1]));
            }
        }
    }

    private void addPassed(int chain, int i, Coordinate at) {
        int[] x = read.get(chain).x();
        int[] y = read.get(chain).y();
        int px = (int) Math.rint(at.x);
        int py = (int) Math.rint(at.y);
        boolean isEnd = (x[i] == px && y[i] == py) || (x[i + 1] == px && y[i + 1] == py);
        if (!isEnd) {
            passed.add(new int[] {x[i], y[i], x[i + 1], y[i + 1], px, py});
        }
    }
}
