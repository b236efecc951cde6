package inkstrata.overprint;

/** How much work a search may still do: counted and not timed, so that the same drawing gives the same plan on every machine. */
final class Effort {
    /** About 10 s on a machine of 2025. */
    static final long MUCH = 20_000_000;

    /** To look at a pile of inks. */
    static final int PILE = 60;

    /** To keep a recipe: so there are no more of them than memory holds. */
    static final int RECIPE = 10;

    /** To look at a set of inks, or at a recipe within one. */
    static final int SET = 4;

    /** So many recipes are asked whether a set has their inks for one step. */
    static final int ASKED = 64;

    private long left;

    Effort(long steps) {
        this.left = steps;
    }

    /** Takes some of it; whether none is left. */
    boolean isSpent(int steps) {
        left -= steps;
        return left < 0;
    }
}
