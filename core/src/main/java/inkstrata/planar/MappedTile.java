package inkstrata.planar;

/**
 * One tile, finished: its edges with different stacks at their sides, and the stacks along its sides.
 *
 * @param box where it lies
 * @param x of its vertices
 * @param y of its vertices
 * @param edges five ints each: from, to, stack on the left (positive cross products), stack on the right, source segment
 * @param left along the left side vertex, stack inside and source segment (or -1) of each edge, and the last vertex
 * @param low likewise along the low side
 * @param right likewise along the right side
 * @param high likewise along the high side
 * @param stacks what the stack numbers stand for
 */
record MappedTile(
        Box box, int[] x, int[] y, int[] edges, int[] left, int[] low, int[] right, int[] high, StackTable stacks) {
    /** Ints in one edge. */
    static final int STRIDE = 5;

    /** Ints in one edge of a side. */
    static final int SIDE_STRIDE = 3;

    /** Nodes a tile and labels its faces. */
    static MappedTile of(Tile tile, Drawing drawing, Stacker stacker) {
        TileSegments segments = TileSegments.of(tile);
        TileNoding noding = TileNoding.of(tile.box(), segments);
        TileEdges edges = TileEdges.of(tile.box(), segments, noding);
        HotPixels vertices = edges.vertices();
        int[] x = vertices.xs();
        int[] y = vertices.ys();
        int[] from = new int[edges.count()];
        int[] to = new int[edges.count()];
        for (int e = 0; e < from.length; e++) {
            from[e] = edges.from(e);
            to[e] = edges.to(e);
        }
        HalfEdges halves = new HalfEdges(x, y, from, to);
        TileFaces faces = new TileFaces(edges, halves);
        StackTable stacks = new StackTable();
        int[] stackOf = TileLabels.of(tile, edges, segments, faces, drawing, stacker, stacks);
        Ints kept = new Ints(edges.count());
        for (int e = 0; e < from.length; e++) {
            if (edges.onFrame(e)) {
                continue;
            }
            int left = stackOf[faces.of(2 * e)];
            int right = stackOf[faces.of(2 * e + 1)];
            if (left != right) {
                kept.add(from[e]);
                kept.add(to[e]);
                kept.add(left);
                kept.add(right);
                kept.add(edges.source(e));
            }
        }
        return new MappedTile(
                tile.box(),
                x,
                y,
                kept.toArray(),
                side(edges.leftSide(), false, edges, faces, stackOf),
                side(edges.lowSide(), true, edges, faces, stackOf),
                side(edges.rightSide(), true, edges, faces, stackOf),
                side(edges.highSide(), false, edges, faces, stackOf),
                stacks);
    }

    /** Walking along a side, the tile is on the left of it or on the right. */
    private static int[] side(int[] vertices, boolean tileOnLeft, TileEdges edges, TileFaces faces, int[] stackOf) {
        int[] result = new int[SIDE_STRIDE * (vertices.length - 1) + 1];
        for (int k = 0; k < vertices.length; k++) {
            int at = SIDE_STRIDE * k;
            result[at] = vertices[k];
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
