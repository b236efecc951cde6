package inkstrata.planar;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Regions drawn with true curves: the artwork's own wherever an edge came from one, few fitted ones elsewhere.
 *
 * <p>At most 5 µm from the regions' straight edges, as measured at the vertices and three points between any two. What two regions
 * share is drawn with the very same numbers. All numbers are whole hundredths
 * of a micrometre.
 */
public final class CurvedOutlines {
    /** Smallest units in a grid step: {@value} hundredths of a micrometre. */
    private static final int UNITS = 25;

    private static final double UNITS_PER_MM = (double) UNITS * Grid.STEPS_PER_MM;

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
        Anchors anchors = new Anchors(Box.of(artwork.frame()), net, edges, commands);
        ChainCurves curves = new ChainCurves(net, edges, commands, anchors);
        List<List<Bezier>> pieces = new ArrayList<>();
        for (int chain = 0; chain < net.chainCount(); chain++) {
            pieces.add(curves.of(chain));
        }
        keepApart(net, curves, anchors, pieces);
        CurvedOutlines outlines = new CurvedOutlines(net, anchors, pieces);
        return regions.stream()
                .map(region -> region.polygons().stream().map(outlines::outline).toList())
                .toList();
    }

    /** Where something is too thin for curves to keep its sides apart, chains are drawn as the edges they are, where those are. */
    private static void keepApart(BorderNet net, ChainCurves curves, Anchors anchors, List<List<Bezier>> pieces) {
        BitSet plain = new BitSet();
        while (true) {
            BitSet clashing = Clashes.of(pieces, UNITS);
            clashing.andNot(plain);
            if (clashing.isEmpty()) {
                return;
            }
            plain.or(clashing);
            clashing.stream().flatMap(chain -> Arrays.stream(net.chain(chain))).forEach(anchors::pin);
            for (int chain = 0; chain < net.chainCount(); chain++) {
                if (plain.get(chain)) {
                    pieces.set(chain, curves.edgesOf(chain));
                } else if (anchors.isPinned(net.chain(chain)[0])
                        || anchors.isPinned(net.chain(chain)[net.chain(chain).length - 1])) {
                    pieces.set(chain, curves.of(chain));
                }
            }
        }
    }

    private Outline outline(Region.Polygon polygon) {
        Outline.Builder outline = Outline.builder();
        ring(polygon.shell(), outline);
        polygon.holes().forEach(hole -> ring(hole, outline));
        return outline.build();
    }

    private void ring(Ring ring, Outline.Builder outline) {
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
        outline.moveTo(mm(anchors.x(vertices[first])), mm(anchors.y(vertices[first])));
        for (int done = 0; done < size; ) {
            int at = (first + done) % size;
            int chain = net.chainOf(net.edge(vertices[at], vertices[at + 1]));
            int length = net.chain(chain).length - 1;
            done += length;
            chain(pieces.get(chain), isForward(chain, vertices[at], vertices[at + 1]), done == size, outline);
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

    /** The line that closes a ring is left to the outline, and so is what has no length. */
    private static void chain(List<Bezier> pieces, boolean forward, boolean closes, Outline.Builder outline) {
        for (int i = 0; i < pieces.size(); i++) {
            Bezier piece = pieces.get(forward ? i : pieces.size() - 1 - i);
            boolean isClosing = closes && i == pieces.size() - 1 && piece.degree() == 1;
            if (!isClosing && !piece.isNothing(UNITS)) {
                piece(piece, forward, outline);
            }
        }
    }

    private static void piece(Bezier piece, boolean forward, Outline.Builder outline) {
        double[] c = new double[2 * piece.degree() + 2];
        for (int i = 0; i <= piece.degree(); i++) {
            int control = forward ? i : piece.degree() - i;
            c[2 * i] = mm(piece.x(control));
            c[2 * i + 1] = mm(piece.y(control));
        }
        switch (piece.degree()) {
            case 1 -> outline.lineTo(c[2], c[3]);
            case 2 -> outline.quadTo(c[2], c[3], c[4], c[5]);
            default -> outline.cubicTo(c[2], c[3], c[4], c[5], c[6], c[7]);
        }
    }

    /** The nearest whole unit, never -0. */
    private static double mm(double steps) {
        return Math.rint(steps * UNITS) / UNITS_PER_MM + 0.0;
    }
}
