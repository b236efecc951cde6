package inkstrata.check;

import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Outline;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.Finding;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A white that shows in some places and is the ground in others: in the one it is an ink like all, in the other it holds nothing. */
class GroundsTest {
    /** One that can be told from the sheet of these drawings, which is white. */
    private static final Ink WHITE = ink("white", "#d8e4ee");

    private static final Ink GOLD = ink("gold", "#e8b83a");
    private static final Ink ROSE = ink("rose", "#d86070");

    @Test
    void whatLiesOnAGroundIsNotHeldByIt() {
        Separation apart = grounded(new FlatDrawing(60, 40)
                .fill(GOLD, Outline.rectangle(5, 5, 10, 20))
                .fill(ROSE, Outline.rectangle(15, 5, 10, 20))
                .fill(WHITE, Outline.rectangle(40, 5, 10, 20)));
        assertThat(new Check().inspect(apart, Job.DEFAULT).findings())
                .filteredOn(finding -> finding.severity() != Finding.Severity.NOTE)
                .isNotEmpty()
                .allSatisfy(finding -> {
                    assertThat(finding.measured()).contains("gold").contains("rose");
                    assertThat(finding.place().x()).isBetween(14.5, 15.5);
                });
    }

    /** White runs on beneath gold, as a trap would. */
    @Test
    void whatShowsBesideItsOwnGroundIsHeldByIt() {
        Separation beside = grounded(new FlatDrawing(60, 40)
                .fill(GOLD, Outline.rectangle(5, 5, 10, 20))
                .fill(WHITE, Outline.rectangle(15, 5, 10, 20)));
        assertThat(new Check().inspect(beside, Job.DEFAULT).findings())
                .filteredOn(finding -> finding.severity() != Finding.Severity.NOTE)
                .isEmpty();
        List<Region> cut = new ArrayList<>(beside.printed());
        cut.set(0, cut.get(0).minus(beside.printed().get(1).grown(0.05, Corners.ROUND)));
        assertThat(new Check().inspect(beside.withPrinted(cut), Job.DEFAULT).findings())
                .filteredOn(finding -> finding.severity() != Finding.Severity.NOTE)
                .isNotEmpty();
    }

    /** White beneath everything and where it shows. */
    private static Separation grounded(FlatDrawing drawing) {
        Separation knocked = drawing.knockedOut(WHITE, GOLD, ROSE);
        List<Pull> pulls = new ArrayList<>(knocked.plan().pulls());
        pulls.set(
                0,
                pulls.get(0)
                        .asGround(StackSet.of(knocked.table().rows().stream()
                                .filter(row -> row.top().isPresent())
                                .mapToInt(Row::stack))));
        return new Separation(
                knocked.artwork(),
                knocked.map(),
                knocked.table(),
                new PrintPlan(pulls, List.of()),
                pulls.stream()
                        .map(pull -> knocked.map().dissolve(pull.prints()))
                        .toList(),
                List.of());
    }
}
