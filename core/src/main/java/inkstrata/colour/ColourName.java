package inkstrata.colour;

/**
 * Plain words for a colour, such as {@code pale yellow} or {@code deep blue}, to name an ink nobody has named.
 *
 * <p>From lightness, chroma and hue angle of Lab; where one word ends and the next begins is our own choice.
 */
public final class ColourName {
    /** Below this chroma a colour is called by its lightness alone. */
    private static final double GREY = 8;

    private ColourName() {}

    public static String of(Rgb colour) {
        Lab lab = Lab.of(colour);
        double lightness = lab.lightness();
        double chroma = Math.hypot(lab.a(), lab.b());
        if (lightness < 12 && chroma < 2 * GREY) {
            return "black";
        }
        if (chroma < GREY) {
            return lightness > 96 ? "white" : shade(lightness) + "grey";
        }
        return shade(lightness) + hue(Math.toDegrees(Math.atan2(lab.b(), lab.a())), lightness, chroma);
    }

    private static String shade(double lightness) {
        if (lightness > 85) {
            return "pale ";
        }
        if (lightness > 68) {
            return "light ";
        }
        if (lightness > 40) {
            return "";
        }
        return lightness > 22 ? "dark " : "deep ";
    }

    private static String hue(double degrees, double lightness, double chroma) {
        double hue = degrees < 0 ? degrees + 360 : degrees;
        if (hue < 10 || hue >= 345) {
            return "pink";
        }
        if (hue < 45) {
            return "red";
        }
        if (hue < 75) {
            return lightness < 55 || chroma < 40 ? "brown" : "orange";
        }
        if (hue < 108) {
            return lightness < 55 ? "olive" : "yellow";
        }
        if (hue < 170) {
            return "green";
        }
        if (hue < 225) {
            return "teal";
        }
        if (hue < 310) {
            return "blue";
        }
        return hue < 325 ? "violet" : "magenta";
    }
}
