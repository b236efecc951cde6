package inkstrata.overprint;

import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.key;
import static inkstrata.plan.PlanningExample.row;
import static inkstrata.plan.PlanningExample.start;
import static inkstrata.plan.PlanningExample.table;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.job.Job;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Plugins;
import java.util.List;
import org.junit.jupiter.api.Test;

class OverprintTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");
    private static final Ink NAMED = key("named", "#b4512d");

    @Test
    void isFoundAtTheDoor() {
        assertThat(Plugins.load(getClass().getClassLoader()).planners()).hasExactlyElementsOfTypes(Overprint.class);
    }

    @Test
    void whatLiesRightBeneathTheDarkestInkRunsOn() {
        PrintPlan plan = plan(
                List.of(SAND, RUST, NIGHT), row(0), row(1, NIGHT, SAND, RUST), row(2, NIGHT, RUST), row(3, RUST, SAND));
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.of(1));
        assertThat(plan.pulls().get(1).prints()).isEqualTo(StackSet.of(2));
        assertThat(plan.pulls().get(2).prints()).isEqualTo(StackSet.NONE);
        assertThat(plan.decisions()).singleElement().extracting(Decision::about).isEqualTo("night");
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

    @Test
    void aNamedKeyTakesThePlaceOfTheDarkest() {
        PrintPlan plan = plan(List.of(SAND, NIGHT, NAMED), row(1, NAMED, NIGHT), row(2, NIGHT, SAND));
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.NONE);
        assertThat(plan.pulls().get(1).prints()).isEqualTo(StackSet.of(1));
    }

    @Test
    void theDarkestOfLightInksIsNoKey() {
        PrintPlan plan = plan(List.of(SAND, RUST), row(1, RUST, SAND));
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.NONE);
        assertThat(plan.decisions()).isEmpty();
    }

    private static PrintPlan plan(List<Ink> inks, Row... rows) {
        return new Overprint().plan(table(inks, rows), start(inks), Job.DEFAULT);
    }
}
