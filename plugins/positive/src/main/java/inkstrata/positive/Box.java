package inkstrata.positive;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;

/**
 * An upright rectangle on the sheet, in grid steps from the sheet's top left corner, y down.
 *
 * @param left may be negative: beyond the sheet
 * @param top may be negative
 * @param right more than {@code left}
 * @param bottom more than {@code top}
 */
record Box(int left, int top, int right, int bottom) {
    /** The frame with every side on the nearest grid line. */
    static Box of(Frame frame) {
        return new Box(
                Grid.steps(frame.x()), Grid.steps(frame.y()), Grid.steps(frame.right()), Grid.steps(frame.bottom()));
    }

    Frame frame() {
        return new Frame(
                Grid.millimetres(left), Grid.millimetres(top), Grid.millimetres(width()), Grid.millimetres(height()));
    }

    int width() {
        return right - left;
    }

    int height() {
        return bottom - top;
    }

    int centreX() {
        return left + width() / 2;
    }

    int centreY() {
        return top + height() / 2;
    }

    /** The smallest box around this one and another. */
    Box around(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }
}
