package inkstrata.overprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import inkstrata.colour.Rgb;
import inkstrata.house.Stopwatch;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Size;
import inkstrata.plan.Ink;
import inkstrata.plan.PlannedColour;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.PrintingOrder;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.Neighbours;
import inkstrata.planar.Paint;
import inkstrata.planar.PaintStack;
import inkstrata.planar.StackSet;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What planning costs, without geometry; seconds are of the machine that runs it. */
@Tag("long")
class PlanningCostTest {
    private static final Sheet SHEET = new Sheet(new Size(100, 100), Rgb.WHITE, Side.FRONT);

    @Test
    void ordersAndOverprintsOfManyStacks() {
        PlanningTable table = table(40, 2_000, new Random(1));
        double seconds = Stopwatch.least(40, () -> {
            PrintingOrder order = PrintingOrder.of(table, List.of(), 0.4);
            PrintPlan plan = new PrintPlan(
                    order.inks().stream()
                            .map(ink -> new Pull(ink, StackSet.NONE))
                            .toList(),
                    order.decisions());
            plan = new Overprint().plan(table, plan, Job.DEFAULT);
            return PlannedColour.of(table, plan).size();
        });
        System.out.printf(Locale.ROOT, "cost: planning 40 inks on 2,000 stacks takes %.1f ms%n", 1000 * seconds);
        assertThat(seconds).isLessThan(0.05);
    }

    @Test
    void fewestScreensOfTwelveColours() {
        Job job = JobReader.read("job.yaml", "use: {overprint: {build: true}}");
        double worst = 0;
        int saved = 0;
        for (long seed = 0; seed < 60; seed++) {
            PlanningTable table = mixed(12, new Random(seed));
            long before = System.nanoTime();
            PrintPlan plan = new Overprint().plan(table, PlanningStart.of(table), job);
            worst = Math.max(worst, 1e-9 * (System.nanoTime() - before));
            saved += table.inks().size() - plan.pulls().size();
        }
        System.out.printf(
                Locale.ROOT, "cost: fewest screens of 12 colours, worst of 60: %.2f s, %d saved%n", worst, saved);
        assertThat(worst).isLessThan(2);
    }

    /** More colours than can be searched through: the effort ends it. */
    @Test
    void aSearchThatIsTooLongEnds() {
        Job job = JobReader.read("job.yaml", "use: {overprint: {build: true, tolerance: 12, maxFilms: 6}}");
        PlanningTable table = mixed(40, new Random(5));
        long before = System.nanoTime();
        PrintPlan plan = new Overprint().plan(table, PlanningStart.of(table), job);
        double seconds = 1e-9 * (System.nanoTime() - before);
        System.out.printf(Locale.ROOT, "cost: a search given up takes %.1f s%n", seconds);
        assertThat(plan.decisions()).anyMatch(decision -> decision.why().contains("given up"));
        assertThat(seconds).isLessThan(60);
    }

    /** Where nearly everything passes for everything there are many recipes; each that is looked at takes from the effort. */
    @ParameterizedTest
    @CsvSource({"20, 6, 3", "30, 6, 3", "45, 20, 3", "60, 100, 3", "60, 100, 8", "12, 100, 8", "63, 6, 2"})
    void aWideToleranceEnds(int colours, double tolerance, int films) {
        Job job = JobReader.read(
                "job.yaml", "use: {overprint: {build: true, tolerance: " + tolerance + ", maxFilms: " + films + "}}");
        PlanningTable table = mixed(colours, new Random(colours));
        long before = System.nanoTime();
        PrintPlan plan = assertTimeoutPreemptively(
                Duration.ofMinutes(5), () -> new Overprint().plan(table, PlanningStart.of(table), job));
        System.out.printf(
                Locale.ROOT,
                "cost: fewest screens of %d colours within %.0f of up to %d films: %.1f s, %d saved%n",
                colours,
                tolerance,
                films,
                1e-9 * (System.nanoTime() - before),
                colours - plan.pulls().size());
    }

    private static final class PlanningStart {
        static PrintPlan of(PlanningTable table) {
            return new PrintPlan(
                    table.inks().stream()
                            .map(ink -> new Pull(ink, StackSet.NONE))
                            .toList(),
                    List.of());
        }
    }

    private static PlanningTable table(int inks, int stacks, Random random) {
        List<Ink> all = new ArrayList<>();
        for (int i = 0; i < inks; i++) {
            all.add(new Ink("ink " + i, Rgb.of(random.nextInt(1 << 24)), 0.9, Optional.empty(), false));
        }
        List<Row> rows = new ArrayList<>();
        List<Neighbours> neighbours = new ArrayList<>();
        for (int stack = 0; stack < stacks; stack++) {
            List<Optional<Ink>> there = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                Ink ink = all.get(random.nextInt(inks));
                if (!there.contains(Optional.of(ink))) {
                    there.add(Optional.of(ink));
                }
            }
            rows.add(row(stack, there));
            for (int other = Math.max(0, stack - 5); other < stack; other++) {
                neighbours.add(new Neighbours(other, stack, random.nextDouble()));
            }
        }
        return new PlanningTable(SHEET, all, List.of(), rows, neighbours);
    }

    /** Clear inks, opaque ones, and what some of them make over each other. */
    private static PlanningTable mixed(int colours, Random random) {
        List<Ink> inks = new ArrayList<>();
        Prediction prediction = new Prediction(SHEET);
        while (inks.size() < colours) {
            boolean isMixed = inks.size() > 3 && random.nextInt(3) > 0;
            List<Ink> pile = new ArrayList<>();
            for (int i = 0; isMixed && i < 2 + random.nextInt(2); i++) {
                pile.add(inks.get(random.nextInt(4)));
            }
            Rgb swatch = isMixed
                    ? prediction.seen(pile.stream().distinct().toList()).rgb()
                    : Rgb.of(random.nextInt(1 << 24) | 0x404040);
            if (inks.stream().noneMatch(ink -> ink.swatch().equals(swatch))) {
                inks.add(new Ink(
                        "ink " + inks.size(), swatch, random.nextBoolean() ? 0.05 : 0.5, Optional.empty(), false));
            }
        }
        List<Row> rows = new ArrayList<>();
        inks.forEach(ink -> rows.add(row(rows.size(), List.of(Optional.of(ink)))));
        return new PlanningTable(SHEET, inks, List.of(), rows, List.of());
    }

    private static Row row(int stack, List<Optional<Ink>> inks) {
        List<Paint> paints =
                inks.stream().map(ink -> new Paint(ink.orElseThrow().swatch())).toList();
        return new Row(stack, new PaintStack(paints), inks, 1);
    }
}
