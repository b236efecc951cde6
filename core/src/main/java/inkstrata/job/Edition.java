package inkstrata.job;

/**
 * How many prints are wanted.
 *
 * @param prints good prints, 1 or more
 * @param spoilage share of prints made over that number, 0 to 1
 */
public record Edition(int prints, double spoilage) {
    /** One print; 12 % over is common practice, no source. */
    public static final Edition DEFAULT = new Edition(1, 0.12);

    public Edition {
        if (prints < 1) {
            throw new IllegalArgumentException("an edition has 1 print or more, not " + prints);
        }
        if (!(spoilage >= 0 && spoilage <= 1)) {
            throw new IllegalArgumentException("spoilage " + spoilage * 100 + " % is outside 0 to 100 %");
        }
    }
}
