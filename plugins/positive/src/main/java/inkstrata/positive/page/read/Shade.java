package inkstrata.positive.page.read;

/** Colours as the grey that a film of them lets through (ISO 32000-1, 10.3.1 and 10.3.3): 0 black to 255 clear. */
final class Shade {
    private static final double RED = 0.3;
    private static final double GREEN = 0.59;
    private static final double BLUE = 0.11;
    private static final int WHITE = 255;

    private Shade() {}

    /** Of light: each 0 to 255. */
    static int of(int red, int green, int blue) {
        return (int) Math.round(RED * red + GREEN * green + BLUE * blue);
    }

    /** Of inks: each 0 none to 1 full. */
    static int ofInks(double cyan, double magenta, double yellow, double black) {
        return ofInk(RED * cyan + GREEN * magenta + BLUE * yellow + black);
    }

    /** Of one ink, 0 none to 1 full; more is full. */
    static int ofInk(double tint) {
        return (int) Math.round(WHITE * (1 - Math.max(0, Math.min(1, tint))));
    }
}
