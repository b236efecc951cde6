package inkstrata.command;

import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Timer;
import java.util.TimerTask;

/**
 * Sees that a run does hardly more than look for memory: one that has nearly none left would go on for hours before the last
 * of it is gone.
 */
final class MemoryWatch {
    private static final Duration EACH = Duration.ofSeconds(1);

    /** So long nearly all time must have gone into looking for memory. */
    static final Duration WINDOW = Duration.ofSeconds(20);

    /** Of the time; runs that end well were seen to spend half of it over such a window. */
    static final double MOST = 0.9;

    private record Look(Duration at, Duration spent) {}

    private final Deque<Look> looks = new ArrayDeque<>();

    /**
     * Starts to watch this program.
     *
     * @param tooLittle is called once, on another thread
     */
    static void start(Runnable tooLittle) {
        MemoryWatch watch = new MemoryWatch();
        Timer timer = new Timer("memory", true);
        TimerTask look = new TimerTask() {
            @Override
            public void run() {
                if (watch.isTooLittle(Duration.ofNanos(System.nanoTime()), spent())) {
                    timer.cancel();
                    tooLittle.run();
                }
            }
        };
        timer.schedule(look, EACH.toMillis(), EACH.toMillis());
    }

    /**
     * Looks once more.
     *
     * @param at on any clock
     * @param spent all time that went into looking for memory so far
     */
    boolean isTooLittle(Duration at, Duration spent) {
        looks.add(new Look(at, spent));
        while (looks.size() > 2 && at.minus(secondLook().at()).compareTo(WINDOW) >= 0) {
            looks.remove();
        }
        Duration window = at.minus(looks.getFirst().at());
        Duration within = spent.minus(looks.getFirst().spent());
        return window.compareTo(WINDOW) >= 0 && within.toMillis() > MOST * window.toMillis();
    }

    private Look secondLook() {
        var in = looks.iterator();
        in.next();
        return in.next();
    }

    private static Duration spent() {
        return Duration.ofMillis(ManagementFactory.getGarbageCollectorMXBeans().stream()
                .mapToLong(GarbageCollectorMXBean::getCollectionTime)
                .sum());
    }
}
