package inkstrata.planar;

/**
 * One tile, finished: its edges with different stacks at their sides, and the stacks along its sides.
 *
 * @param box where it lies
 * @param inside x and y of the vertices within, as {@link TileVertices} numbers them
 * @param onFrame x and y of those vertices on its frame at which such an edge ends
 * @param edges five ints each: from, to, stack on the left (positive cross products), stack on the right, source segment
 * @param left along the left side place, stack inside and source segment (or -1) of each edge, and the last place
 * @param low likewise along the low side
 * @param right likewise along the right side
 * @param high likewise along the high side
 * @param stacks what the stack numbers stand for; tiles of one thread share it
 */
record MappedTile(
        Box box,
        int[] inside,
        int[] onFrame,
        int[] edges,
        int[] left,
        int[] low,
        int[] right,
        int[] high,
        StackTable stacks) {
    /** Ints in one edge. */
    static final int STRIDE = 5;

    /** Ints in one edge of a side. */
    static final int SIDE_STRIDE = 3;

    /** Nodes a tile and labels its faces. */
    static MappedTile of(Tile tile, Drawing drawing, Workbench bench) {
        TileSegments segments = TileSegments.of(tile);
        TileNoding noding = TileNoding.of(tile.box(), segments);
        TileEdges edges = TileEdges.of(tile.box(), segments, noding);
        HalfEdges halves = HalfEdges.of(edges);
        TileFaces faces = new TileFaces(edges, halves);
        int[] stackOf = TileLabels.of(tile, edges, segments, faces, drawing, bench);
        TileVertices vertices = new TileVertices(tile.box(), edges.vertices());
        Ints kept = new Ints(STRIDE * edges.count());
        for (int e = 0; e < edges.count(); e++) {
            if (edges.onFrame(e)) {
                continue;
            }
            int left = stackOf[faces.of(2 * e)];
            int right = stackOf[faces.of(2 * e + 1)];
            if (left != right) {
                kept.add(vertices.number(edges.from(e)));
                kept.add(vertices.number(edges.to(e)));
                kept.add(left);
                kept.add(right);
                kept.add(edges.source(e));
            }
        }
        return new MappedTile(
                tile.box(),
                vertices.inside(),
                vertices.onFrame(),
                kept.toArray(),
                side(edges.leftSide(), true, false, edges, faces, stackOf),
                side(edges.lowSide(), false, true, edges, faces, stackOf),
                side(edges.rightSide(), true, true, edges, faces, stackOf),
                side(edges.highSide(), false, false, edges, faces, stackOf),
                bench.stacks());
    }

    /** Walking along a side, the tile is on the left of it or on the right. */
    private static int[] side(
            int[] vertices, boolean upright, boolean tileOnLeft, TileEdges edges, TileFaces faces, int[] stackOf) {
        int[] result = new int[SIDE_STRIDE * (vertices.length - 1) + 1];
        for (int k = 0; k < vertices.length; k++) {
            int at = SIDE_STRIDE * k;
            result[at] =
                    upright ? edges.vertices().y(vertices[k]) : edges.vertices().x(vertices[k]);
            if (k + 1 < vertices.length) {
                int edge = edges.between(vertices[k], vertices[k + 1]);
                boolean forward = vertices[k] < vertices[k + 1];
                result[at + 1] = stackOf[faces.of(2 * edge + (forward == tileOnLeft ? 0 : 1))];
                result[at + 2] = edges.source(edge);
            }
        }
        return result;
    }
}
