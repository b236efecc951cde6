package inkstrata.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.github.ajalt.colormath.model.RGB;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ColourTest {
    /** Sharma, Wu and Dalal (2005), Color Res. Appl. 30, 21-30, table 1. */
    @ParameterizedTest
    @CsvFileSource(resources = "ciede2000.csv", numLinesToSkip = 1)
    void ciede2000EqualsThePublishedPairs(
            int pair, double l1, double a1, double b1, double l2, double a2, double b2, double expected) {
        Lab one = new Lab(l1, a1, b1);
        Lab other = new Lab(l2, a2, b2);
        assertThat(Ciede2000.difference(one, other)).as("pair %d", pair).isCloseTo(expected, within(5.1e-5));
        assertThat(Ciede2000.difference(other, one)).as("pair %d turned", pair).isCloseTo(expected, within(5.1e-5));
    }

    /** IEC 61966-2-1 (curve, primaries), CIE 15 (Lab), CSS Color 4 (white point). */
    @ParameterizedTest
    @CsvFileSource(resources = "srgb_xyz_lab.csv", numLinesToSkip = 1)
    void xyzAndLabEqualTheReference(
            String hex,
            double x,
            double y,
            double z,
            double l50,
            double a50,
            double b50,
            double lightness,
            double a,
            double b) {
        Xyz xyz = Xyz.of(Rgb.parse("#" + hex));
        assertThat(xyz.x()).isCloseTo(x, within(1e-6));
        assertThat(xyz.y()).isCloseTo(y, within(1e-6));
        assertThat(xyz.z()).isCloseTo(z, within(1e-6));
        Lab lab = Lab.of(Rgb.parse("#" + hex));
        assertThat(lab.lightness()).isCloseTo(lightness, within(1e-4));
        assertThat(lab.a()).isCloseTo(a, within(1e-3));
        assertThat(lab.b()).isCloseTo(b, within(1e-3));
    }

    /** colormath computes in 32 bits, so it agrees to about 1e-4 of the range. */
    @Test
    void labAgreesWithAnotherLibrary() {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            Rgb colour = Rgb.of(random.nextInt(1 << 24));
            var theirs = RGB.Companion.invoke(colour.hex()).toXYZ().toLAB();
            Lab ours = Lab.of(colour);
            assertThat(ours.lightness()).as(colour.hex()).isCloseTo(theirs.getL(), within(0.02));
            assertThat(ours.a()).as(colour.hex()).isCloseTo(theirs.getA(), within(0.02));
            assertThat(ours.b()).as(colour.hex()).isCloseTo(theirs.getB(), within(0.02));
        }
    }

    @Test
    void sRgbComesBackFromXyz() {
        Random random = new Random(12);
        for (int i = 0; i < 2000; i++) {
            Rgb colour = Rgb.of(random.nextInt(1 << 24));
            assertThat(Rgb.of(Xyz.of(colour))).isEqualTo(colour);
        }
        assertThat(Rgb.of(new Xyz(2, 2, 2))).isEqualTo(Rgb.WHITE);
        assertThat(Rgb.of(new Xyz(-1, -1, -1))).isEqualTo(Rgb.BLACK);
    }

    @Test
    void hexReadsBack() {
        assertThat(Rgb.parse("#1D2440").hex()).isEqualTo("#1d2440");
        assertThatThrownBy(() -> Rgb.parse("1d2440")).hasMessageContaining("#rrggbb");
        assertThatThrownBy(() -> new Rgb(256, 0, 0)).hasMessageContaining("256");
    }

    @Test
    void nearColoursNeverChainBeyondTheLimit() {
        // Seven greys in a chain, neighbours about 1 apart: single linkage would make one group.
        Map<Rgb, Double> greys = new java.util.HashMap<>();
        for (int v = 100; v < 121; v += 3) {
            greys.put(new Rgb(v, v, v), 1.0);
        }
        var groups = NearColours.group(greys, 2.0);
        assertThat(groups.size()).isGreaterThan(1);
        assertThat(groups)
                .allSatisfy(group -> assertThat(group)
                        .allSatisfy(one -> assertThat(group)
                                .allSatisfy(other -> assertThat(Ciede2000.difference(one, other))
                                        .isLessThanOrEqualTo(2.0))));
        assertThat(groups.stream().mapToInt(java.util.List::size).sum()).isEqualTo(7);
    }

    @Test
    void theColourOfMostAreaSpeaksForItsGroup() {
        var groups = NearColours.group(Map.of(Rgb.parse("#000001"), 5.0, Rgb.BLACK, 1.0, Rgb.WHITE, 9.0), 2.0);
        assertThat(groups).hasSize(2);
        assertThat(groups.get(0)).containsExactly(Rgb.parse("#000001"), Rgb.BLACK);
        assertThat(NearColours.group(Map.of(Rgb.parse("#000001"), 5.0, Rgb.BLACK, 1.0), 0))
                .hasSize(2);
    }

    /** Random colours: whatever is joined is within the limit, and no two groups could still be joined. */
    @Test
    void groupsAreCompleteAndMaximal() {
        Random random = new Random(7);
        for (int run = 0; run < 50; run++) {
            Map<Rgb, Double> areas = new java.util.HashMap<>();
            for (int i = 0; i < 30; i++) {
                areas.put(new Rgb(random.nextInt(40), random.nextInt(40), random.nextInt(40)), random.nextDouble());
            }
            var groups = NearColours.group(areas, 3);
            for (var one : groups) {
                for (var other : groups) {
                    double farthest = one.stream()
                            .flatMapToDouble(a -> other.stream().mapToDouble(b -> Ciede2000.difference(a, b)))
                            .max()
                            .orElseThrow();
                    if (one == other) {
                        assertThat(farthest).isLessThanOrEqualTo(3);
                    } else {
                        assertThat(farthest).isGreaterThan(3);
                    }
                }
            }
        }
    }
}
