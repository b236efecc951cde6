package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.house.HowMany;
import inkstrata.job.JobExample;
import inkstrata.planar.Neighbours;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import inkstrata.trap.Trap;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The limit against films that are moved and laid over each other by JTS 1.20, at random and the worst way.
 *
 * <p>{@code -Dlaws.drawings=1000 -Dlaws.from=0} asks for more drawings, or others.
 */
class SimulationTest {
    private static final int DRAWINGS = Integer.getInteger("laws.drawings", HowMany.of(40));
    private static final int FROM = Integer.getInteger("laws.from", 0);
    private static final double REGISTER_MM = 0.4;

    static LongStream drawings() {
        return LongStream.range(FROM, FROM + DRAWINGS);
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void whatHoldsShowsNoSheet(long seed) {
        simulation(seed).whatHoldsShowsNoSheet();
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void whatShowsWasNamed(long seed) {
        simulation(seed).whatShowsWasNamed();
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void beyondTheLimitSheetShows(long seed) {
        simulation(seed).beyondTheLimitSheetShows();
        new Simulation("drawing " + seed + " without traps", RandomDrawing.of(seed, 1), REGISTER_MM)
                .beyondTheLimitSheetShows();
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void whatRunsOnHoldsAsWell(long seed) {
        Simulation simulation =
                new Simulation("drawing " + seed + " running on", trapped(RandomDrawing.runningOn(seed)), REGISTER_MM);
        simulation.whatHoldsShowsNoSheet();
        simulation.beyondTheLimitSheetShows();
    }

    private static Simulation simulation(long seed) {
        return new Simulation("drawing " + seed, trapped(RandomDrawing.of(seed, 1)), REGISTER_MM);
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void inksThatTouchOpenAtOnceWithoutATrap(long seed) {
        Separation drawn = RandomDrawing.of(seed, 1);
        boolean touch = drawn.map().neighbours().stream()
                .anyMatch(pair -> isInked(drawn, pair.one()) && isInked(drawn, pair.other()) && differ(drawn, pair));
        assertThat(new Simulation("drawing", drawn, REGISTER_MM).limit().limitMm() == 0)
                .as("drawing %s", seed)
                .isEqualTo(touch);
    }

    private static boolean isInked(Separation drawn, int stack) {
        return drawn.plan().pulls().stream().anyMatch(pull -> pull.prints().contains(stack));
    }

    private static boolean differ(Separation drawn, Neighbours pair) {
        return drawn.plan().pulls().stream()
                .noneMatch(pull ->
                        pull.prints().contains(pair.one()) && pull.prints().contains(pair.other()));
    }

    static Separation trapped(Separation drawn) {
        return new Trap().shape(drawn, JobExample.using(REGISTER_MM, "trap", Map.of()));
    }
}
