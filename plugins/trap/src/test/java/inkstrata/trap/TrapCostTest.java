package inkstrata.trap;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.house.Stopwatch;
import inkstrata.plan.Ink;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMapper;
import inkstrata.separation.Discs;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.Locale;
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
            Ink[] inks = Discs.inks(INKS);
            FlatDrawing drawing = Discs.drawing(discs[i], inks);
            Separation drawn = drawing.knockedOut(inks);
            MapSettings settings = MapSettings.DEFAULT.withDepth(1);
            double map = Stopwatch.least(
                    RUNS,
                    () -> PlanarMapper.map(drawing.artwork(), settings).stacks().size());
            seconds[i] = Stopwatch.least(
                    RUNS,
                    () -> new Trap()
                            .shape(drawn, TrapJob.with(0.4, "round"))
                            .notes()
                            .size());
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
}
