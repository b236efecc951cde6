package inkstrata.planar;

/** A simple closed polygon on the grid; the last vertex is not repeated. */
public final class Ring {
    private final int[] xy;

    Ring(int[] xy) {
        this.xy = xy;
    }

    /** How many vertices. */
    public int size() {
        return xy.length / 2;
    }

    /** In grid steps. */
    public int x(int vertex) {
        return xy[2 * vertex];
    }

    /** In grid steps. */
    public int y(int vertex) {
        return xy[2 * vertex + 1];
    }
}
