package inkstrata.trap;

import inkstrata.plan.Overlap;
import inkstrata.separation.Separation;

/**
 * How a rim looks beside the two inks that it lies between; differences are CIEDE2000.
 *
 * @param fromGiving how far from the ink that gives way, whose rim it is
 * @param fromInto how far from the ink that it lies in
 * @param isNearer whether it lies nearer to the eye than that
 */
record RimColour(double fromGiving, double fromInto, boolean isNearer) {
    /** A rim farther than that from both is seen as a line of a third colour (our own choice). */
    static final double THIRD = 10;

    static RimColour of(Separation separation, int giving, int into) {
        boolean isNearer = separation.isNearer(giving, into);
        Overlap overlap = new Overlap(
                separation.plan().pulls().get(isNearer ? into : giving).ink(),
                separation.plan().pulls().get(isNearer ? giving : into).ink());
        return isNearer
                ? new RimColour(overlap.fromUpper(), overlap.fromLower(), true)
                : new RimColour(overlap.fromLower(), overlap.fromUpper(), false);
    }

    double fromBoth() {
        return Math.min(fromGiving, fromInto);
    }

    boolean isThirdColour() {
        return fromBoth() > THIRD;
    }

    /** Whether it takes from what is seen of the ink it lies in. */
    boolean takes() {
        return isNearer && fromInto > Overlap.TOLERANCE;
    }
}
