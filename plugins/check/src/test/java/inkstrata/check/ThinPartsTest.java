package inkstrata.check;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.plan.Ink;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Thin lines and gaps that were drawn are found, those of our own making are not. */
class ThinPartsTest {
    private static final Ink YELLOW = ink("yellow", "#f4d03f");
    private static final Ink RED = ink("red", "#c8442e");
    private static final Ink NIGHT = ink("night", "#1d2440");

    /** A hidden bar of 0.15 mm keeps yellow away beneath red: a gap on the film, and nothing that shows. */
    @Test
    void aGapBeneathAnotherInkWasNotDrawn() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(YELLOW, rectangle(0, 0, 60, 40))
                .fill(NIGHT, rectangle(20, 15, 30, 0.15))
                .fill(RED, rectangle(10, 10, 45, 20))
                .separated(
                        (ink, row) -> row.top().equals(Optional.of(ink))
                                || (ink.equals(YELLOW) && !row.inks().contains(Optional.of(NIGHT))),
                        YELLOW,
                        RED,
                        NIGHT);
        Region yellow = drawn.printed().get(0);
        assertThat(yellow.polygons().get(0).holes()).as("the gap").hasSize(1);
        assertThat(found(drawn, yellow)).isEmpty();
    }

    /** The same bar on top. */
    @Test
    void aGapThatShowsWasDrawn() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(YELLOW, rectangle(0, 0, 60, 40))
                .fill(NIGHT, rectangle(20, 15, 30, 0.15))
                .knockedOut(YELLOW, NIGHT);
        assertThat(found(drawn, drawn.printed().get(0))).containsExactly("thin gap");
        assertThat(found(drawn, drawn.printed().get(1))).containsExactly("thin line");
    }

    /** What runs on beneath red as a line of 0.15 mm and shows nowhere. */
    @Test
    void aLineThatRunsOnHiddenWasNotDrawn() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(YELLOW, rectangle(20, 15, 30, 0.15))
                .fill(RED, rectangle(10, 10, 45, 20))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), YELLOW, RED);
        assertThat(found(drawn, drawn.printed().get(0))).isEmpty();
    }

    private static List<String> found(Separation drawn, Region film) {
        return ThinParts.of(film, "film", ThinParts.drawn(drawn)).stream()
                .map(Finding::rule)
                .toList();
    }
}
