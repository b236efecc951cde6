package inkstrata.film;

import inkstrata.colour.Rgb;

/** What a shade on a film does to light. */
public enum Opacity {
    /** Prints. */
    BLACK,
    /** Neither, and nearer to black. */
    DARK_STAIN,
    /** Neither, and nearer to clear. */
    LIGHT_STAIN,
    CLEAR;

    /** As dark as this is black (our own choice). */
    private static final int BLACKEST = 0x1a;

    /** As light as this is clear (our own choice). */
    private static final int CLEAREST = 0xfa;

    private static final int MIDDLE = 0x80;

    public static Opacity of(Rgb shade) {
        int darkest = Math.min(shade.red(), Math.min(shade.green(), shade.blue()));
        int lightest = Math.max(shade.red(), Math.max(shade.green(), shade.blue()));
        if (lightest <= BLACKEST) {
            return BLACK;
        }
        if (darkest >= CLEAREST) {
            return CLEAR;
        }
        return darkest + lightest < 2 * MIDDLE ? DARK_STAIN : LIGHT_STAIN;
    }

    public boolean prints() {
        return this == BLACK || this == DARK_STAIN;
    }

    public boolean isStain() {
        return this == DARK_STAIN || this == LIGHT_STAIN;
    }
}
