package inkstrata.measure;

/**
 * Width and height in millimetres.
 *
 * @param width more than 0 and finite
 * @param height more than 0 and finite
 */
public record Size(double width, double height) {
    public Size {
        if (!(width > 0 && height > 0 && Double.isFinite(width) && Double.isFinite(height))) {
            throw new IllegalArgumentException("size " + width + " x " + height + " mm is not a size");
        }
    }

    /** The same sheet lying the other way. */
    public Size turned() {
        return new Size(/* width= */ height, /* height= */ width);
    }
}
