package inkstrata.check;

import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Outline;
import inkstrata.colour.Ciede2000;
import inkstrata.colour.Rgb;
import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
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
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A white that shows in some places and is the ground in others: in the one it is an ink like all, in the other it holds nothing. */
class GroundsTest {
    /** One that can be told from the sheet of these drawings, which is white. */
    private static final Ink WHITE = ink("white", "#d8e4ee");

    /** Through which the ground is seen. */
    private static final Ink GOLD = new Ink("gold", Rgb.parse("#e8b83a"), 0.4, Optional.empty(), false);

    private static final Ink ROSE = ink("rose", "#d86070");

    private static final Ink BLACK = ink("black", "#101014");

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

    /**
     * In register nobody sees that the ground is knocked out beneath black. Once black is off, gold shows on bare sheet where it showed on the ground: by two-flux
     * theory, the inks that lie over each other there are predicted, moved as a pull would be.
     */
    @Test
    void aGroundKnockedOutBesideWhatNeedsItIsAnError() {
        Separation plan = grounded(new FlatDrawing(60, 40)
                .fill(GOLD, Outline.rectangle(5, 5, 20, 20))
                .fill(BLACK, Outline.rectangle(25, 5, 10, 20))
                .fill(ROSE, Outline.rectangle(45, 5, 12, 30)));
        Region black = plan.printed().get(3);
        Region gold = plan.printed().get(1).union(black);
        Region ground = plan.printed().get(0).minus(black);
        List<Region> knocked = List.of(ground, gold, plan.printed().get(2), black);
        Separation running = plan.withPrinted(
                List.of(plan.printed().get(0), gold, plan.printed().get(2), black));
        List<Finding> findings = new Comparison(
                        running,
                        IntStream.range(0, 4)
                                .mapToObj(pull -> Optional.of(new Film(
                                        "film" + pull + ".svg",
                                        running.artwork().frame(),
                                        knocked.get(pull),
                                        Region.EMPTY,
                                        List.of())))
                                .toList(),
                        CheckedFilms.REGISTER_MM)
                .inspection().findings().stream()
                        .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                        .filter(finding -> !finding.rule().equals("register marks"))
                        .toList();
        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo("lost ground");
            assertThat(finding.severity()).isEqualTo(Finding.Severity.ERROR);
            assertThat(finding.measured())
                    .as(finding.toString())
                    .contains("white is knocked out")
                    .contains("black");
            assertThat(black.covers(finding.place())).isTrue();
        });
        // The print with black 0.2 mm off, as planned and as knocked out.
        Region bared = gold.minus(black.movedBy(800, 0)).intersection(black);
        assertThat(bared.minus(running.printed().get(0)).areaMm2()).isZero();
        assertThat(bared.minus(ground).areaMm2()).isCloseTo(0.2 * 20, within(0.01));
        Prediction prediction = new Prediction(plan.table().sheet());
        assertThat(Ciede2000.difference(prediction.lab(List.of(WHITE, GOLD)), prediction.lab(List.of(GOLD))))
                .isGreaterThan(2);
        assertThat(Ciede2000.difference(
                        prediction.lab(List.of(WHITE, GOLD, BLACK)), prediction.lab(List.of(GOLD, BLACK))))
                .isLessThan(2);
    }

    /** White beneath everything and where it shows. */
    private static Separation grounded(FlatDrawing drawing) {
        Separation knocked = drawing.knockedOut(WHITE, GOLD, ROSE, BLACK);
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
