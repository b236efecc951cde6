package inkstrata.colour;

/**
 * The CIEDE2000 colour difference: 1 is just noticeable side by side, 2 to 3 pass for equal in a print, 5 is another
 * colour (common practice, no source).
 *
 * <p>Formula and hue conventions: Sharma, Wu and Dalal, The CIEDE2000 color-difference formula, Color Res. Appl. 30
 * (2005), 21-30.
 */
public final class Ciede2000 {
    private static final double TWENTY_FIVE_TO_7 = 6103515625.0;

    private Ciede2000() {}

    public static double difference(Rgb one, Rgb other) {
        return difference(Lab.of(one), Lab.of(other));
    }

    /** Never negative, the same both ways, 0 for equal colours. */
    public static double difference(Lab one, Lab other) {
        double meanChroma = (Math.hypot(one.a(), one.b()) + Math.hypot(other.a(), other.b())) / 2;
        double g = (1 - saturation(meanChroma)) / 2;
        double a1 = (1 + g) * one.a();
        double a2 = (1 + g) * other.a();
        double chroma1 = Math.hypot(a1, one.b());
        double chroma2 = Math.hypot(a2, other.b());
        double hue1 = hue(a1, one.b());
        double hue2 = hue(a2, other.b());
        boolean grey = chroma1 * chroma2 == 0;

        double dLightness = other.lightness() - one.lightness();
        double dChroma = chroma2 - chroma1;
        double dHueAngle = grey ? 0 : shorterWay(hue2 - hue1);
        double dHue = 2 * Math.sqrt(chroma1 * chroma2) * Math.sin(Math.toRadians(dHueAngle / 2));

        double lightness = (one.lightness() + other.lightness()) / 2;
        double chroma = (chroma1 + chroma2) / 2;
        double hue = grey ? hue1 + hue2 : meanHue(hue1, hue2);

        double t = 1
                - 0.17 * cosine(hue - 30)
                + 0.24 * cosine(2 * hue)
                + 0.32 * cosine(3 * hue + 6)
                - 0.20 * cosine(4 * hue - 63);
        double fromMiddle = (lightness - 50) * (lightness - 50);
        double sLightness = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
        double sChroma = 1 + 0.045 * chroma;
        double sHue = 1 + 0.015 * chroma * t;
        double turn = 30 * Math.exp(-Math.pow((hue - 275) / 25, 2));
        double rotation = -Math.sin(Math.toRadians(2 * turn)) * 2 * saturation(chroma);

        double l = dLightness / sLightness;
        double c = dChroma / sChroma;
        double h = dHue / sHue;
        return Math.sqrt(Math.max(0, l * l + c * c + h * h + rotation * c * h));
    }

    private static double saturation(double chroma) {
        double c7 = Math.pow(chroma, 7);
        return Math.sqrt(c7 / (c7 + TWENTY_FIVE_TO_7));
    }

    /** In degrees, 0 to 360. */
    private static double hue(double a, double b) {
        if (a == 0 && b == 0) {
            return 0;
        }
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double shorterWay(double degrees) {
        if (degrees > 180) {
            return degrees - 360;
        }
        return degrees < -180 ? degrees + 360 : degrees;
    }

    private static double meanHue(double hue1, double hue2) {
        double sum = hue1 + hue2;
        if (Math.abs(hue1 - hue2) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double cosine(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
