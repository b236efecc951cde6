package inkstrata.shop;

import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.Merge;
import inkstrata.plan.Ink;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The numbers of docs/printing-rules.md by which colours share an ink, each from just below and from just above. All colours are greys, of
 * which a formula of one line says how far they are apart.
 */
class MergeNumbersTest {
    private static final SharedEdges APART = new SharedEdges();

    /** CIEDE2000 where there is no chroma (ISO/CIE 11664-6): 2.0 is between five and six steps from #808080. */
    @ParameterizedTest
    @CsvSource({"133, 1", "134, 2"})
    void coloursWithin2AreOneInk(int other, int inks) {
        assertThat(apart(128, other)).isBetween(1.8, 2.3);
        assertThat(apart(128, other) <= 2).isEqualTo(inks == 1);
        assertThat(Palette.mix(Map.of(grey(128), 1.0, grey(other), 1.0), APART, Job.DEFAULT)
                        .inks())
                .hasSize(inks);
    }

    @ParameterizedTest
    @CsvSource({"130, 1", "131, 2"})
    void coloursThatTouchAreOneInkUpTo1(int other, int inks) {
        SharedEdges edges = new SharedEdges();
        edges.add(grey(128), grey(other), 5);
        assertThat(apart(128, other)).isBetween(0.7, 1.2);
        assertThat(apart(128, other) <= 1).isEqualTo(inks == 1);
        assertThat(Palette.mix(Map.of(grey(128), 1.0, grey(other), 1.0), edges, Job.DEFAULT)
                        .inks())
                .hasSize(inks);
    }

    /** Both would do: the sheet and the listed ink lie within 2.0 of the colour. */
    @ParameterizedTest
    @CsvSource({"250, true", "251, false"})
    void aColourNearTheSheetIsTheListedInksIfThatIsNearer(int colour, boolean isInk) {
        Ink pale = ink("pale", grey(246).hex());
        assertThat(apart(colour, 255)).isLessThan(2);
        assertThat(apart(colour, 246)).isLessThan(2);
        assertThat(apart(colour, 246) < apart(colour, 255)).isEqualTo(isInk);
        Palette palette =
                Palette.mix(Map.of(grey(colour), 5.0), APART, JobExample.withInks(Job.DEFAULT, List.of(pale)));
        assertThat(palette.inkOf().get(grey(colour))).isEqualTo(isInk ? Optional.of(pale) : Optional.empty());
    }

    /** The middle one touches the lighter one; which it joins changes where the darker one is 10 farther away than that. */
    @Test
    void anEdgeThatIsLostCountsAs10More() {
        int light = 160;
        int middle = 144;
        SharedEdges edges = new SharedEdges();
        edges.add(grey(light), grey(middle), 5);
        double nearest = Double.POSITIVE_INFINITY;
        for (int dark = 32; dark < 136; dark++) {
            double more = apart(middle, dark) - apart(light, middle);
            nearest = Math.min(nearest, Math.abs(more - 10));
            Map<Rgb, Optional<Ink>> inkOf = Palette.mix(
                            Map.of(grey(light), 1.0, grey(middle), 1.0, grey(dark), 1.0),
                            edges,
                            Job.DEFAULT.withMerge(Merge.DEFAULT.withInks(2)))
                    .inkOf();
            assertThat(inkOf.get(grey(middle)).equals(inkOf.get(grey(dark))))
                    .as("%d, by %.2f", dark, more)
                    .isEqualTo(more < 10);
        }
        assertThat(nearest).isLessThan(0.3);
    }

    private static Rgb grey(int level) {
        return Rgb.of(level << 16 | level << 8 | level);
    }

    /** ISO/CIE 11664-6 for greys: the difference of L* over 1 + 0.015 (L - 50)² / √(20 + (L - 50)²), L the mean of both. */
    private static double apart(int one, int other) {
        double from = lightness(one);
        double to = lightness(other);
        double fromMiddle = Math.pow((from + to) / 2 - 50, 2);
        return Math.abs(from - to) / (1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle));
    }

    /** CIE 15 and IEC 61966-2-1. */
    private static double lightness(int level) {
        return 116 * Math.cbrt(Math.pow((level / 255.0 + 0.055) / 1.055, 2.4)) - 16;
    }
}
