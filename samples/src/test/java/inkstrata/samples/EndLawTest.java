package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import inkstrata.artwork.ArtworkException;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every job ends: with films, or with a word on what is wrong with the drawing or the job. All that searches or repeats counts what it
 * does; the seconds here only tell an end from none.
 *
 * <p>{@code -Dlaws.jobs=5000 -Dlaws.from=0} asks for more jobs, or others.
 */
class EndLawTest {
    /** Of one processor: several times what the slowest takes. */
    private static final long CPU_SECONDS = 120;

    /** However busy the machine is, and whoever is waited for. */
    private static final int MOST_SECONDS = 1_200;

    private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

    private static final boolean SAYS = Boolean.getBoolean("laws.say");

    /** Of so many jobs one is written. */
    private static final int WRITTEN = 10;

    private static final int FEW = 60;
    private static final int MANY = Integer.getInteger("laws.jobs", 5_000);
    private static final int FROM = Integer.getInteger("laws.from", 0);

    @Test
    void generatedJobsEnd() {
        end(0, FEW);
    }

    @Test
    @Tag("long")
    void manyGeneratedJobsEnd() {
        end(FROM, MANY);
    }

    private static void end(long from, long jobs) {
        Map<Long, String> faults = new TreeMap<>();
        AtomicInteger printed = new AtomicInteger();
        LongStream.range(from, from + jobs).forEach(seed -> {
            String fault = fault(seed, printed);
            if (!fault.isEmpty()) {
                faults.put(seed, fault);
                System.out.println("job " + seed + ": " + fault);
            }
        });
        assertThat(faults).isEmpty();
        assertThat(printed.get()).as("jobs that were printed").isGreaterThan((int) (jobs / 2));
    }

    /** Takes it apart and inspects it; pictures of films take longer than all that, so few are written. */
    private static void print(GeneratedJob drawn, boolean isWritten) throws IOException {
        Job job = JobReader.read("job.yaml", drawn.job());
        Separator separator = new Separator(Press.plugins());
        Separation separation = separator.separate(drawn.artwork(), job);
        if (isWritten) {
            assertThat(Press.files(separation, job, Press.plugins())).containsKey("plan.json");
        } else {
            assertThat(separator.inspect(separation, job)).isNotNull();
        }
    }

    /** What went wrong, or nothing. */
    private static String fault(long seed, AtomicInteger printed) {
        CompletableFuture<Void> run = new CompletableFuture<>();
        Thread thread = new Thread(
                () -> {
                    try {
                        GeneratedJob drawn = GeneratedJob.of(seed);
                        print(drawn, seed % WRITTEN == 0);
                        printed.incrementAndGet();
                        run.complete(null);
                    } catch (JobException | ArtworkException said) {
                        assertThat(said.getMessage()).isNotBlank();
                        if (SAYS) {
                            System.out.println("job " + seed + " said: " + said.getMessage());
                        }
                        run.complete(null);
                    } catch (IOException | RuntimeException | Error fault) {
                        run.completeExceptionally(fault);
                    }
                },
                "job " + seed);
        thread.setDaemon(true);
        thread.start();
        try {
            for (int second = 0; second < MOST_SECONDS; second++) {
                try {
                    run.get(1, TimeUnit.SECONDS);
                    if (SAYS && second >= 10) {
                        System.out.println("job " + seed + " took " + second + " s");
                    }
                    return "";
                } catch (TimeoutException notYet) {
                    if (CPU.getThreadCpuTime(thread.getId()) > TimeUnit.SECONDS.toNanos(CPU_SECONDS)) {
                        break;
                    }
                }
            }
            StringBuilder where = new StringBuilder("no end, at");
            for (StackTraceElement element : thread.getStackTrace()) {
                where.append("\n    ").append(element);
            }
            return where.toString();
        } catch (ExecutionException fault) {
            StringWriter words = new StringWriter();
            fault.getCause().printStackTrace(new PrintWriter(words));
            return words.toString().lines().limit(12).reduce("", (a, b) -> a + "\n    " + b);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return fail(interrupted);
        }
    }
}
