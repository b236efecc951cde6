package inkstrata.planar;

import java.util.Arrays;
import java.util.Optional;

/**
 * Which curve of the artwork each edge of a {@link BorderNet} follows, and which part of it.
 *
 * <p>Most edges are edges of the map. What regions gained since the map was made has cut some of them: a piece of an edge
 * lies within {@link #NEAR} steps of it, and is found from the vertex it shares with it, or else from the piece next to it.
 */
final class EdgeCurves {
    /** An edge that was cut bends towards the cut by less than a diagonal of the grid. */
    private static final double NEAR = 1.5;

    private final BorderNet net;
    private final EdgeTable map;
    private final Sources sources;
    /** For each edge of the net the map's edge it is, or is a piece of; -1 for none. */
    private final int[] mapEdge;

    private EdgeCurves(BorderNet net, PlanarMap map) {
        this.net = net;
        this.map = map.edges();
        this.sources = map.sources();
        this.mapEdge = new int[net.edgeCount()];
    }

    static EdgeCurves of(BorderNet net, PlanarMap map) {
        EdgeCurves curves = new EdgeCurves(net, map);
        curves.find();
        return curves;
    }

    /** What an edge follows on its way from one of its vertices to the other; empty where nothing of the artwork is known. */
    Optional<Sources.Part> part(int from, int to) {
        int e = mapEdge[net.edge(from, to)];
        if (e < 0 || map.source()[e] < 0) {
            return Optional.empty();
        }
        return sources.of(e, net.x(from), net.y(from), net.x(to), net.y(to));
    }

    private void find() {
        Arrays.fill(mapEdge, -1);
        int[] vertex = new int[map.x().length];
        for (int v = 0; v < vertex.length; v++) {
            vertex[v] = net.vertex(map.x()[v], map.y()[v]);
        }
        // Edges of the map by those vertices of the net at which they end: one that some region has whole may be cut
        // for others.
        int[] latestAt = new int[net.vertexCount()];
        Arrays.fill(latestAt, -1);
        int[] before = new int[2 * map.from().length];
        for (int e = 0; e < map.from().length; e++) {
            int from = vertex[map.from()[e]];
            int to = vertex[map.to()[e]];
            int same = from < 0 || to < 0 ? -1 : net.edge(from, to);
            if (same >= 0) {
                mapEdge[same] = e;
            }
            if (from >= 0) {
                before[2 * e] = latestAt[from];
                latestAt[from] = 2 * e;
            }
            if (to >= 0) {
                before[2 * e + 1] = latestAt[to];
                latestAt[to] = 2 * e + 1;
            }
        }
        for (int chain = 0; chain < net.chainCount(); chain++) {
            int[] vertices = net.chain(chain);
            for (int i = 0; i + 1 < vertices.length; i++) {
                findPiece(vertices[i], vertices[i + 1], latestAt, before);
            }
            for (int i = 1; i + 1 < vertices.length; i++) {
                takeOver(vertices[i - 1], vertices[i], vertices[i + 1]);
            }
            for (int i = vertices.length - 2; i > 0; i--) {
                takeOver(vertices[i + 1], vertices[i], vertices[i - 1]);
            }
        }
    }

    private void findPiece(int from, int to, int[] latestAt, int[] before) {
        int edge = net.edge(from, to);
        for (int end : new int[] {from, to}) {
            for (int half = latestAt[end]; half >= 0 && mapEdge[edge] < 0; half = before[half]) {
                if (isAlong(half >> 1, end == from ? to : from)) {
                    mapEdge[edge] = half >> 1;
                }
            }
        }
    }

    /** What the edge before follows may go on. */
    private void takeOver(int before, int from, int to) {
        int edge = net.edge(from, to);
        int known = mapEdge[net.edge(before, from)];
        if (mapEdge[edge] < 0 && known >= 0 && isAlong(known, to)) {
            mapEdge[edge] = known;
        }
    }

    private boolean isAlong(int e, int vertex) {
        int from = map.from()[e];
        int to = map.to()[e];
        return Polyline.distance(net.x(vertex), net.y(vertex), map.x()[from], map.y()[from], map.x()[to], map.y()[to])
                <= NEAR;
    }
}
