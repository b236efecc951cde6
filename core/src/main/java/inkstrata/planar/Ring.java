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

    /**
     * Twice the enclosed area in square grid steps, exact; positive where {@code x} turns towards {@code y}. Sums on the way
     * may wrap around, the result can't: it is less than 2<sup>54</sup>.
     */
    long doubledArea() {
        long doubled = 0;
        int previous = size() - 1;
        for (int vertex = 0; vertex < size(); vertex++) {
            doubled += (long) x(previous) * y(vertex) - (long) x(vertex) * y(previous);
            previous = vertex;
        }
        return doubled;
    }
}
