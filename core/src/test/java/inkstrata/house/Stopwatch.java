package inkstrata.house;

import java.util.function.LongSupplier;

/** Times work, for tests of cost: ratios within one run are meant, not seconds. */
public final class Stopwatch {
    private Stopwatch() {}

    /**
     * The least of several runs, in seconds.
     *
     * @param work gives something above 0, so that it is not left out
     */
    public static double least(int runs, LongSupplier work) {
        double least = Double.POSITIVE_INFINITY;
        for (int run = 0; run < runs; run++) {
            long before = System.nanoTime();
            if (work.getAsLong() <= 0) {
                throw new IllegalStateException("nothing was done");
            }
            least = Math.min(least, (System.nanoTime() - before) * 1e-9);
        }
        return least;
    }
}
