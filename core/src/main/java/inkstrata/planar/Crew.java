package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.RecursiveTask;

/** The threads that make one map together. What comes out never depends on how many there are. */
final class Crew implements AutoCloseable {
    /** Shares of a work for each thread, so that one that is held up does not hold up the others for long. */
    private static final int SHARES = 4;

    private final int threads;
    private final ForkJoinPool pool;

    /** What is to be done with the items from one on until before another. */
    interface Share<T> {
        T of(int first, int end);
    }

    /**
     * Hires them.
     *
     * @param threads 1 or more
     */
    Crew(int threads) {
        this.threads = threads;
        this.pool = new ForkJoinPool(threads);
    }

    int threads() {
        return threads;
    }

    /** Does work that parts itself. */
    <T> T all(RecursiveTask<T> work) {
        return pool.invoke(work);
    }

    /** Begins a work; {@code join()} gives its result. */
    <T> ForkJoinTask<T> start(Callable<T> work) {
        return pool.submit(work);
    }

    /** Deals out items in rising order; results come in that order, none if there are no items. */
    <T> List<T> share(int items, Share<T> work) {
        int shares = threads == 1 ? Math.min(1, items) : Math.min(SHARES * threads, items);
        List<ForkJoinTask<T>> started = new ArrayList<>(shares);
        for (int i = 0; i < shares; i++) {
            int first = (int) ((long) items * i / shares);
            int end = (int) ((long) items * (i + 1) / shares);
            started.add(start(() -> work.of(first, end)));
        }
        return started.stream().map(ForkJoinTask::join).toList();
    }

    @Override
    public void close() {
        pool.shutdown();
    }
}
