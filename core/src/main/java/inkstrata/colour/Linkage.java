package inkstrata.colour;

/**
 * Which groups are closest, where the distance of two groups is that of their two members farthest apart.
 *
 * <p>Remembers for each group the nearest one of a higher number. Distances only grow when groups join, so that is looked for
 * again only where it was one of the two: about n² steps for n groups.
 */
final class Linkage {
    private static final int NONE = -1;

    private final double[][] apart;
    private final int[] nearest;
    private final boolean[] gone;

    /**
     * Begins with each member in a group of its own.
     *
     * @param apart how far each two are apart, both ways; changed here
     */
    Linkage(double[][] apart) {
        this.apart = apart;
        this.nearest = new int[apart.length];
        this.gone = new boolean[apart.length];
        for (int i = 0; i < nearest.length; i++) {
            lookAgain(i);
        }
    }

    /** Of the two closest groups the one of the lower number, the lowest of all such; -1 if none are within the limit. */
    int closest(double limit) {
        int found = NONE;
        for (int i = 0; i < nearest.length; i++) {
            if (!gone[i] && nearest[i] != NONE) {
                double distance = apart[i][nearest[i]];
                if (distance <= limit && (found == NONE || distance < apart[found][nearest[found]])) {
                    found = i;
                }
            }
        }
        return found;
    }

    /** The nearest group of a higher number, the lowest of all such. */
    int nearest(int group) {
        return nearest[group];
    }

    boolean isGone(int group) {
        return gone[group];
    }

    /** Joins two groups under the number of the first. */
    void join(int keep, int join) {
        gone[join] = true;
        for (int k = 0; k < nearest.length; k++) {
            apart[keep][k] = Math.max(apart[keep][k], apart[join][k]);
            apart[k][keep] = apart[keep][k];
        }
        for (int i = 0; i < nearest.length; i++) {
            if (!gone[i] && (i == keep || nearest[i] == keep || nearest[i] == join)) {
                lookAgain(i);
            }
        }
    }

    private void lookAgain(int i) {
        nearest[i] = NONE;
        for (int j = i + 1; j < nearest.length; j++) {
            if (!gone[j] && (nearest[i] == NONE || apart[i][j] < apart[i][nearest[i]])) {
                nearest[i] = j;
            }
        }
    }
}
