package inkstrata.overprint;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What runs on beneath red, which hides it well, and is too narrow for a screen; closed formulas. */
class SliversTest {
    private static final Ink YELLOW = ink("yellow", "#f4d03f");
    private static final Ink NIGHT = ink("night", "#1d2440");
    private static final double REGISTER = Job.DEFAULT_REGISTER_MM + 0.01;

    /** A slit of 0.2 mm that a hidden bar cut. */
    @Test
    void aSlitIsFilled() {
        Separation drawn = slit(20, 0.2);
        Separation tidied = new Slivers().shape(drawn, Job.DEFAULT);
        assertThat(drawn.printed().get(0).polygons().get(0).holes()).hasSize(1);
        assertThat(tidied.printed().get(0).areaMm2()).isCloseTo(60 * 40, within(0.01));
        assertThat(tidied.printed().get(1)).isEqualTo(drawn.printed().get(1));
    }

    /** One of 0.5 mm holds; where the bar comes as near to the edge of what hides it as pulls may be off, all stays as well. */
    @Test
    void whatHoldsOrIsNotDeepStays() {
        for (Separation drawn : new Separation[] {slit(20, 0.5), slit(10.1, 0.2)}) {
            assertThat(new Slivers().shape(drawn, Job.DEFAULT).printed()).isEqualTo(drawn.printed());
        }
    }

    /** A line of 0.2 mm goes on beneath night as far as pulls may be off, and no farther. */
    @Test
    void aKnobIsCutWhereItIsDeep() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(YELLOW, rectangle(0, 20, 50, 0.2))
                .fill(NIGHT, rectangle(20, 10, 40, 20))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), YELLOW, NIGHT);
        Separation tidied = new Slivers().shape(drawn, Job.DEFAULT);
        assertThat(tidied.printed().get(0).areaMm2()).isCloseTo((20 + REGISTER) * 0.2, within(0.01));
    }

    /** A bar of that height, hidden 12 mm and more beneath night but for its distance from night's upper edge at 10 mm. */
    private static Separation slit(double y, double height) {
        return new FlatDrawing(60, 40)
                .fill(YELLOW, rectangle(0, 0, 60, 40))
                .fill(ink("bar", "#ffffff"), rectangle(22, y, 20, height))
                .fill(NIGHT, rectangle(10, 10, 45, 20))
                .separated(
                        (ink, row) -> row.top().equals(Optional.of(ink))
                                || (ink.equals(YELLOW) && row.paints().paints().size() < 3),
                        YELLOW,
                        NIGHT);
    }
}
