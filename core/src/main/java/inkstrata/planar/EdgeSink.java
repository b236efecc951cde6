package inkstrata.planar;

/** Receives the edges of a map. */
public interface EdgeSink {
    /**
     * One edge, in grid steps.
     *
     * @param left number of the stack on the side where {@code cross(to - from, p - from) > 0}; -1 beyond the frame
     * @param right number of the stack on the other side; likewise
     */
    void edge(int x0, int y0, int x1, int y1, int left, int right);
}
