package inkstrata.planar;

import java.util.List;
import java.util.concurrent.ForkJoinTask;

/**
 * Takes out vertices that only hidden outlines and tile cuts left behind, and those on straight lines.
 *
 * <p>Along a chain, successive edges of one source segment are joined to one edge, the chord, wherever that is safe; where
 * not, at the vertex farthest from the chord they become two parts, each tried on its own. Then vertices at which the way
 * goes straight on, exactly, go too. A vertex is at most {@link ChainStraightening#MOST_DRIFT} from the chord that replaces it, across its longer
 * extent; as its ends are within a step of the source segment, so is the whole chord.
 *
 * <p><b>Why it is safe.</b> A run of edges p0, …, pn may become the edge p0 pn if
 * <ol>
 *   <li>two edges meet at each of p1, …, pn-1;
 *   <li>the way along (see {@link Strip}) grows at each step from p0 to pn;
 *   <li>their {@link Strip}, the narrowest around the run, holds no other vertex of the map;
 *   <li>no other edge joins p0 and pn, or will.
 * </ol>
 * Take out p1, p2, … in turn. Each time the triangle (p0, pi, pi+1) is part of the strip, which is convex; the vertices still
 * to come lie farther along than all of the triangle; so no vertex but its corners is in it. An edge that met p0 pi+1 in
 * another point than a common end would go on into the triangle, or along that side. It can leave neither by the other two sides,
 * which are edges, nor by p0 pi+1 again, being straight; so it would end in the triangle, at p0 or at pi+1, and would be
 * p0 pi+1 itself, which for i+1 &lt; n has no room at pi+1 and for i+1 = n is ruled out. So no edge meets the new one but at
 * vertices, and every face keeps its neighbours.
 *
 * <p>All runs are judged by the map as it was, whose vertices include those of every map on the way, so they may all be
 * joined at once and in any order.
 */
final class Straightening {
    private Straightening() {}

    /**
     * The same map with fewer vertices; work grows as n log n.
     *
     * @param segments that the edges' sources name
     */
    static EdgeTable of(EdgeTable table, Segments segments, Crew crew) {
        ForkJoinTask<VertexGrid> grid = crew.start(() -> new VertexGrid(table.x(), table.y()));
        StackChains chains = StackChains.of(table, crew);
        JoinedEdges edges = new JoinedEdges(table, chains);
        VertexGrid cells = grid.join();
        List<int[]> joined = crew.share(
                chains.count(),
                (first, end) -> new ChainStraightening(table, segments, chains, cells, edges).straighten(first, end));
        return edges.table(joined, crew);
    }
}
