package inkstrata.knockout;

import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.row;
import static inkstrata.plan.PlanningExample.start;
import static inkstrata.plan.PlanningExample.table;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Plugins;
import java.util.List;
import org.junit.jupiter.api.Test;

class KnockoutTest {
    private static final Ink RED = ink("red", "#c03020");
    private static final Ink BLUE = ink("blue", "#2030c0");

    @Test
    void isFoundAtTheDoor() {
        assertThat(Plugins.load(getClass().getClassLoader()).planners()).hasExactlyElementsOfTypes(Knockout.class);
    }

    @Test
    void eachStackPrintsItsTopAlone() {
        PrintPlan plan = plan(row(0), row(1, RED), row(2, RED, BLUE), row(3, BLUE, RED));
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.of(1, 2));
        assertThat(plan.pulls().get(1).prints()).isEqualTo(StackSet.of(3));
    }

    @Test
    void paintInTheSheetsColourPrintsNothingAndKnocksOut() {
        PrintPlan plan = plan(row(0), row(1, null, RED), row(2, BLUE));
        assertThat(plan.pulls().get(0).prints()).isEqualTo(StackSet.NONE);
        assertThat(plan.pulls().get(1).prints()).isEqualTo(StackSet.of(2));
    }

    private static PrintPlan plan(Row... rows) {
        List<Ink> inks = List.of(RED, BLUE);
        return new Knockout().plan(table(inks, rows), start(inks), Job.DEFAULT);
    }
}
