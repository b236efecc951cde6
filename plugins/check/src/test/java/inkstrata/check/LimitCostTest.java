package inkstrata.check;

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

/** What the register limit costs beside making the map, on discs in twelve inks with traps of 0.4 mm; both in one run. */
@Tag("long")
class LimitCostTest {
    private static final int INKS = 12;
    private static final int RUNS = 5;

    @Test
    void costGrowsInLineWithTheDrawing() {
        int[] discs = {400, 1600, 6400};
        double[] seconds = new double[discs.length];
        for (int i = 0; i < discs.length; i++) {
            Ink[] inks = Discs.inks(INKS);
            FlatDrawing drawing = Discs.drawing(discs[i], inks);
            Separation trapped = SimulationTest.trapped(drawing.knockedOut(inks));
            MapSettings settings = MapSettings.DEFAULT.withDepth(1);
            double map = Stopwatch.least(
                    RUNS,
                    () -> PlanarMapper.map(drawing.artwork(), settings).stacks().size());
            Simulation simulation = new Simulation(discs[i] + " discs", trapped, 0.4);
            seconds[i] = Stopwatch.least(
                    RUNS, () -> 1 + simulation.limit().openings().size());
            System.out.printf(
                    Locale.ROOT,
                    "%d discs: map %.3f s, limit %.3f s, ratio %.2f, openings %d%n",
                    discs[i],
                    map,
                    seconds[i],
                    seconds[i] / map,
                    simulation.limit().openings().size());
        }
        double exponent = Math.log(seconds[2] / seconds[0]) / Math.log(discs[2] / (double) discs[0]);
        System.out.printf(Locale.ROOT, "exponent %.2f%n", exponent);
        assertThat(exponent).isLessThan(1.15);
    }
}
