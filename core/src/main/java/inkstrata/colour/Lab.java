package inkstrata.colour;

/**
 * CIE 1976 L*a*b* under D65 (CIE 15).
 *
 * @param lightness L*, 0 black to 100 white
 * @param a green to red
 * @param b blue to yellow
 */
public record Lab(double lightness, double a, double b) {
    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    public static Lab of(Rgb colour) {
        return of(Xyz.of(colour));
    }

    public static Lab of(Xyz xyz) {
        double fx = f(xyz.x() / Xyz.D65.x());
        double fy = f(xyz.y() / Xyz.D65.y());
        double fz = f(xyz.z() / Xyz.D65.z());
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    private static double f(double ratio) {
        return ratio > EPSILON ? Math.cbrt(ratio) : (KAPPA * ratio + 16) / 116;
    }
}
