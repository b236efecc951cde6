package inkstrata.planar;

import java.util.List;

/** Runs of edges that became one each, by their places in the chains. */
final class JoinedRuns {
    private final int[] startEnd;

    /**
     * Takes them together.
     *
     * @param parts start and end of each run in turn
     */
    JoinedRuns(List<int[]> parts) {
        startEnd = parts.stream().flatMapToInt(java.util.Arrays::stream).toArray();
    }

    int count() {
        return startEnd.length / 2;
    }

    int start(int run) {
        return startEnd[2 * run];
    }

    /** The place after its last edge. */
    int end(int run) {
        return startEnd[2 * run + 1];
    }
}
