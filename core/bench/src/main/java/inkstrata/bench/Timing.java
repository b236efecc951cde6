package inkstrata.bench;

import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * What one turn of a benchmark took.
 *
 * @param ms the median of its iterations, in milliseconds a pass
 */
record Timing(double ms) {
    /** How often those to be compared take turns. */
    static final int TURNS = 3;

    /** How a JVM is started. */
    enum Flags {
        /** As Java chooses, but for a heap that suits the peers. */
        WARM("-Xmx4g -XX:+UseParallelGC"),
        /** As the launcher starts the tool. */
        LAUNCHER("-XX:+UseSerialGC -XX:TieredStopAtLevel=1"),
        /** The same in little memory. */
        LAUNCHER_ONE_GIB("-Xmx1g -XX:+UseSerialGC -XX:TieredStopAtLevel=1");

        private final String words;

        Flags(String words) {
            this.words = words;
        }
    }

    /** One fresh JVM; all warm up for the same time, the fast ones with more passes. */
    static Timing warm(String benchmark, String drawings) throws RunnerException {
        return median(options(benchmark, Flags.WARM, drawings)
                .mode(Mode.AverageTime)
                .warmupIterations(2)
                .warmupTime(TimeValue.seconds(7))
                .measurementIterations(3)
                .measurementTime(TimeValue.seconds(2))
                .forks(1));
    }

    /** The median of the first passes of fresh JVMs. */
    static Timing first(String benchmark, Flags flags, String drawings) throws RunnerException {
        return median(options(benchmark, flags, drawings)
                .mode(Mode.SingleShotTime)
                .warmupIterations(0)
                .measurementIterations(1)
                .forks(TURNS));
    }

    private static ChainedOptionsBuilder options(String benchmark, Flags flags, String drawings) {
        return new OptionsBuilder()
                .include("inkstrata\\.bench\\." + benchmark.replace(".", "\\.") + "$")
                .param("drawing", drawings)
                .jvmArgs(flags.words.split(" ", -1))
                .verbosity(VerboseMode.SILENT)
                .shouldFailOnError(true);
    }

    private static Timing median(ChainedOptionsBuilder options) throws RunnerException {
        Collection<RunResult> results = new Runner(options.build()).run();
        return new Timing(
                results.iterator().next().getPrimaryResult().getStatistics().getPercentile(50));
    }

    static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int n = sorted.size();
        return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
    }
}
