package inkstrata.overprint;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.InkFilm;
import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
import inkstrata.job.Job;
import inkstrata.measure.Size;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.Neighbours;
import inkstrata.planar.PaintStack;
import inkstrata.planar.Pieces;
import inkstrata.planar.StackSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class DrawingsOverTest {
    private static final Sheet SHEET = new Sheet(new Size(100, 100), Rgb.WHITE, Side.FRONT);
    private static final Ink CLEAR_ROSE = drawing("rose", "#e08090", 0.05);
    private static final Ink CLEAR_SKY = drawing("sky", "#60b0e0", 0.05);
    private static final Ink SOLID = drawing("solid", "#302830", 1);

    @Test
    void clearDrawingsCanAllBeSeenInAnyOrder() {
        Decision decision = decision(CLEAR_ROSE, CLEAR_SKY);
        assertThat(decision.what()).startsWith("All edges of the drawings can be seen");
        assertThat(decision.why()).endsWith("No other order keeps much more of them.");
    }

    /** A solid dark drawing over another hides its edges; beneath a clear one it still swallows it, for nothing darkens dark. */
    @Test
    void whatASolidDrawingSwallowsIsSaid() {
        Decision decision = decision(CLEAR_ROSE, SOLID);
        assertThat(decision.what()).startsWith("30 of the 100 mm of edges of the drawings are lost");
    }

    @Test
    void anOrderThatKeepsMoreIsNamed() {
        Ink chalk = drawing("chalk", "#f0e8d8", 1);
        Decision decision = decision(chalk, SOLID);
        assertThat(decision.what()).startsWith("30 of the 100 mm");
        assertThat(decision.why()).endsWith("as solid, chalk, lowest first, only 25 mm would be lost.");
    }

    @Test
    void withoutDrawingsOfTheirOwnThereIsNothingToSay() {
        assertThat(DrawingsOver.decision(
                        new PlanningTable(SHEET, List.of(), List.of()), new PrintPlan(List.of(), List.of())))
                .isEmpty();
    }

    /** Two drawings that overlap: 20 mm of the first's edge beside bare sheet, 25 of the second's; 30 mm of the first's edge beneath the
     * second, 25 of the second's over the first. */
    private static Decision decision(Ink first, Ink second) {
        List<Row> rows =
                List.of(row(0), row(1, first.name()), row(2, second.name()), row(3, first.name(), second.name()));
        PlanningTable table = new PlanningTable(
                SHEET,
                List.of(first, second),
                List.of(),
                rows,
                List.of(
                        new Neighbours(0, 1, 20),
                        new Neighbours(0, 2, 25),
                        new Neighbours(2, 3, 30),
                        new Neighbours(1, 3, 25)));
        PrintPlan plan = new PrintPlan(
                List.of(new Pull(first, StackSet.of(1, 3)), new Pull(second, StackSet.of(2, 3))), List.of());
        List<Decision> decisions =
                new Overprint().plan(table, plan, Job.DEFAULT).decisions();
        assertThat(decisions).hasSize(1);
        return decisions.get(0);
    }

    private static Row row(int stack, String... drawings) {
        return new Row(stack, PaintStack.BARE, List.of(), 1, Set.of(drawings), new Pieces(1, Optional.empty()));
    }

    private static Ink drawing(String name, String swatch, double hiding) {
        Rgb colour = Rgb.parse(swatch);
        return new Ink(
                name,
                colour,
                hiding,
                Optional.empty(),
                false,
                InkFilm.of(Spectrum.of(colour), hiding),
                Optional.empty(),
                Optional.of("#" + name));
    }
}
