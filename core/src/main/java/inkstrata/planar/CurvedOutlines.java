package inkstrata.planar;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Outline;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;

/**
 * Regions drawn with true curves: the artwork's own wherever an edge came from one, few fitted ones elsewhere.
 *
 * <p>At most 5 µm from the regions' straight edges, as measured at the vertices and at points between any two. What two regions
 * share is drawn with the very same numbers. A region that is mapped again has the same faces: where curves would spoil them the edges
 * are drawn. All numbers are whole hundredths of a micrometre.
 */
public final class CurvedOutlines {
    private final BorderNet net;
    private final Anchors anchors;
    private final List<List<Bezier>> pieces;

    private CurvedOutlines(BorderNet net, Anchors anchors, List<List<Bezier>> pieces) {
        this.net = net;
        this.anchors = anchors;
        this.pieces = pieces;
    }

    /**
     * For each region one outline for each of its polygons, in their order; for either fill rule.
     *
     * @param map that the regions were dissolved from, before or after they were spread
     * @param artwork that was mapped
     */
    public static List<List<Outline>> of(List<Region> regions, PlanarMap map, Artwork artwork) {
        BorderNet net = BorderNet.of(regions);
        EdgeCurves edges = EdgeCurves.of(net, map);
        CommandCurves commands = new CommandCurves(Drawing.of(artwork));
        Box frame = Box.of(artwork.frame());
        Anchors anchors = new Anchors(frame, net, edges, commands);
        ChainCurves curves = new ChainCurves(net, edges, commands, anchors, new Detours(net, frame));
        List<List<Bezier>> pieces = new ArrayList<>();
        for (int chain = 0; chain < net.chainCount(); chain++) {
            pieces.add(curves.of(chain));
        }
        CurvedOutlines outlines = new CurvedOutlines(net, anchors, pieces);
        outlines.keepApart(curves, outlines.owners(regions), frame);
        return regions.stream()
                .map(region -> region.polygons().stream().map(outlines::outline).toList())
                .toList();
    }

    private void keepApart(ChainCurves curves, List<BitSet> owners, Box frame) {
        while (curves.keepApart(Clashes.of(net, owners, pieces, frame))) {
            for (int chain = 0; chain < pieces.size(); chain++) {
                if (curves.isChanged(chain)) {
                    pieces.set(chain, curves.of(chain));
                }
            }
        }
    }

    /** For each chain the regions that it bounds. */
    private List<BitSet> owners(List<Region> regions) {
        List<BitSet> owners =
                Stream.generate(BitSet::new).limit(net.chainCount()).toList();
        for (int region = 0; region < regions.size(); region++) {
            for (Ring ring : regions.get(region).rings()) {
                int before = net.vertex(ring.x(ring.size() - 1), ring.y(ring.size() - 1));
                for (int i = 0; i < ring.size(); i++) {
                    int vertex = net.vertex(ring.x(i), ring.y(i));
                    owners.get(net.chainOf(net.edge(before, vertex))).set(region);
                    before = vertex;
                }
            }
        }
        return owners;
    }

    private Outline outline(Region.Polygon polygon) {
        PiecePen pen = new PiecePen();
        draw(polygon.shell(), pen);
        polygon.holes().forEach(hole -> draw(hole, pen));
        return pen.outline();
    }

    private void draw(Ring ring, PiecePen pen) {
        int size = ring.size();
        int[] vertices = new int[size + 1];
        for (int i = 0; i < size; i++) {
            vertices[i] = net.vertex(ring.x(i), ring.y(i));
        }
        vertices[size] = vertices[0];
        int first = 0;
        while (!startsChain(vertices[first], vertices[first + 1])) {
            first++;
        }
        pen.moveTo(anchors.x(vertices[first]), anchors.y(vertices[first]));
        for (int done = 0; done < size; ) {
            int at = (first + done) % size;
            int chain = net.chainOf(net.edge(vertices[at], vertices[at + 1]));
            boolean isForward = isForward(chain, vertices[at], vertices[at + 1]);
            done += net.chain(chain).length - 1;
            if (done < size) {
                pen.draw(pieces.get(chain), isForward);
            } else {
                pen.close(pieces.get(chain), isForward);
            }
        }
    }

    private boolean startsChain(int from, int to) {
        int edge = net.edge(from, to);
        int chain = net.chainOf(edge);
        int place = net.placeInChain(edge);
        return isForward(chain, from, to) ? place == 0 : place == net.chain(chain).length - 2;
    }

    private boolean isForward(int chain, int from, int to) {
        int place = net.placeInChain(net.edge(from, to));
        return net.chain(chain)[place] == from && net.chain(chain)[place + 1] == to;
    }
}
