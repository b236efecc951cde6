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
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Discs;
import inkstrata.separation.Finding;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import inkstrata.separation.Subject;
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
    private static final Ink PLAIN = ink("plain", "#ffffff", 0.9);
    private static final double CHOKE_MM = Job.DEFAULT.registerMm();

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
        assertThat(new SheetColours().inspect(based, ON).findings()).isEmpty();
    }

    /** A choke as wide as the register error never lets it look out: what is left out follows the register, and is never blamed. */
    @Test
    void theChokeFollowsTheRegister() {
        FlatDrawing square = new FlatDrawing(60, 40).fill(GOLD, Outline.rectangle(5, 5, 20, 20));
        for (double register : new double[] {0, 0.1, 0.3, 0.4, 1, 5}) {
            Job asked =
                    JobReader.read("job.yaml", "{register: " + register + " mm, use: {underbase: {enabled: true}}}");
            Separation based = new Choke().shape(onBlack(square, "enabled: false", GOLD), asked);
            Separation choked = new Choke().shape(planned(square.knockedOut(GOLD), "enabled: true"), asked);
            double side = 20 - 2 * register;
            assertThat(choked.printed().get(0).areaMm2()).as("%s mm", register).isCloseTo(side * side, within(1e-3));
            assertThat(new SheetColours().inspect(choked, asked).findings()).isEmpty();
            assertThat(based.printed()).hasSize(1);
        }
    }

    @Test
    void aChokeLessThanTheRegisterIsAFindingWithItsNumbers() {
        Job asked = JobReader.read("job.yaml", "{register: 0.4 mm, use: {underbase: {enabled: true, choke: 0.3 mm}}}");
        Separation based = new Choke()
                .shape(
                        planned(
                                new FlatDrawing(60, 40)
                                        .fill(GOLD, Outline.rectangle(5, 5, 20, 20))
                                        .knockedOut(GOLD),
                                "enabled: true"),
                        asked);
        assertThat(new SheetColours().inspect(based, asked).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.rule()).isEqualTo("ground looks out");
                    assertThat(finding.measured())
                            .isEqualTo("underbase stays 0.30 mm behind the edge of the inks over it");
                    assertThat(finding.remedy())
                            .isEqualTo(
                                    "Set underbase.choke to 0.40 mm or leave it out, or keep pulls closer to each other.");
                    assertThat(finding.subject())
                            .isEqualTo(Subject.ink("underbase").withPull(0));
                    assertThat(finding.quantity()).contains(Quantity.of(0.3, 0.4, Unit.MILLIMETRES));
                    assertThat(finding.area()).isEmpty();
                });
    }

    /** Two whites are one film and one screen; where the artwork's is to be seen it keeps its edge, elsewhere it stays behind. */
    @Test
    void whiteOfTheArtworkAndTheGroundShareOnePull() {
        FlatDrawing drawing = new FlatDrawing(60, 40)
                .fill(GOLD, Outline.rectangle(5, 5, 20, 10))
                .fill(PLAIN, Outline.rectangle(30, 5, 20, 10));
        Separation shared = onBlack(drawing, "enabled: true", GOLD, PLAIN);
        assertThat(shared.plan().pulls()).extracting(Pull::ink).containsExactly(PLAIN, GOLD);
        assertThat(shared.plan().decisions())
                .filteredOn(decision -> decision.about().equals("plain"))
                .extracting(Decision::what)
                .contains("It is the ground as well: one film and one screen for two whites.");
        double c = CHOKE_MM;
        assertThat(shared.printed().get(0).areaMm2()).isCloseTo((20 - 2 * c) * (10 - 2 * c) + 20 * 10, within(1e-3));
        assertThat(shared.printed().get(1).areaMm2()).isCloseTo(20 * 10, within(1e-3));
    }

    /** Where white shows beside an ink that it lies beneath as well there is no edge between the two, not even where both end. */
    @Test
    void aSharedWhiteRunsOnBeneathItsNeighbours() {
        FlatDrawing drawing = new FlatDrawing(60, 40)
                .fill(GOLD, Outline.rectangle(5, 5, 20, 10))
                .fill(PLAIN, Outline.rectangle(25, 5, 20, 10));
        double c = CHOKE_MM;
        assertThat(onBlack(drawing, "enabled: true", GOLD, PLAIN)
                        .printed()
                        .get(0)
                        .areaMm2())
                .isCloseTo((20 - c) * (10 - 2 * c) + 2 * c * c + 20 * 10, within(1e-3));
    }

    /** A rim that the white has beneath an ink that does without it stays. */
    @Test
    void aSharedWhiteKeepsItsTrap() {
        FlatDrawing drawing = new FlatDrawing(60, 40)
                .fill(GOLD, Outline.rectangle(5, 5, 20, 10))
                .fill(PLAIN, Outline.rectangle(30, 5, 10, 10))
                .fill(CHALK, Outline.rectangle(40, 5, 10, 10));
        Separation drawn = planned(drawing.knockedOut(GOLD, PLAIN, CHALK), "enabled: true");
        FlatDrawing rim = new FlatDrawing(60, 40).fill(PLAIN, Outline.rectangle(40, 5, 0.5, 10));
        List<Region> printed = new ArrayList<>(drawn.printed());
        printed.set(0, printed.get(0).union(rim.knockedOut(PLAIN).printed().get(0)));
        Region white = new Choke()
                .shape(drawn.withPrinted(printed), job("enabled: true, choke: 0 mm"))
                .printed()
                .get(0);
        assertThat(white.areaMm2()).isCloseTo(20 * 10 + 10.5 * 10, within(1e-3));
    }

    @Test
    void aWhiteThatHidesTooLittleOrThatTheOrderPutsElsewhereIsNoGround() {
        Ink thin = ink("plain", "#ffffff", 0.5);
        assertThat(pulls(List.of(GOLD, thin), ON)).containsExactly("underbase", "gold", "plain");
        assertThat(pulls(List.of(GOLD, CHALK), ON)).containsExactly("underbase", "gold", "chalk");
        Job ordered = JobReader.read("job.yaml", "{order: [gold, plain], use: {underbase: {enabled: true}}}");
        assertThat(pulls(List.of(GOLD, PLAIN), ordered)).containsExactly("underbase", "gold", "plain");
        Job first = JobReader.read("job.yaml", "{order: [plain, gold], use: {underbase: {enabled: true}}}");
        assertThat(pulls(List.of(PLAIN, GOLD), first)).containsExactly("plain", "gold");
        Job exact = JobReader.read("job.yaml", "{merge: 0, use: {underbase: {enabled: true}}}");
        Ink near = ink("plain", "#fdfdfb", 0.9);
        assertThat(pulls(List.of(near, GOLD), ON)).containsExactly("plain", "gold");
        assertThat(pulls(List.of(near, GOLD), exact)).containsExactly("underbase", "plain", "gold");
    }

    private static List<String> pulls(List<Ink> inks, Job job) {
        return new Underbase()
                .plan(table(BLACK, inks), knockedOut(inks.toArray(Ink[]::new)), job).pulls().stream()
                        .map(pull -> pull.ink().name())
                        .toList();
    }

    /** On any drawing: as many pulls as there are inks, and white at least wherever the artwork has it. */
    @Test
    void aSharedWhiteHoldsItsLawsOnAnyDrawing() {
        int shared = 0;
        for (long number = 0; number < 60; number++) {
            Separation drawn = planned(RandomDrawing.withWhite(number, PLAIN), "enabled: true");
            int white = drawn.plan().pulls().stream().map(Pull::ink).toList().indexOf(PLAIN);
            if (white < 0 || !drawn.plan().pulls().get(white).ground()) {
                continue;
            }
            shared++;
            assertThat(drawn.plan().pulls())
                    .as("drawing %d", number)
                    .hasSize(drawn.table().inks().size());
            Region ground = new Choke().shape(drawn, ON).printed().get(white);
            Region own = shown(drawn, PLAIN);
            Region others =
                    Region.union(drawn.printed().subList(1, drawn.printed().size()));
            assertThat(own.minus(ground).areaMm2())
                    .as("drawing %d: shows whole", number)
                    .isLessThan(1e-3);
            assertThat(ground.minus(own.grown(CHOKE_MM + 0.002, Corners.ROUND))
                            .minus(own.union(others).shrunk(CHOKE_MM - 0.002))
                            .areaMm2())
                    .as("drawing %d: elsewhere behind the edge", number)
                    .isLessThan(1e-3);
        }
        assertThat(shared).isGreaterThan(30);
    }

    private static Region shown(Separation drawn, Ink ink) {
        return drawn.map()
                .dissolve(StackSet.of(drawn.table().rows().stream()
                        .filter(row -> row.shows(ink))
                        .mapToInt(PlanningTable.Row::stack)));
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
