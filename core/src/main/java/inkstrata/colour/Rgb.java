package inkstrata.colour;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * An opaque sRGB colour (IEC 61966-2-1) with 8 bits a channel; ordered by red, green, blue.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Rgb(int red, int green, int blue) implements Comparable<Rgb> {
    public static final Rgb WHITE = new Rgb(255, 255, 255);
    public static final Rgb BLACK = new Rgb(0, 0, 0);

    private static final Pattern HEX = Pattern.compile("#[0-9a-fA-F]{6}");

    public Rgb {
        if (((red | green | blue) & ~0xff) != 0) {
            throw new IllegalArgumentException(
                    "channels " + red + ", " + green + ", " + blue + " are outside 0 to 255");
        }
    }

    /** From the low 24 bits, red highest. */
    public static Rgb of(int packed) {
        return new Rgb(packed >> 16 & 0xff, packed >> 8 & 0xff, packed & 0xff);
    }

    /** The nearest colour channel by channel; what sRGB does not hold is cut off (matrix: CSS Color 4). */
    public static Rgb of(Xyz xyz) {
        double x = xyz.x();
        double y = xyz.y();
        double z = xyz.z();
        return new Rgb(
                coded(12831.0 / 3959 * x - 329.0 / 214 * y - 1974.0 / 3959 * z),
                coded(-851781.0 / 878810 * x + 1648619.0 / 878810 * y + 36519.0 / 878810 * z),
                coded(705.0 / 12673 * x - 2585.0 / 12673 * y + 705.0 / 667 * z));
    }

    /** The 8-bit channel of linear light. */
    private static int coded(double linear) {
        double coded = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.rint(255 * Math.max(0, Math.min(1, coded)));
    }

    /**
     * Reads {@code #rrggbb}.
     *
     * @throws IllegalArgumentException if it is written in another way
     */
    public static Rgb parse(String hex) {
        if (!HEX.matcher(hex).matches()) {
            throw new IllegalArgumentException(
                    "'" + hex + "' is not a colour. Write it in quotes as \"#rrggbb\", for example \"#1d2440\".");
        }
        return of(Integer.parseInt(hex.substring(1), 16));
    }

    /** Red, green, blue in 24 bits, red highest. */
    public int packed() {
        return red << 16 | green << 8 | blue;
    }

    /** As {@code #rrggbb} in small letters. */
    public String hex() {
        return String.format(Locale.ROOT, "#%06x", packed());
    }

    @Override
    public int compareTo(Rgb other) {
        return Integer.compare(packed(), other.packed());
    }

    @Override
    public String toString() {
        return hex();
    }
}
