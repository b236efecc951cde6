package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.house.Stopwatch;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What closing strips costs beside the map without it, both in one run, on traced drawings in which every border is a strip. */
@Tag("long")
class SeamCostTest {
    private static final int RUNS = 5;

    @Test
    void costGrowsInLineWithTheDrawing() {
        int[] sides = {32, 64, 100, 128};
        double[] seconds = new double[sides.length];
        Artwork warm = SeamDrawings.traced(64, 5, 0.02, 2);
        Stopwatch.least(
                RUNS,
                () -> PlanarMapper.map(warm, MapSettings.DEFAULT.withDepth(3).withSeam(0.05))
                        .seams()
                        .size());
        for (int i = 0; i < sides.length; i++) {
            Artwork artwork = SeamDrawings.traced(sides[i], 5, 0.02, 1);
            MapSettings plain = MapSettings.DEFAULT.withDepth(3);
            double map = Stopwatch.least(
                    RUNS, () -> PlanarMapper.map(artwork, plain).stacks().size());
            seconds[i] = Stopwatch.least(
                    RUNS,
                    () -> PlanarMapper.map(artwork, plain.withSeam(0.05))
                            .seams()
                            .size());
            System.out.printf(
                    Locale.ROOT,
                    "%d shapes: map %.3f s, with strips closed %.3f s, ratio %.1f%n",
                    sides[i] * sides[i],
                    map,
                    seconds[i],
                    seconds[i] / map);
        }
        double exponent =
                Math.log(seconds[3] / seconds[0]) / Math.log(sides[3] * sides[3] / (double) (sides[0] * sides[0]));
        System.out.printf(Locale.ROOT, "exponent %.2f%n", exponent);
        assertThat(exponent).isLessThan(1.15);
    }
}
