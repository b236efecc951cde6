package inkstrata.planar;

/**
 * A chain of a {@link BorderNet} as points of the grid, from end to end; none if nothing is left of it.
 *
 * @param x of each point, in grid steps
 * @param y likewise
 */
record GridChain(int[] x, int[] y) {
    /** As the net has it. */
    static GridChain of(BorderNet net, int chain) {
        int[] vertices = net.chain(chain);
        GridChain points = new GridChain(new int[vertices.length], new int[vertices.length]);
        for (int i = 0; i < vertices.length; i++) {
            points.x[i] = net.x(vertices[i]);
            points.y[i] = net.y(vertices[i]);
        }
        return points;
    }

    boolean isNothing() {
        return x.length == 0;
    }

    int last() {
        return x.length - 1;
    }

    /** Of a closed one, its sign that of {@link Ring#doubledArea()}. */
    long doubledArea() {
        if (last() < 3) {
            return 0;
        }
        int[] xy = new int[2 * last()];
        for (int i = 0; i < last(); i++) {
            xy[2 * i] = x[i];
            xy[2 * i + 1] = y[i];
        }
        return new Ring(xy).doubledArea();
    }
}
