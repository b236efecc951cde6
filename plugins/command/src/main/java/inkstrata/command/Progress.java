package inkstrata.command;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Says what the program is doing once that takes longer than somebody cares to wait in the dark: first after two seconds,
 * then at each step, and every ten seconds within one.
 */
final class Progress implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final Duration AGAIN = Duration.ofSeconds(10);

    private final PrintWriter err;
    private final Consumer<String> steps;
    private final Timer clock = new Timer("progress", true);
    private final long began = System.nanoTime();
    private String step = "starting";
    private boolean speaking;

    /**
     * Starts the clock.
     *
     * @param quiet say nothing at all
     * @param steps is told each step all the same
     */
    Progress(PrintWriter err, boolean quiet, Consumer<String> steps) {
        this.err = err;
        this.steps = steps;
        if (!quiet) {
            TimerTask speak = new TimerTask() {
                @Override
                public void run() {
                    speak();
                }
            };
            clock.scheduleAtFixedRate(speak, PATIENCE.toMillis(), AGAIN.toMillis());
        }
    }

    /** A new step begins, said as what is being done: {@code mapping 400 shapes}. */
    synchronized void begins(String newStep) {
        step = newStep;
        steps.accept(newStep);
        if (speaking) {
            say();
        }
    }

    private synchronized void speak() {
        speaking = true;
        say();
    }

    private void say() {
        err.println("inkstrata: " + step + " (" + TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - began) + " s)");
        err.flush();
    }

    @Override
    public void close() {
        clock.cancel();
    }
}
