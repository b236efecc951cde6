package inkstrata.trap;

import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Lab;
import inkstrata.house.HowMany;
import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What holds for any drawing; each failure names its seed. */
class TrapLawsTest {
    private static final int DRAWINGS = HowMany.of(170);
    private static final int POINTS = 60;
    private static final double WIDTH = 0.4;

    /** Facets around arcs reach that much farther. */
    private static final double FACETS = 1.0015;

    private static final List<Ink> INKS = RandomDrawing.INKS;

    @Test
    void noRimOnBareSheetOrAThirdColour() {
        each((seed, drawn, trapped) -> {
            for (int pull = 0; pull < INKS.size(); pull++) {
                Region before = drawn.printed().get(pull);
                Region after = trapped.printed().get(pull);
                // Where a rim ends at an edge, or passes it by less than half a step, that edge bends to the grid.
                Region lost = before.minus(after);
                assertThat(lost.shrunk(Grid.STEP_MM).areaMm2())
                        .as("drawing %s lost ink", seed)
                        .isZero();
                assertThat(lost.areaMm2())
                        .as("drawing %s lost ink", seed)
                        .isLessThanOrEqualTo(before.perimeterMm() * Grid.STEP_MM / 2);
                // Where a rim's side cuts an oblique edge the cut is rounded by half a step: that much is shaved off
                // first.
                Region beyond = after.minus(before).minus(drawn.map().dissolve(darker(drawn, pull)));
                assertThat(beyond.shrunk(Grid.STEP_MM).areaMm2())
                        .as("drawing %s, pull %s", seed, pull)
                        .isZero();
                assertThat(beyond.areaMm2())
                        .as("drawing %s, pull %s", seed, pull)
                        .isLessThan(1e-3);
            }
        });
    }

    /** Points at random in all darker colours: covered if the way to the border is short and runs within them, bare if the border is far. */
    @Test
    void everyRimReachesItsWidthAndNoFarther() {
        int[] covered = {0, 0};
        each((seed, drawn, trapped) -> {
            Random random = new Random(seed);
            for (int i = 0; i < POINTS; i++) {
                double x = Probe.steps(1 + 10 * random.nextDouble());
                double y = Probe.steps(1 + 10 * random.nextDouble());
                for (int pull = 0; pull < INKS.size(); pull++) {
                    check(seed, drawn, trapped, pull, x, y, covered);
                }
            }
        });
        assertThat(covered[0]).as("points that had to be covered").isGreaterThan(DRAWINGS);
        assertThat(covered[1]).as("points that had to stay free").isGreaterThan(DRAWINGS);
    }

    private static void check(
            long seed, Separation drawn, Separation trapped, int pull, double x, double y, int[] covered) {
        OptionalInt stack = stackAt(drawn, x, y);
        if (stack.isEmpty() || Probe.inside(drawn.printed().get(pull), x, y)) {
            return;
        }
        StackSet receiver = darker(drawn, pull);
        double[] nearest = {Double.POSITIVE_INFINITY, 0, 0};
        if (receiver.contains(stack.getAsInt())) {
            List<int[]> border =
                    Probe.sharedEdges(drawn.printed().get(pull), drawn.map().dissolve(receiver));
            nearest = Probe.nearest(border, x, y);
        }
        double width = Probe.steps(WIDTH);
        boolean inside = Probe.inside(trapped.printed().get(pull), x, y);
        if (nearest[0] > width * FACETS + 2) {
            covered[1]++;
            assertThat(inside)
                    .as("drawing %s, pull %s, free at %s, %s", seed, pull, x, y)
                    .isFalse();
        } else if (nearest[0] < width - 2 && free(drawn, receiver, x, y, nearest)) {
            covered[0]++;
            assertThat(inside)
                    .as("drawing %s, pull %s, covered at %s, %s", seed, pull, x, y)
                    .isTrue();
        }
    }

    /** Pulls print light to dark, so every rim lies under what was there; outlines may bend to the grid. */
    @Test
    void theTopColourStaysEverywhere() {
        each((seed, drawn, trapped) -> {
            Random random = new Random(seed);
            for (int i = 0; i < POINTS; i++) {
                double x = Probe.steps(12 * random.nextDouble());
                double y = Probe.steps(12 * random.nextDouble());
                if (Probe.nearestOutline(drawn.printed(), x, y) > 1) {
                    assertThat(top(trapped, x, y))
                            .as("drawing %s at %s, %s", seed, x, y)
                            .isEqualTo(top(drawn, x, y));
                }
            }
        });
    }

    /** Vertices on lines that are straight but for rounding come and go, needles thinner than a step lose their tips; the rest stays. */
    @Test
    void outlinesAwayFromRimsStay() {
        each((seed, drawn, trapped) -> {
            for (int pull = 0; pull < INKS.size(); pull++) {
                Region before = drawn.printed().get(pull);
                Region after = trapped.printed().get(pull);
                Region near = after.minus(before).grown(2 * Grid.STEP_MM, Corners.MITRE);
                String which = "drawing " + seed + ", pull " + pull;
                assertThat(farthestVertex(before, after, near)).as(which).isLessThanOrEqualTo(1);
                assertThat(farthestVertex(after, before, near)).as(which).isLessThanOrEqualTo(1);
            }
        });
    }

    /** How far a vertex of one region that is not near a rim may lie from the other's outline, in grid steps. */
    private static double farthestVertex(Region one, Region other, Region near) {
        List<int[]> outline = Probe.edges(other);
        return Probe.edges(one).stream()
                .filter(edge -> !Probe.endsInANeedle(edge) && !Probe.inside(near, edge[2], edge[3]))
                .mapToDouble(edge -> Probe.nearest(outline, edge[2], edge[3])[0])
                .max()
                .orElse(0);
    }

    @Test
    void twiceIsTheSame() {
        for (long seed = 0; seed < HowMany.of(20); seed++) {
            assertThat(trapped(drawn(seed)).printed())
                    .isEqualTo(trapped(drawn(seed)).printed());
        }
    }

    @Test
    void anyNumberOfThreadsGivesTheSame() {
        for (long seed = 0; seed < HowMany.of(20); seed++) {
            assertThat(trapped(drawn(seed, 3)).printed())
                    .as("drawing %s", seed)
                    .isEqualTo(trapped(drawn(seed)).printed());
        }
    }

    private interface Law {
        void check(long seed, Separation drawn, Separation trapped);
    }

    private record Case(long seed, Separation drawn, Separation trapped) {}

    private static List<Case> cases = List.of();

    @BeforeAll
    static void draw() {
        cases = LongStream.range(0, DRAWINGS)
                .mapToObj(seed -> {
                    Separation drawn = drawn(seed);
                    return new Case(seed, drawn, trapped(drawn));
                })
                .toList();
    }

    @AfterAll
    static void forget() {
        cases = List.of();
    }

    private static void each(Law law) {
        cases.forEach(each -> law.check(each.seed, each.drawn, each.trapped));
    }

    private static Separation trapped(Separation drawn) {
        return new Trap().shape(drawn, TrapJob.with(WIDTH, "round"));
    }

    private static Separation drawn(long seed) {
        return RandomDrawing.of(seed, 1);
    }

    private static Separation drawn(long seed, int threads) {
        return RandomDrawing.of(seed, threads);
    }

    /** The stacks whose top colour is darker than that pull's, from the table alone. */
    private static StackSet darker(Separation drawn, int pull) {
        double own = lightness(drawn.plan().pulls().get(pull).ink());
        return StackSet.of(drawn.table().rows().stream()
                .filter(row -> row.top().filter(top -> lightness(top) < own).isPresent())
                .mapToInt(Row::stack));
    }

    private static double lightness(Ink ink) {
        return Lab.of(ink.swatch()).lightness();
    }

    private static OptionalInt top(Separation separation, double x, double y) {
        return IntStream.range(0, separation.printed().size())
                .filter(pull -> Probe.inside(separation.printed().get(pull), x, y))
                .max();
    }

    private static OptionalInt stackAt(Separation drawn, double x, double y) {
        OptionalInt top = top(drawn, x, y);
        if (top.isEmpty()) {
            return OptionalInt.empty();
        }
        Pull shown = drawn.plan().pulls().get(top.getAsInt());
        return shown.prints().numbers().findFirst();
    }

    /** Whether the straight way from the place to the border runs within the receiver. */
    private static boolean free(Separation drawn, StackSet receiver, double x, double y, double[] nearest) {
        Region region = drawn.map().dissolve(receiver);
        return IntStream.range(0, 400)
                .allMatch(i -> Probe.inside(
                        region, x + (nearest[1] - x) * (i + 0.5) / 401, y + (nearest[2] - y) * (i + 0.5) / 401));
    }
}
