package inkstrata.planar;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;

/**
 * Finds where chains that bound one region would be snapped together: where they cross, or one passes a pixel in which another has a
 * point, other than at an end that both have in common. Pairs are found by the monotone chains of JTS.
 */
final class Touches implements SegmentIntersector {
    /** In grid steps: pixels reach half a one to each side. */
    private static final double PIXEL = 1;

    private final BorderNet net;
    private final List<BitSet> owners;
    private final Found found;
    private final LineIntersector lines = new RobustLineIntersector();

    /** Takes what is found: of two chains the chords that begin at such places, and a point at which they touch. */
    interface Found {
        void touch(int one, int i, int other, int j, Coordinate at);
    }

    private Touches(BorderNet net, List<BitSet> owners, Found found) {
        this.net = net;
        this.owners = owners;
        this.found = found;
    }

    /**
     * Finds them all.
     *
     * @param chains for each chain of the net its points
     * @param owners for each the regions that it bounds
     */
    static void find(BorderNet net, List<GridChain> chains, List<BitSet> owners, Found found) {
        List<SegmentString> strings = new ArrayList<>();
        for (int chain = 0; chain < chains.size(); chain++) {
            GridChain points = chains.get(chain);
            Coordinate[] coordinates = new Coordinate[points.last() + 1];
            for (int i = 0; i < coordinates.length; i++) {
                coordinates[i] = new Coordinate(points.x()[i], points.y()[i]);
            }
            if (!points.isNothing()) {
                strings.add(new BasicSegmentString(coordinates, chain));
            }
        }
        new MCIndexNoder(new Touches(net, owners, found), PIXEL).computeNodes(strings);
    }

    @Override
    public void processIntersections(SegmentString one, int i, SegmentString other, int j) {
        int a = chain(one);
        int b = chain(other);
        if ((a == b && i == j) || !owners.get(a).intersects(owners.get(b))) {
            return;
        }
        Coordinate at = touch(one, i, other, j);
        if (at != null) {
            found.touch(a, i, b, j, at);
        }
    }

    @Override
    public boolean isDone() {
        return false;
    }

    private static int chain(SegmentString string) {
        return (Integer) string.getData();
    }

    /** Where two chords touch, or null. */
    private Coordinate touch(SegmentString one, int i, SegmentString other, int j) {
        int common = 0;
        for (int k = i; k <= i + 1; k++) {
            for (int l = j; l <= j + 1; l++) {
                if (isOne(one, k, other, l)) {
                    common++;
                } else if (one.getCoordinate(k).equals2D(other.getCoordinate(l))) {
                    return one.getCoordinate(k);
                }
            }
        }
        if (common > 1) {
            return one.getCoordinate(i);
        }
        for (int k = 0; k < 2; k++) {
            if (passes(one, i, other.getCoordinate(j + k))) {
                return other.getCoordinate(j + k);
            }
            if (passes(other, j, one.getCoordinate(i + k))) {
                return one.getCoordinate(i + k);
            }
        }
        if (common == 0) {
            lines.computeIntersection(
                    one.getCoordinate(i), one.getCoordinate(i + 1), other.getCoordinate(j), other.getCoordinate(j + 1));
            return lines.hasIntersection() ? lines.getIntersection(0) : null;
        }
        return null;
    }

    /** Whether two points are the same place of one chain, or ends at the same vertex. */
    private boolean isOne(SegmentString one, int k, SegmentString other, int l) {
        int vertex = vertex(one, k);
        return (one == other && k == l) || (vertex >= 0 && vertex == vertex(other, l));
    }

    /** The vertex at an end of a chain, less than 0 between. */
    private int vertex(SegmentString string, int k) {
        int[] vertices = net.chain(chain(string));
        if (k == 0) {
            return vertices[0];
        }
        return k == string.size() - 1 ? vertices[vertices.length - 1] : -1;
    }

    private static boolean passes(SegmentString string, int i, Coordinate p) {
        Coordinate a = string.getCoordinate(i);
        Coordinate b = string.getCoordinate(i + 1);
        return !p.equals2D(a)
                && !p.equals2D(b)
                && Predicates.passes((int) a.x, (int) a.y, (int) b.x, (int) b.y, (int) p.x, (int) p.y);
    }
}
