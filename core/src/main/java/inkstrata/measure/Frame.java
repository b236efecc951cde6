package inkstrata.measure;

/**
 * An upright rectangle on the sheet, in millimetres, y down.
 *
 * @param x left side
 * @param y top side
 * @param width more than 0
 * @param height more than 0
 */
public record Frame(double x, double y, double width, double height) {
    public Frame {
        if (!(width > 0 && height > 0) || !Double.isFinite(x + y + width + height)) {
            throw new IllegalArgumentException(
                    "frame " + width + " x " + height + " mm at " + x + ", " + y + " is not a frame");
        }
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public Frame movedBy(double dx, double dy) {
        return new Frame(x + dx, y + dy, width, height);
    }
}
