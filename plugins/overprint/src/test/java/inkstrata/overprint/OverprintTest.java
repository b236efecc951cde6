package inkstrata.overprint;

import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.row;
import static inkstrata.plan.PlanningExample.start;
import static inkstrata.plan.PlanningExample.table;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobReader;
import inkstrata.job.PluginSettings;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Plugins;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OverprintTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");

    @Test
    void isFoundAtTheDoor() {
        assertThat(Plugins.load(getClass().getClassLoader()).planners()).hasExactlyElementsOfTypes(Overprint.class);
    }

    @Test
    void lightInksRunOnBeneathDarkOnesUpToThreeFilms() {
        PrintPlan plan = plan(
                List.of(SAND, RUST, NIGHT),
                row(0),
                row(1, NIGHT, SAND, RUST),
                row(2, NIGHT, RUST),
                row(3, RUST, SAND),
                row(4, SAND, NIGHT));
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.of(1, 3));
        assertThat(plan.pulls().get(1).prints()).isEqualTo(StackSet.of(1, 2));
        assertThat(plan.pulls().get(2).prints()).isEqualTo(StackSet.NONE);
        assertThat(plan.decisions()).extracting(Decision::about).containsExactly("rust", "night");
    }

    @Test
    void noMoreFilmsThanTheJobAllows() {
        Row[] rows = {row(1, NIGHT, RUST, SAND), row(2, RUST, SAND)};
        List<Ink> inks = List.of(SAND, RUST, NIGHT);
        assertThat(printed(inks, "maxFilms", "2", rows)).containsExactly(StackSet.of(2), StackSet.of(1), StackSet.NONE);
        assertThat(printed(inks, "maxFilms", "1", rows)).containsExactly(StackSet.NONE, StackSet.NONE, StackSet.NONE);
    }

    /** The change is worked out here once more, by a film that hides nine tenths in every band. */
    @Test
    void nothingRunsOnThatChangesTheColourByMoreThanTheTolerance() {
        Ink clearRust = new Ink("rust", RUST.swatch(), 0.1, Optional.empty(), false);
        List<Ink> inks = List.of(SAND, clearRust);
        Spectrum swatch = Spectrum.of(clearRust.swatch());
        Spectrum sand = Spectrum.of(SAND.swatch());
        Spectrum over = Spectrum.of(band -> 0.1 * swatch.at(band)
                + 0.9
                        * swatch.at(band)
                        * (1 - 0.1 * swatch.at(band))
                        * sand.at(band)
                        / (1 - 0.1 * swatch.at(band) * sand.at(band)));
        double change = Ciede2000.difference(over.lab(), Lab.of(clearRust.swatch()));
        assertThat(change).isGreaterThan(2);
        assertThat(printed(inks, "tolerance", String.valueOf(change + 0.1), row(1, clearRust, SAND))
                        .get(0))
                .isEqualTo(StackSet.of(1));
        assertThat(printed(inks, "tolerance", String.valueOf(change - 0.1), row(1, clearRust, SAND))
                        .get(0))
                .isEqualTo(StackSet.NONE);
        assertThat(plan(inks, row(1, clearRust, SAND)).pulls().get(0).prints()).isEqualTo(StackSet.NONE);
    }

    /** A key prints over what is right beneath it, whatever that does to its colour. */
    @Test
    void beneathANamedKeyWhatIsRightBeneathRunsOn() {
        Ink clear = new Ink("clear", RUST.swatch(), 0, Optional.empty(), true);
        PrintPlan plan = plan(List.of(SAND, NIGHT, clear), row(1, clear, NIGHT, SAND));
        assertThat(plan.pulls()).extracting(Pull::prints).containsExactly(StackSet.NONE, StackSet.of(1), StackSet.NONE);
        assertThat(plan.decisions())
                .singleElement()
                .satisfies(decision -> assertThat(decision.why())
                        .startsWith("The job names it key; its colour comes out up to ")
                        .endsWith("more than the 2.0 allowed elsewhere."));
    }

    @Test
    void nothingRunsOnBeneathAKeyThatIsPrintedFirst() {
        PrintPlan plan = plan(List.of(NIGHT, SAND), row(1, NIGHT, SAND));
        assertThat(plan.pulls()).allSatisfy(pull -> assertThat(pull.prints()).isEqualTo(StackSet.NONE));
    }

    @Test
    void onTheBackOfASheetTheKeyIsPrintedFirstAndTheOthersRunOnBehindIt() {
        List<Ink> inks = List.of(SAND, NIGHT, RUST);
        PlanningTable front = table(inks, row(0, NIGHT, SAND), row(1, NIGHT, RUST));
        PlanningTable back = new PlanningTable(
                new Sheet(front.sheet().size(), front.sheet().colour(), Side.BACK), inks, front.rows());
        assertThat(new Overprint().plan(front, start(inks), Job.DEFAULT).pulls())
                .extracting(Pull::prints)
                .containsExactly(StackSet.of(0), StackSet.NONE, StackSet.NONE);
        assertThat(new Overprint().plan(back, start(inks), Job.DEFAULT).pulls())
                .extracting(Pull::prints)
                .containsExactly(StackSet.NONE, StackSet.NONE, StackSet.of(1));
    }

    @Test
    void bareSheetBeneathTheKeyStaysBare() {
        PrintPlan plan = plan(List.of(SAND, NIGHT), row(1, NIGHT, null, SAND));
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.NONE);
    }

    /** A hidden outline and what it encloses, under red: neither may run on, and yellow beneath them does all the same. */
    @Test
    void whatLiesHiddenBetweenAndDoesNotPrintHasNoSay() {
        Ink yellow = ink("yellow", "#f4d03f");
        Ink red = new Ink("red", Rgb.parse("#d4382c"), 0.7, Optional.empty(), false);
        List<Ink> inks = List.of(yellow, RUST, NIGHT, red);
        Prediction prediction = new Prediction(table(inks).sheet());
        double tolerance = prediction.fromSwatch(red, List.of(yellow)) + 0.1;
        assertThat(prediction.fromSwatch(red, List.of(RUST))).isGreaterThan(tolerance);
        assertThat(prediction.fromSwatch(red, List.of(NIGHT))).isGreaterThan(tolerance);
        List<StackSet> printed = printed(
                inks,
                "tolerance",
                String.valueOf(tolerance),
                row(0, red, yellow),
                row(1, red, NIGHT, yellow),
                row(2, red, NIGHT, RUST, yellow));
        assertThat(printed).containsExactly(StackSet.of(0, 1, 2), StackSet.NONE, StackSet.NONE, StackSet.NONE);
    }

    /** On any stacks: without the paints that print nothing there the choice is the same, whatever maxFilms and tolerance. */
    @Test
    void paintsThatPrintNothingAreAsIfTheyWereNotThere() {
        Random random = new Random(23);
        int hidden = 0;
        for (int drawing = 0; drawing < 400; drawing++) {
            List<Ink> inks = new ArrayList<>();
            for (int i = 0; i < 2 + random.nextInt(7); i++) {
                boolean isKey = random.nextInt(10) == 0;
                inks.add(new Ink(
                        "ink " + i, Rgb.of(random.nextInt(1 << 24)), random.nextDouble(), Optional.empty(), isKey));
            }
            Row[] rows = new Row[20];
            for (int stack = 0; stack < rows.length; stack++) {
                List<Ink> there = new ArrayList<>(inks);
                Collections.shuffle(there, random);
                rows[stack] = row(
                        stack,
                        there.subList(0, random.nextInt(there.size() + 1)).toArray(Ink[]::new));
            }
            Job job = JobReader.read(
                    "job.yaml",
                    String.format(
                            Locale.ROOT,
                            "use: {overprint: {tolerance: %.2f, maxFilms: %d}}",
                            12 * random.nextDouble(),
                            1 + random.nextInt(8)));
            List<Pull> all =
                    new Overprint().plan(table(inks, rows), start(inks), job).pulls();
            Row[] printed = new Row[rows.length];
            for (int stack = 0; stack < rows.length; stack++) {
                int number = stack;
                printed[stack] = row(
                        stack,
                        IntStream.range(0, rows[stack].inks().size())
                                .filter(paint ->
                                        paint == 0 || prints(rows[number].inks().get(paint), number, all))
                                .mapToObj(
                                        paint -> rows[number].inks().get(paint).orElseThrow())
                                .toArray(Ink[]::new));
                hidden += rows[stack].inks().size() - printed[stack].inks().size();
            }
            assertThat(new Overprint()
                            .plan(table(inks, printed), start(inks), job)
                            .pulls())
                    .as("drawing %d", drawing)
                    .isEqualTo(all);
        }
        assertThat(hidden).as("paints that were taken out").isGreaterThan(1000);
    }

    private static boolean prints(Optional<Ink> ink, int stack, List<Pull> pulls) {
        return pulls.stream()
                .anyMatch(pull ->
                        Optional.of(pull.ink()).equals(ink) && pull.prints().contains(stack));
    }

    private static List<StackSet> printed(List<Ink> inks, String option, String value, Row... rows) {
        Job job = JobExample.using(
                Job.DEFAULT_REGISTER_MM, "overprint", Map.of(option, new PluginSettings.Setting(value, 7)));
        return new Overprint()
                .plan(table(inks, rows), start(inks), job).pulls().stream()
                        .map(Pull::prints)
                        .toList();
    }

    private static PrintPlan plan(List<Ink> inks, Row... rows) {
        return new Overprint().plan(table(inks, rows), start(inks), Job.DEFAULT);
    }
}
