package inkstrata.job;

import java.util.OptionalInt;

/**
 * Which colours of the artwork share an ink.
 *
 * @param within colours closer than this (CIEDE2000) become one ink
 * @param touching whether two colours that share an edge may: the edge is lost
 * @param inks how many inks there shall be at most, whatever is lost; empty for as many as there are
 */
public record Merge(double within, boolean touching, OptionalInt inks) {
    /** Two colours closer than 2 pass for equal in a print (common practice, no source). */
    public static final Merge DEFAULT = new Merge(2.0, false, OptionalInt.empty());

    public Merge {
        if (!(within >= 0 && within <= 100)) {
            throw new IllegalArgumentException("merge within " + within + " is outside 0 to 100");
        }
        if (inks.isPresent() && inks.getAsInt() < 1) {
            throw new IllegalArgumentException("a print has 1 ink or more, not " + inks.getAsInt());
        }
    }

    /** The same, but so many inks at most. */
    public Merge withInks(int most) {
        return new Merge(within, touching, OptionalInt.of(most));
    }
}
