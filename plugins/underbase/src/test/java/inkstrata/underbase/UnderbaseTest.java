package inkstrata.underbase;

import static inkstrata.plan.PlanningExample.row;
import static inkstrata.plan.PlanningExample.start;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.measure.Size;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlannedColour;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Discs;
import inkstrata.separation.Finding;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** That an opaque white is printed first on dark sheets and stays behind the edge: common practice, no source. */
class UnderbaseTest {
    private static final Rgb BLACK = Rgb.parse("#15161a");
    private static final Ink GOLD = ink("gold", "#e8b83a", 0.8);
    private static final Ink ROSE = ink("rose", "#d86070", 0.7);
    private static final Ink CHALK = ink("chalk", "#f4f2ea", 1);
    private static final Job ON = job("enabled: true");
    private static final double CHOKE_MM = 0.3;

    @Test
    void isFoundAtTheDoor() {
        Plugins found = Plugins.load(getClass().getClassLoader());
        assertThat(found.planners()).hasExactlyElementsOfTypes(Underbase.class);
        assertThat(found.shapers()).hasExactlyElementsOfTypes(Choke.class);
        assertThat(found.inspectors()).hasExactlyElementsOfTypes(SheetColours.class);
    }

    @Test
    void doesNothingUnlessItIsAskedFor() {
        PrintPlan before = start(List.of(GOLD));
        assertThat(new Underbase().plan(table(BLACK, List.of(GOLD)), before, Job.DEFAULT))
                .isEqualTo(before);
    }

    @Test
    void liesFirstBeneathAllThatDoesNotHideTheSheet() {
        PrintPlan plan = new Underbase().plan(table(BLACK, List.of(GOLD, CHALK)), start(List.of(GOLD, CHALK)), ON);
        assertThat(plan.pulls()).extracting(pull -> pull.ink().name()).containsExactly("underbase", "gold", "chalk");
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.of(1));
        assertThat(plan.pulls().get(0).ground()).isTrue();
        assertThat(plan.decisions())
                .singleElement()
                .extracting(Decision::what)
                .asString()
                .contains("chalk (0.0)");
    }

    @Test
    void behindAClearSheetThatIsSeenBeforeWhiteNothingNeedsIt() {
        PlanningTable table = table(BLACK, List.of(GOLD));
        PlanningTable back =
                new PlanningTable(new Sheet(new Size(100, 100), BLACK, Side.BACK), table.inks(), table.rows());
        assertThat(new Underbase()
                        .plan(back, start(List.of(GOLD)), job("enabled: true, tolerance: 0"))
                        .pulls())
                .extracting(pull -> pull.ink().name())
                .last()
                .isEqualTo("gold");
    }

    @Test
    void nothingIsPrintedWhereNothingNeedsIt() {
        PrintPlan plan = new Underbase().plan(table(Rgb.WHITE, List.of(GOLD)), start(List.of(GOLD)), ON);
        assertThat(plan.pulls()).extracting(Pull::ink).containsExactly(GOLD);
        assertThat(plan.decisions()).singleElement().extracting(Decision::what).isEqualTo("No ground is printed.");
    }

    @Test
    void anInkOfTheJobIsGroundAndShowsAsWell() {
        PrintPlan plan = new Underbase()
                .plan(table(BLACK, List.of(GOLD, CHALK)), knockedOut(GOLD, CHALK), job("enabled: true, ink: chalk"));
        assertThat(plan.pulls()).extracting(Pull::ink).containsExactly(CHALK, GOLD);
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.of(1, 2));
        assertThatThrownBy(() -> new Underbase()
                        .plan(table(BLACK, List.of(GOLD)), knockedOut(GOLD), job("enabled: true, ink: chulk")))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("'chulk', which no ink is called");
    }

    /** Over it colours come out as drawn, on the bare sheet they do not. */
    @Test
    void coloursComeOutOverIt() {
        Separation bare =
                onBlack(new FlatDrawing(60, 40).fill(GOLD, Outline.rectangle(5, 5, 20, 20)), "enabled: false", GOLD);
        Separation based =
                onBlack(new FlatDrawing(60, 40).fill(GOLD, Outline.rectangle(5, 5, 20, 20)), "enabled: true", GOLD);
        assertThat(PlannedColour.of(bare.table(), bare.plan()).get(1).difference())
                .isGreaterThan(5);
        assertThat(PlannedColour.of(based.table(), based.plan()).get(1).difference())
                .isLessThan(2);
        assertThat(new SheetColours().inspect(bare, job("enabled: false")).findings())
                .extracting(Finding::rule)
                .containsExactly("sheet colour");
        assertThat(new SheetColours().inspect(based, ON).findings())
                .extracting(Finding::rule)
                .containsExactly("ground looks out");
        assertThat(new SheetColours()
                        .inspect(based, job("enabled: true, choke: 0.4 mm"))
                        .findings())
                .isEmpty();
    }

    @Test
    void isChokedByClosedForms() {
        double c = CHOKE_MM;
        assertThat(ground(new FlatDrawing(60, 40).fill(GOLD, Outline.rectangle(5, 5, 20, 10)), GOLD)
                        .areaMm2())
                .as("rectangle")
                .isCloseTo((20 - 2 * c) * (10 - 2 * c), within(1e-3));
        assertThat(ground(new FlatDrawing(60, 40).fill(GOLD, Discs.circle(30, 20, 15)), GOLD)
                        .areaMm2())
                .as("disc")
                .isCloseTo(Math.PI * (15 - c) * (15 - c), within(0.3));
        assertThat(ground(
                                new FlatDrawing(60, 40)
                                        .fill(GOLD, Discs.circle(30, 20, 15))
                                        .fill(BLACK, Discs.circle(30, 20, 6)),
                                GOLD)
                        .areaMm2())
                .as("ring")
                .isCloseTo(Math.PI * ((15 - c) * (15 - c) - (6 + c) * (6 + c)), within(0.4));
        FlatDrawing two = new FlatDrawing(60, 40)
                .fill(GOLD, Outline.rectangle(5, 5, 20, 10))
                .fill(ROSE, Outline.rectangle(25, 5, 12, 10));
        assertThat(ground(two, GOLD, ROSE).areaMm2())
                .as("two that meet")
                .isCloseTo((32 - 2 * c) * (10 - 2 * c), within(1e-3));
        FlatDrawing beside = new FlatDrawing(60, 40)
                .fill(GOLD, Outline.rectangle(5, 5, 20, 10))
                .fill(CHALK, Outline.rectangle(25, 5, 12, 10));
        assertThat(ground(beside, GOLD, CHALK).areaMm2())
                .as("beside one that does without it reaches beneath that by the choke")
                .isCloseTo(20 * (10 - 2 * c), within(1e-3));
    }

    /** It lies beneath inks everywhere, at least the choke behind their edge, and leaves nothing farther in without it. */
    @Test
    void holdsItsLawsOnAnyDrawing() {
        int grounds = 0;
        for (long number = 0; number < 60; number++) {
            Separation drawn = planned(RandomDrawing.of(number, 1), "enabled: true");
            Separation choked = new Choke().shape(drawn, ON);
            if (!choked.plan().pulls().get(0).ground()
                    || choked.printed().get(0).isEmpty()) {
                continue;
            }
            grounds++;
            Region ground = choked.printed().get(0);
            Region inked =
                    Region.union(choked.printed().subList(1, choked.printed().size()));
            Region needing = drawn.map().dissolve(drawn.plan().pulls().get(0).prints());
            assertThat(ground.minus(inked.shrunk(CHOKE_MM - 0.002)).areaMm2())
                    .as("drawing %d: behind the edge", number)
                    .isLessThan(1e-3);
            assertThat(needing.shrunk(CHOKE_MM + 0.002).minus(ground).areaMm2())
                    .as("drawing %d: beneath all that needs it", number)
                    .isLessThan(1e-3);
        }
        assertThat(grounds).isGreaterThan(50);
    }

    private static Region ground(FlatDrawing drawing, Ink... inks) {
        return onBlack(drawing, "enabled: true", inks).printed().get(0);
    }

    private static Separation onBlack(FlatDrawing drawing, String options, Ink... inks) {
        return new Choke().shape(planned(drawing.knockedOut(inks), options), job(options));
    }

    /** The same on a black sheet, with a ground. */
    private static Separation planned(Separation drawn, String options) {
        List<PlanningTable.Row> rows = new ArrayList<>();
        for (PlanningTable.Row row : drawn.table().rows()) {
            List<Optional<Ink>> inks = row.inks();
            rows.add(new PlanningTable.Row(row.stack(), row.paints(), inks, row.areaMm2()));
        }
        PlanningTable table = new PlanningTable(
                new Sheet(drawn.table().sheet().size(), BLACK, Side.FRONT),
                drawn.table().inks(),
                rows);
        PrintPlan plan = new Underbase().plan(table, drawn.plan(), job(options));
        List<Region> printed = plan.pulls().stream()
                .map(pull -> drawn.map().dissolve(pull.prints()))
                .toList();
        return new Separation(drawn.artwork(), drawn.map(), table, plan, printed, List.of());
    }

    /** A stack for each ink, after a bare one. */
    private static PlanningTable table(Rgb sheet, List<Ink> inks) {
        List<PlanningTable.Row> rows = new ArrayList<>(List.of(row(0)));
        inks.forEach(ink -> rows.add(row(rows.size(), ink)));
        return new PlanningTable(new Sheet(new Size(100, 100), sheet, Side.FRONT), inks, rows);
    }

    private static PrintPlan knockedOut(Ink... inks) {
        List<Pull> pulls = new ArrayList<>();
        for (Ink ink : inks) {
            pulls.add(new Pull(ink, StackSet.of(pulls.size() + 1)));
        }
        return new PrintPlan(pulls, List.of());
    }

    private static Ink ink(String name, String swatch, double hiding) {
        return new Ink(name, Rgb.parse(swatch), hiding, Optional.empty(), false);
    }

    private static Job job(String options) {
        return JobReader.read("job.yaml", "use: {underbase: {" + options + "}}");
    }
}
