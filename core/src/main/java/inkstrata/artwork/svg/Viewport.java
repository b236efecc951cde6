package inkstrata.artwork.svg;

/**
 * The box that percentages refer to, in user units (SVG 2, section 8.9).
 *
 * @param width of 100 %
 * @param height of 100 %
 */
record Viewport(double width, double height) implements org.apache.batik.bridge.Viewport {
    @Override
    public float getWidth() {
        return (float) width;
    }

    @Override
    public float getHeight() {
        return (float) height;
    }

    /** 100 % of a length that is neither across nor down. */
    double diagonal() {
        return Math.hypot(width, height) / Math.sqrt(2);
    }
}
