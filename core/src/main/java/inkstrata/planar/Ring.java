package inkstrata.planar;

import java.util.Arrays;

/**
 * A simple closed polygon on the grid, at least three vertices; the last one is not repeated.
 *
 * <p>It starts at its leftmost vertex, the one with the lowest y if there are several, so that equal rings are equal by
 * value.
 */
public final class Ring {
    private final int[] xy;

    /** Takes vertices in grid steps, x and y in turn, from any of them on. */
    Ring(int[] xy) {
        if (xy.length < 6) {
            throw new IllegalArgumentException("a ring of " + xy.length / 2 + " vertices encloses nothing");
        }
        this.xy = fromLeftmost(xy);
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
     * Twice the enclosed area in square grid steps, exactly; positive if the inside lies where cross products are positive:
     * to the right of the way as seen on the sheet.
     */
    long doubledArea() {
        // Products and sums may wrap around 64 bits; the result is below 2^54 and comes out right all the same.
        long sum = 0;
        for (int i = 0, j = xy.length - 2; i < xy.length; j = i, i += 2) {
            sum += (long) xy[j] * xy[i + 1] - (long) xy[i] * xy[j + 1];
        }
        return sum;
    }

    /** In grid steps. */
    double length() {
        double sum = 0;
        for (int i = 0, j = xy.length - 2; i < xy.length; j = i, i += 2) {
            sum += Math.hypot(xy[i] - xy[j], xy[i + 1] - xy[j + 1]);
        }
        return sum;
    }

    /** The smallest upright box around it. */
    Box box() {
        int left = Integer.MAX_VALUE;
        int low = Integer.MAX_VALUE;
        int right = Integer.MIN_VALUE;
        int high = Integer.MIN_VALUE;
        for (int i = 0; i < size(); i++) {
            left = Math.min(left, x(i));
            right = Math.max(right, x(i));
            low = Math.min(low, y(i));
            high = Math.max(high, y(i));
        }
        return new Box(left, low, right, high);
    }

    Ring reversed() {
        int[] back = new int[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            back[i] = xy[xy.length - 2 - i];
            back[i + 1] = xy[xy.length - 1 - i];
        }
        return new Ring(back);
    }

    Ring movedBy(int dx, int dy) {
        int[] moved = new int[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            moved[i] = xy[i] + dx;
            moved[i + 1] = xy[i + 1] + dy;
        }
        return new Ring(moved);
    }

    /** An order that depends on vertices alone. */
    static int compare(Ring one, Ring other) {
        return Arrays.compare(one.xy, other.xy);
    }

    private static int[] fromLeftmost(int[] xy) {
        int first = 0;
        for (int i = 2; i < xy.length; i += 2) {
            if (xy[i] < xy[first] || (xy[i] == xy[first] && xy[i + 1] < xy[first + 1])) {
                first = i;
            }
        }
        int[] turned = new int[xy.length];
        System.arraycopy(xy, first, turned, 0, xy.length - first);
        System.arraycopy(xy, 0, turned, xy.length - first, first);
        return turned;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ring that && Arrays.equals(xy, that.xy);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(xy);
    }

    /** Vertices in grid steps. */
    @Override
    public String toString() {
        return Arrays.toString(xy);
    }
}
