package inkstrata.overprint;

import java.util.Optional;

/** Which of up to 63 inks must lie over which; never holds a ring. */
final class LayOrder {
    /** For each ink those that lie over it, over one of those, and so on. */
    private final long[] over;

    private LayOrder(long[] over) {
        this.over = over;
    }

    static LayOrder free(int inks) {
        return new LayOrder(new long[inks]);
    }

    /**
     * This, and each of these inks over the one before it.
     *
     * @return nothing if that would make a ring
     */
    Optional<LayOrder> with(int... farthestFirst) {
        long[] more = over.clone();
        for (int i = 1; i < farthestFirst.length; i++) {
            int under = farthestFirst[i - 1];
            int above = farthestFirst[i];
            if ((more[above] >> under & 1) != 0) {
                return Optional.empty();
            }
            long added = more[above] | 1L << above;
            for (int ink = 0; ink < more.length; ink++) {
                if (ink == under || (more[ink] >> under & 1) != 0) {
                    more[ink] |= added;
                }
            }
        }
        return Optional.of(new LayOrder(more));
    }

    boolean isOver(int above, int under) {
        return (over[under] >> above & 1) != 0;
    }
}
