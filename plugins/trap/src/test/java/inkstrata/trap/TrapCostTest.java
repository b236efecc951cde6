package inkstrata.trap;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.plan.Ink;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMapper;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.LongSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a trap costs beside making the map, on discs in twelve inks, three deep on the average; both in one run. */
@Tag("long")
class TrapCostTest {
    private static final int INKS = 12;
    private static final int RUNS = 7;

    @Test
    void costGrowsInLineWithTheDrawing() {
        double[] seconds = new double[3];
        int[] discs = {400, 1600, 6400};
        for (int i = 0; i < discs.length; i++) {
            Ink[] inks = inks();
            FlatDrawing drawing = drawing(discs[i], inks);
            Separation drawn = drawing.knockedOut(inks);
            MapSettings settings = MapSettings.DEFAULT.withDepth(1);
            double map = seconds(
                    () -> PlanarMapper.map(drawing.artwork(), settings).stacks().size());
            seconds[i] = seconds(() ->
                    new Trap().shape(drawn, TrapJob.with(0.4, "round")).notes().size());
            System.out.printf(
                    Locale.ROOT,
                    "%d discs: map %.3f s, trap %.3f s, ratio %.2f%n",
                    discs[i],
                    map,
                    seconds[i],
                    seconds[i] / map);
        }
        double exponent = Math.log(seconds[2] / seconds[0]) / Math.log(discs[2] / (double) discs[0]);
        System.out.printf(Locale.ROOT, "exponent %.2f%n", exponent);
        assertThat(exponent).isLessThan(1.15);
    }

    private static double seconds(LongSupplier work) {
        double[] times = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            long before = System.nanoTime();
            assertThat(work.getAsLong()).isPositive();
            times[run] = (System.nanoTime() - before) * 1e-9;
        }
        return Arrays.stream(times).min().orElseThrow();
    }

    private static Ink[] inks() {
        return IntStream.range(0, INKS)
                .mapToObj(i -> new Ink(
                        "ink " + i, new Rgb(250 - 20 * i, 240 - 19 * i, 220 - 15 * i), 0.9, Optional.empty(), false))
                .toArray(Ink[]::new);
    }

    private static FlatDrawing drawing(int discs, Ink... inks) {
        Random random = new Random(discs);
        double side = Math.sqrt(discs / 3.0 * Math.PI) * 8;
        FlatDrawing drawing = new FlatDrawing(side, side);
        for (int i = 0; i < discs; i++) {
            drawing.fill(
                    inks[random.nextInt(inks.length)],
                    circle(side * random.nextDouble(), side * random.nextDouble(), 2 + 10 * random.nextDouble()));
        }
        return drawing;
    }

    private static Outline circle(double x, double y, double r) {
        double k = 0.5522847498307936 * r;
        Outline.Builder c = Outline.builder();
        c.moveTo(x + r, y);
        c.cubicTo(x + r, y + k, x + k, y + r, x, y + r);
        c.cubicTo(x - k, y + r, x - r, y + k, x - r, y);
        c.cubicTo(x - r, y - k, x - k, y - r, x, y - r);
        c.cubicTo(x + k, y - r, x + r, y - k, x + r, y);
        return c.build();
    }
}
