package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    private static final List<String> COLOURS = List.of("#f2dc8c", "#e39a9a", "#7d8f4a", "#b4512d", "#1d2440");

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

    /** As rough tracing leaves them: shapes of many corners, far smaller than the trap, all in one square millimetre. */
    @Test
    void raggedShapesFarSmallerThanTheTrapEnd() throws IOException {
        ragged(100);
    }

    @ParameterizedTest
    @ValueSource(ints = {228, 400})
    @Tag("long")
    void manyRaggedShapesFarSmallerThanTheTrapEnd(int shapes) throws IOException {
        ragged(shapes);
    }

    private static void ragged(int shapes) throws IOException {
        Random random = new Random(5);
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='20mm' viewBox='0 0 20 20'>"
                        + "<rect width='20' height='20' fill='#f2dc8c'/>");
        for (int i = 0; i < shapes; i++) {
            double x = 10 + random.nextDouble();
            double y = 10 + random.nextDouble();
            double size = (0.6 + 1.2 * random.nextDouble()) / Math.sqrt(shapes);
            svg.append("<path fill='")
                    .append(COLOURS.get(random.nextInt(COLOURS.size())))
                    .append("' d='M");
            for (int k = 0; k < 24; k++) {
                double radius = size * (0.4 + 0.9 * random.nextDouble());
                svg.append(String.format(
                        Locale.ROOT,
                        "%.4f %.4f ",
                        x + radius * Math.cos(k * Math.PI / 12),
                        y + radius * Math.sin(k * Math.PI / 12)));
            }
            svg.append("z'/>");
        }
        Artwork artwork = SvgReader.read(
                "rags.svg",
                new ByteArrayInputStream(svg.append("</svg>").toString().getBytes(StandardCharsets.UTF_8)),
                ReadOptions.DEFAULT);
        Job job = JobReader.read("job.yaml", "{register: 0.46 mm, use: {trap: {width: 0.46 mm}}}");
        Separator separator = new Separator(Press.plugins());
        assertTimeoutPreemptively(
                Duration.ofSeconds(CPU_SECONDS), () -> separator.inspect(separator.separate(artwork, job), job));
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
