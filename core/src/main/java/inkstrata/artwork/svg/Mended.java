package inkstrata.artwork.svg;

/**
 * A value as Batik takes it.
 *
 * @param value for the style of the element, or for its attribute; empty means that the property is not set
 * @param alpha of a colour: a number, {@code currentColor}, or empty where the parent's holds
 * @param note what to tell about it, or empty
 */
record Mended(String value, String alpha, String note) {
    static Mended plain(String value) {
        return new Mended(value, "", "");
    }

    static Mended colour(String value, double alpha) {
        return new Mended(value, alpha == 1 ? "1" : Double.toString(alpha), "");
    }

    Mended saying(String text) {
        return new Mended(value, alpha, text);
    }
}
