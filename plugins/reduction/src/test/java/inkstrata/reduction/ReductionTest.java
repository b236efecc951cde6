package inkstrata.reduction;

import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.row;
import static inkstrata.plan.PlanningExample.start;
import static inkstrata.plan.PlanningExample.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobReader;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.plan.Ink;
import inkstrata.plan.Mesh;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Finding;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import inkstrata.separation.Subject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ReductionTest {
    private static final int DRAWINGS = 200;
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");

    @Test
    void isFoundAtTheDoor() {
        Plugins found = Plugins.load(getClass().getClassLoader());
        assertThat(found.planners()).hasExactlyElementsOfTypes(Reduction.class);
        assertThat(found.inspectors()).hasOnlyElementsOfTypes(StepColours.class, InkHeight.class);
    }

    @Test
    void doesNothingUnlessItIsAskedFor() {
        PrintPlan before = start(List.of(SAND, NIGHT));
        assertThat(new Reduction().plan(table(List.of(SAND, NIGHT), row(0, NIGHT)), before, Job.DEFAULT))
                .isEqualTo(before);
        assertThat(new Reduction().claims(Job.DEFAULT)).isEmpty();
    }

    @Test
    void eachInkPrintsBeneathAllThatLieOverIt() {
        PlanningTable table =
                table(List.of(SAND, RUST, NIGHT), row(0), row(1, SAND), row(2, RUST, NIGHT), row(3, NIGHT, SAND));
        assertThat(new Reduction().plan(table, start(table.inks()), on()).pulls())
                .extracting(Pull::prints)
                .containsExactly(StackSet.of(1, 2, 3), StackSet.of(2, 3), StackSet.of(3));
    }

    /** Seen through the sheet the first pull lies over the others. */
    @Test
    void onTheBackTheFirstPrintIsTheSmallest() {
        PlanningTable front = table(List.of(NIGHT, SAND), row(0, SAND), row(1, NIGHT));
        PlanningTable back =
                new PlanningTable(new Sheet(front.sheet().size(), Rgb.WHITE, Side.BACK), front.inks(), front.rows());
        assertThat(new Reduction().plan(back, start(front.inks()), on()).pulls())
                .extracting(Pull::prints)
                .containsExactly(StackSet.of(1), StackSet.of(0, 1));
    }

    @Test
    void theDecisionSaysHowHighInkStands() {
        PlanningTable table = table(List.of(SAND, NIGHT), row(0), row(1, SAND), row(2, NIGHT), row(3, NIGHT, SAND));
        assertThat(new Reduction().plan(table, start(table.inks()), on()).decisions())
                .singleElement()
                .satisfies(decision -> assertThat(decision.why())
                        .isEqualTo("The job asks for a reduction."
                                + " Films over each other, and how high dry ink stands: 0 (0 µm) on 25.0 %,"
                                + " 1 (8 µm) on 25.0 %, 2 (16 µm) on 50.0 % of the picture."));
    }

    /** Of every drawing: what a print has beyond the one before it is nothing, and each place shows its own colour last. */
    @Test
    void printsNestAndEveryPlaceEndsInItsColour() {
        for (long seed = 0; seed < DRAWINGS; seed++) {
            Separation drawn = RandomDrawing.of(seed, 1);
            List<Region> printed = new Reduction()
                    .plan(drawn.table(), drawn.plan(), on()).pulls().stream()
                            .map(pull -> drawn.map().dissolve(pull.prints()))
                            .toList();
            for (int pull = 0; pull < printed.size(); pull++) {
                Region next = pull + 1 < printed.size() ? printed.get(pull + 1) : Region.union(List.of());
                assertThat(next.minus(printed.get(pull)).areaMm2())
                        .as("drawing %s, pull %s", seed, pull + 1)
                        .isZero();
                Region shown = printed.get(pull).minus(next);
                Region wanted = drawn.printed().get(pull);
                assertThat(shown.minus(wanted).areaMm2() + wanted.minus(shown).areaMm2())
                        .as("drawing %s, pull %s", seed, pull)
                        .isZero();
            }
        }
    }

    /** What is kept prints in its own colour alone, beneath and over nothing. */
    @Test
    void otherPullsSpareWhatIsKept() {
        Row kept = row(4, RUST);
        PlanningTable table = new PlanningTable(
                table(List.of(), row(0)).sheet(),
                List.of(SAND, RUST, NIGHT),
                List.of(
                        row(0),
                        row(1, SAND),
                        row(2, RUST),
                        row(3, NIGHT),
                        new Row(4, kept.paints(), kept.inks(), 1, Set.of("#sun"), kept.pieces())));
        Job job = JobReader.read("job.yaml", "use: {reduction: {enabled: true, keep: \"#sun, more.svg\"}}");
        assertThat(new Reduction().drawings(job)).containsExactlyInAnyOrder("#sun", "more.svg");
        assertThat(new Reduction().plan(table, start(table.inks()), job).pulls())
                .extracting(Pull::prints)
                .containsExactly(StackSet.of(1, 2, 3), StackSet.of(2, 3, 4), StackSet.of(3));
        assertThat(new Reduction().drawings(Job.DEFAULT)).isEmpty();
        assertThat(new Reduction().plan(table, start(table.inks()), job).decisions())
                .extracting(decision -> decision.about() + ": " + decision.what())
                .endsWith(
                        ": Kept: #sun, more.svg. Only each place's own colour prints there, without other steps beneath it.",
                        "sand: It leaves out 0.0 cm² of what is kept, which rust prints later.");
    }

    /** A white that is to be seen and is the ground too is the first step: choked it could not be altered into the next. */
    @Test
    void aGroundThatShowsIsAStep() {
        PlanningTable table = table(List.of(SAND, RUST), row(0), row(1, SAND), row(2, RUST));
        List<Pull> pulls =
                List.of(new Pull(SAND, StackSet.of(1)).asGround(StackSet.of(2)), new Pull(RUST, StackSet.of(2)));
        assertThat(new Reduction()
                        .plan(table, new PrintPlan(pulls, List.of()), on())
                        .pulls())
                .containsExactly(new Pull(SAND, StackSet.of(1, 2)), new Pull(RUST, StackSet.of(2)));
        List<Pull> hidden =
                List.of(new Pull(NIGHT, StackSet.NONE).asGround(StackSet.of(2)), new Pull(RUST, StackSet.of(2)));
        assertThat(new Reduction()
                        .plan(table, new PrintPlan(hidden, List.of()), on())
                        .pulls())
                .isEqualTo(hidden);
    }

    /** Looked at is every place where a step shows, not only the largest. */
    @Test
    void aStepThatChangesInOnePlaceAloneIsFound() {
        Ink clear = new Ink("rust", RUST.swatch(), 0.1, Optional.empty(), false);
        Separation drawn = new FlatDrawing(60, 40)
                .fill(NIGHT, Outline.rectangle(5, 5, 10, 10))
                .fill(clear, Outline.rectangle(20, 5, 30, 30))
                .fill(clear, Outline.rectangle(7, 7, 4, 4))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), NIGHT, clear);
        assertThat(new StepColours().inspect(drawn, on()).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.subject()).isEqualTo(Subject.ink("rust").withPull(1));
                    assertThat(finding.place().x()).isBetween(7.0, 11.0);
                    assertThat(finding.area().orElseThrow().areaMm2()).isCloseTo(16, within(1e-6));
                });
    }

    @Test
    void inkThatStandsTooHighIsFoundWhereItIsMost() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, Outline.rectangle(5, 5, 50, 30))
                .fill(RUST, Outline.rectangle(10, 10, 10, 10))
                .separated(
                        (ink, row) -> !row.inks().isEmpty()
                                && (ink.equals(SAND) || row.top().equals(Optional.of(ink))),
                        SAND,
                        RUST);
        assertThat(new InkHeight().inspect(drawn, Job.DEFAULT).findings()).isEmpty();
        Job low = JobReader.read("job.yaml", "use: {reduction: {film: 9, highest: 17}}");
        assertThat(new InkHeight().inspect(drawn, low).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.measured()).isEqualTo("about 18 µm of dry ink, 1.0 cm² in all are too high");
                    assertThat(finding.place().x()).isBetween(10.0, 20.0);
                });
    }

    /** 77-48: pitch 129.87 µm, opening 81.87 µm, open 39.74 %, cloth 76.8 µm: 30.52 cm³/m² in the cloth; by hand from the formula. */
    @Test
    void aMeshSaysHowThickAFilmIs() {
        assertThat(new Mesh(77, 48).dryFilmMicrometres()).isCloseTo(30.52 * 0.7 * 0.35, within(0.01));
    }

    /** Inks that hide well form a chain in any order; a clear one does not. */
    @Test
    void colouredOverOthersIsFound() {
        assertThat(found(SAND, NIGHT)).isEmpty();
        Ink clear = new Ink("rust", RUST.swatch(), 0.1, Optional.empty(), false);
        assertThat(found(NIGHT, clear)).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo("step colour");
            assertThat(finding.measured()).startsWith("rust comes out as about #");
            assertThat(finding.place().x()).isBetween(10.0, 20.0);
        });
    }

    private static List<Finding> found(Ink first, Ink second) {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(first, Outline.rectangle(5, 5, 50, 30))
                .fill(second, Outline.rectangle(10, 10, 10, 10))
                .separated((ink, row) -> false, first, second);
        PrintPlan plan = new Reduction().plan(drawn.table(), drawn.plan(), on());
        List<Region> printed = IntStream.range(0, plan.pulls().size())
                .mapToObj(pull -> drawn.map().dissolve(plan.pulls().get(pull).prints()))
                .toList();
        return new StepColours()
                .inspect(new Separation(drawn.artwork(), drawn.map(), drawn.table(), plan, printed, List.of()), on())
                .findings();
    }

    private static Job on() {
        return JobExample.using(0.4, "reduction", Map.of("enabled", new Setting("true", 8)));
    }
}
