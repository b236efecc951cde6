package inkstrata.trap;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import inkstrata.job.JobException;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.plan.Ink;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Widths of single inks and pairs, and inks of like lightness: three bars 20 mm high beside each other. */
class TrapWidthsTest {
    private static final Ink SAND = ink("sand and straw", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");

    /** As light as rust but for 2.1 L*. */
    private static final Ink LEAF = ink("leaf", "#4f7d3a");

    @Test
    void allAreAsWideAsTheWidth() {
        assertGains(bars(), Map.of(), 0.4, 0.4);
    }

    @Test
    void anInkHasItsOwn() {
        assertGains(bars(), widths("rust 0.6 mm"), 0.6, 0.6);
        assertGains(bars(), widths("night 0.1 mm"), 0.4, 0.1);
    }

    @Test
    void theOneThatGivesWayCountsFirst() {
        assertGains(bars(), widths("sand and straw 0.2 mm, rust 0.6 mm"), 0.2, 0.6);
    }

    @Test
    void twoInksCountMoreThanOne() {
        assertGains(bars(), widths("rust and night 0 mm, rust 0.6 mm"), 0.6, 0);
        assertGains(bars(), widths("rust and sand and straw 0.3mm"), 0.3, 0.4);
    }

    @Test
    void inksThatAreNotThereAreTheJobsFault() {
        assertThatThrownBy(() -> new Trap().shape(bars(), TrapJob.using(widths("gold 0.6 mm"))))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("job.yaml:8")
                .hasMessageContaining("'gold' is neither an ink of this print nor two of them")
                .hasMessageContaining("sand and straw, rust, night");
        assertThatThrownBy(() -> new Trap().shape(bars(), TrapJob.using(widths("rust"))))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("'rust' is not an ink and a width");
        assertThatThrownBy(() -> new Trap().shape(bars(), TrapJob.using(widths("rust 9 mm"))))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("outside 0 to 5");
    }

    @Test
    void inksOfLikeLightnessGiveHalfEachIfAsked() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(RUST, rectangle(10, 10, 10, 20))
                .fill(LEAF, rectangle(20, 10, 10, 20))
                .knockedOut(RUST, LEAF);
        assertGains(drawn, Map.of("width", new Setting("0.4 mm", 7), "alike", new Setting("5", 8)), 0.2, 0.2);
        Map<String, Setting> never = Map.of("width", new Setting("0.4 mm", 7));
        assertThat(gained(drawn, never, 0) + gained(drawn, never, 1)).isEqualTo(20 * 0.4, within(0.01));
        assertThat(Math.min(gained(drawn, never, 0), gained(drawn, never, 1))).isZero();
    }

    private static Separation bars() {
        return new FlatDrawing(60, 40)
                .fill(SAND, rectangle(10, 10, 10, 20))
                .fill(RUST, rectangle(20, 10, 10, 20))
                .fill(NIGHT, rectangle(30, 10, 10, 20))
                .knockedOut(SAND, RUST, NIGHT);
    }

    private static Map<String, Setting> widths(String words) {
        return Map.of("width", new Setting("0.4 mm", 7), "widths", new Setting(words, 8));
    }

    /** How wide the rims of the first pull and the second are. */
    private static void assertGains(Separation drawn, Map<String, Setting> settings, double first, double second) {
        assertThat(gained(drawn, settings, 0)).isEqualTo(20 * first, within(0.01));
        assertThat(gained(drawn, settings, 1)).isEqualTo(20 * second, within(0.01));
    }

    private static double gained(Separation drawn, Map<String, Setting> settings, int pull) {
        Separation trapped = new Trap().shape(drawn, TrapJob.using(settings));
        return trapped.printed().get(pull).areaMm2() - drawn.printed().get(pull).areaMm2();
    }
}
