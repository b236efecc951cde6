package inkstrata.bench;

import inkstrata.bench.Timing.Flags;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.runner.RunnerException;

/**
 * Measures the map and its peers and prints each figure beside the bound it must keep; ends in an error where one is not
 * kept.
 *
 * <p>Ours runs as the tool runs it, on all processors, and dissolves the region of each colour, which the peers leave out;
 * they know one thread, and what ours takes on one is printed beside. Growth is measured on one thread. Those to be
 * compared take turns, a fresh JVM for each turn that warms up for as long as the others do, and the median counts.
 */
public final class Report {
    private static final int[] SIZES = {1000, 2000, 4000, 8000, 16000};

    private final List<Figure> figures = new ArrayList<>();

    private Report() {}

    /**
     * One line of the report.
     *
     * @param bound what must hold, in words; empty for a figure that is only reported
     */
    private record Figure(String name, String value, String bound, boolean holds) {}

    /** Takes some minutes; no arguments. */
    public static void main(String[] arguments) throws RunnerException {
        Report report = new Report();
        report.memory();
        report.firstPass("blobs-8000");
        report.firstPass("flags-20");
        report.growth("blobs", 1.05);
        report.growth("deep", 1.1);
        report.besidePeers("blobs-8000", 8);
        report.besidePeers("flags-20", 5);
        report.print();
    }

    /** A peer counts where it gives the same answer. */
    private void besidePeers(String drawings, double atLeast) throws RunnerException {
        List<Peer> peers = new ArrayList<>();
        for (Peer peer : Peer.ALL) {
            double difference = peer.difference(drawings);
            boolean right = difference <= Peer.MOST_DIFFERENCE;
            say(
                    drawings + ": " + peer.method() + ", largest difference of a colour, share of the canvas",
                    "%.1e",
                    difference,
                    right ? "" : "wrong: left out",
                    true);
            if (right) {
                peers.add(peer);
            }
        }
        List<List<Double>> ratios = new ArrayList<>();
        peers.forEach(peer -> ratios.add(new ArrayList<>()));
        List<Double> slower = new ArrayList<>();
        for (int turn = 0; turn < Timing.TURNS; turn++) {
            double ours = Timing.warm("MapBenchmark.map", drawings).ms();
            slower.add(Timing.warm("MapBenchmark.mapOnOneThread", drawings).ms() / ours);
            for (int i = 0; i < peers.size(); i++) {
                ratios.get(i)
                        .add(Timing.warm("PeerBenchmark." + peers.get(i).method(), drawings)
                                        .ms()
                                / ours);
            }
        }
        say(drawings + ": ours on one thread, times ours", "%.1f", Timing.median(slower), "", true);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < peers.size(); i++) {
            double ratio = Timing.median(ratios.get(i));
            say(drawings + ": " + peers.get(i).method() + ", times ours", "%.1f", ratio, "", true);
            least = Math.min(least, ratio);
        }
        say(
                drawings + ": as fast as the fastest peer",
                "%.1f times",
                least,
                String.format(Locale.ROOT, "at least %.0f times", atLeast),
                !peers.isEmpty() && least >= atLeast);
    }

    private void growth(String series, double atMost) throws RunnerException {
        List<List<Double>> times = new ArrayList<>();
        for (int i = 0; i < SIZES.length; i++) {
            times.add(new ArrayList<>());
        }
        for (int turn = 0; turn < Timing.TURNS; turn++) {
            for (int i = 0; i < SIZES.length; i++) {
                times.get(i)
                        .add(Timing.warm("MapBenchmark.mapOnOneThread", series + "-" + SIZES[i])
                                .ms());
            }
        }
        double exponent = exponent(times.stream().map(Timing::median).toList());
        say(
                series + ": exponent of time from 1,000 to 16,000 shapes",
                "%.2f",
                exponent,
                String.format(Locale.ROOT, "at most %.2f", atMost),
                exponent <= atMost);
    }

    /** Slope of log time over log size, by least squares; sizes double from one to the next. */
    private static double exponent(List<Double> ms) {
        double middle = (ms.size() - 1) / 2.0;
        double xy = 0;
        double xx = 0;
        for (int i = 0; i < ms.size(); i++) {
            xy += (i - middle) * Math.log(ms.get(i)) / Math.log(2);
            xx += (i - middle) * (i - middle);
        }
        return xy / xx;
    }

    private void firstPass(String drawings) throws RunnerException {
        double ms = Timing.first("MapBenchmark.map", Flags.LAUNCHER, drawings).ms();
        double warm = Timing.warm("MapBenchmark.map", drawings).ms();
        say(drawings + ": first pass of a fresh JVM, times a warm one", "%.1f", ms / warm, "", true);
    }

    /** A JVM that runs out of memory ends the whole report. */
    private void memory() throws RunnerException {
        double ms = Timing.first("MapBenchmark.map", Flags.LAUNCHER_ONE_GIB, "counties")
                .ms();
        say("counties: a map of 876,096 vertices in -Xmx1g", "%.0f ms", ms, "ends well", true);
    }

    private void say(String name, String format, double value, String bound, boolean holds) {
        Figure figure = new Figure(name, String.format(Locale.ROOT, format, value), bound, holds);
        System.out.println(line(figure));
        figures.add(figure);
    }

    private static String line(Figure figure) {
        String verdict = figure.bound().isEmpty() ? "" : figure.holds() ? "  kept" : "  NOT KEPT";
        return String.format(
                Locale.ROOT, "%-80s %12s   %-20s%s", figure.name(), figure.value(), figure.bound(), verdict);
    }

    private void print() {
        System.out.println();
        figures.forEach(figure -> System.out.println(line(figure)));
        long broken = figures.stream().filter(figure -> !figure.holds()).count();
        if (broken > 0) {
            throw new IllegalStateException(broken + " of " + figures.size() + " figures do not keep their bounds");
        }
    }
}
