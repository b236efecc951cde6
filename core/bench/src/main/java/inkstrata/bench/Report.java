package inkstrata.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs all benchmarks and prints what matters: ratios to the peer in the same run, growth, first passes, memory. */
public final class Report {
    private static final String[] WIDE = {"blobs-1000", "blobs-2000", "blobs-4000", "blobs-8000", "blobs-16000"};
    private static final String[] DEEP = {"deep-1000", "deep-2000", "deep-4000", "deep-8000", "deep-16000"};

    private Report() {}

    public static void main(String[] arguments) throws RunnerException {
        List<String> lines = new ArrayList<>();
        for (String drawing : List.of("blobs-8000", "flags-20")) {
            Map<String, Double> ours = warm(MapBenchmark.class, "-Xmx4g", 0, drawing);
            Map<String, Double> peers = warm(PeerBenchmark.class, "-Xmx4g", -1, drawing);
            double fasterPeer = peers.values().stream()
                    .mapToDouble(Double::doubleValue)
                    .min()
                    .orElseThrow();
            peers.forEach((name, ms) -> lines.add(line("%-44s %9.1f ms", name, ms)));
            ours.forEach((name, ms) -> lines.add(
                    line("%-44s %9.1f ms   %.1f times as fast as the faster peer", name, ms, fasterPeer / ms)));
        }
        for (String[] series : List.of(WIDE, DEEP)) {
            for (int depth : new int[] {0, 1}) {
                Map<String, Double> times = warm(MapBenchmark.class, "-Xmx4g", depth, series);
                times.forEach((name, ms) -> lines.add(line("%-44s %9.1f ms", name, ms)));
                double[] ms = new double[series.length];
                for (int i = 0; i < series.length; i++) {
                    ms[i] = times.get("map " + series[i] + depthName(depth));
                }
                lines.add(line(
                        "exponent from 1,000 to 16,000 shapes, %s: %.2f",
                        depthName(depth).isEmpty() ? "whole stacks" : "top paint only", exponent(ms)));
            }
        }
        warm(MapBenchmark.class, "-Xmx4g", 0, "sunburst-500", "sunburst-1000")
                .forEach((name, ms) -> lines.add(line("%-44s %9.1f ms", name, ms)));
        warm(MapBenchmark.class, "-Xmx1g", 0, "counties")
                .forEach((name, ms) -> lines.add(line("%-44s %9.1f ms   in -Xmx1g", name, ms)));
        firstPass("blobs-8000", "flags-20", "counties")
                .forEach((name, ms) -> lines.add(line("%-44s %9.1f ms   first pass of a fresh JVM", name, ms)));
        System.out.println();
        lines.forEach(System.out::println);
    }

    private static Map<String, Double> warm(Class<?> benchmark, String heap, int depth, String... drawings)
            throws RunnerException {
        return run(benchmark, heap, depth, 3, 5, 1, drawings);
    }

    private static Map<String, Double> firstPass(String... drawings) throws RunnerException {
        return run(MapBenchmark.class, "-Xmx1g", 0, 0, 1, 5, drawings);
    }

    /** The median time of each benchmark and drawing in milliseconds. */
    private static Map<String, Double> run(
            Class<?> benchmark, String heap, int depth, int warmups, int passes, int forks, String... drawings)
            throws RunnerException {
        ChainedOptionsBuilder options = new OptionsBuilder()
                .include(benchmark.getName() + "\\..*")
                .param("drawing", drawings)
                .warmupIterations(warmups)
                .measurementIterations(passes)
                .forks(forks)
                .jvmArgs(heap, "-XX:TieredStopAtLevel=1", "-XX:+UseParallelGC")
                .verbosity(VerboseMode.SILENT);
        if (depth >= 0) {
            options.param("depth", Integer.toString(depth));
        }
        Map<String, Double> medians = new TreeMap<>();
        for (RunResult result : new Runner(options.build()).run()) {
            String method = result.getParams().getBenchmark();
            medians.put(
                    method.substring(method.lastIndexOf('.') + 1) + " "
                            + result.getParams().getParam("drawing") + depthName(depth),
                    result.getPrimaryResult().getStatistics().getPercentile(50));
        }
        return medians;
    }

    private static String depthName(int depth) {
        return depth == 1 ? ", top paint only" : "";
    }

    /** Slope of log time over log size, by least squares; sizes double from one to the next. */
    private static double exponent(double... ms) {
        double meanX = (ms.length - 1) / 2.0;
        double meanY = 0;
        for (double t : ms) {
            meanY += Math.log(t) / Math.log(2) / ms.length;
        }
        double xy = 0;
        double xx = 0;
        for (int i = 0; i < ms.length; i++) {
            xy += (i - meanX) * (Math.log(ms[i]) / Math.log(2) - meanY);
            xx += (i - meanX) * (i - meanX);
        }
        return xy / xx;
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
