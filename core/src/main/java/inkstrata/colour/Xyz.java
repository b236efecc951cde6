package inkstrata.colour;

/**
 * CIE XYZ under D65, white having Y = 1.
 *
 * @param x 0 to about 0.95
 * @param y luminance, 0 to 1
 * @param z 0 to about 1.09
 */
public record Xyz(double x, double y, double z) {
    /** White of D65 from its chromaticity 0.3127, 0.3290, as CSS Color 4 has it. */
    public static final Xyz D65 = new Xyz(0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290);

    /**
     * From sRGB (IEC 61966-2-1). The matrix is computed from the primaries to full precision; the four digits printed in
     * the standard would move a value by up to 1e-4.
     */
    public static Xyz of(Rgb colour) {
        double r = linear(colour.red());
        double g = linear(colour.green());
        double b = linear(colour.blue());
        return new Xyz(
                506752.0 / 1228815 * r + 87881.0 / 245763 * g + 12673.0 / 70218 * b,
                87098.0 / 409605 * r + 175762.0 / 245763 * g + 12673.0 / 175545 * b,
                7918.0 / 409605 * r + 87881.0 / 737289 * g + 1001167.0 / 1053270 * b);
    }

    /** The linear light of one 8-bit channel, 0 to 1. */
    private static double linear(int channel) {
        double coded = channel / 255.0;
        return coded <= 0.04045 ? coded / 12.92 : Math.pow((coded + 0.055) / 1.055, 2.4);
    }
}
