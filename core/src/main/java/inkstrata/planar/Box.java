package inkstrata.planar;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;

/**
 * An upright box in grid steps; {@code low} is the smaller y.
 *
 * @param left less than {@code right}
 * @param low less than {@code high}
 * @param right in grid steps
 * @param high in grid steps
 */
record Box(int left, int low, int right, int high) {
    /** A frame's box, at least one step wide and high. */
    static Box of(Frame frame) {
        int left = Grid.steps(frame.x());
        int low = Grid.steps(frame.y());
        return new Box(
                left,
                low,
                Math.max(left + 1, Grid.steps(frame.right())),
                Math.max(low + 1, Grid.steps(frame.bottom())));
    }

    /** Whether they overlap or touch. */
    boolean meets(Box other) {
        return left <= other.right && right >= other.left && low <= other.high && high >= other.low;
    }

    int width() {
        return right - left;
    }

    int height() {
        return high - low;
    }

    /** Larger by its own width and height on all sides, as far as the grid reaches. */
    Box surroundings() {
        int most = Grid.LIMIT - 1;
        return new Box(
                (int) Math.max(-most, (long) left - width()),
                (int) Math.max(-most, (long) low - height()),
                (int) Math.min(most, (long) right + width()),
                (int) Math.min(most, (long) high + height()));
    }

    Frame frame() {
        return new Frame(
                Grid.millimetres(left), Grid.millimetres(low), Grid.millimetres(width()), Grid.millimetres(height()));
    }
}
