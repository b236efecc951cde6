package inkstrata.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Smooth reflectances, and the observer that looks at them. */
class SpectrumTest {
    private static final int GRID = 17;

    @Test
    void everyColourOfAGridComesBackFromAReflectanceWithinBounds() {
        IntStream.range(0, GRID * GRID * GRID).parallel().forEach(i -> {
            Rgb colour = new Rgb(level(i % GRID), level(i / GRID % GRID), level(i / GRID / GRID));
            Spectrum spectrum = Spectrum.of(colour);
            assertThat(Ciede2000.difference(spectrum.lab(), Lab.of(colour)))
                    .as(colour.hex())
                    .isLessThan(0.05);
            for (int band = 0; band < Spectrum.BANDS; band++) {
                assertThat(spectrum.at(band)).as(colour.hex()).isBetween(0.0, 1.0);
            }
        });
    }

    /** The darkest and the lightest there are, next to black and white. */
    @Test
    void soDoTheEndsOfTheRange() {
        for (String hex :
                new String[] {"#000000", "#000001", "#010000", "#000100", "#fffffe", "#feffff", "#fffeff", "#ffffff"}) {
            Rgb colour = Rgb.parse(hex);
            assertThat(Ciede2000.difference(Spectrum.of(colour).lab(), Lab.of(colour)))
                    .as(hex)
                    .isLessThan(0.05);
        }
    }

    /** Greys are flat: nothing is smoother. */
    @Test
    void greysAreFlat() {
        Rgb grey = Rgb.parse("#808080");
        Spectrum spectrum = Spectrum.of(grey);
        for (int band = 0; band < Spectrum.BANDS; band++) {
            assertThat(spectrum.at(band)).isCloseTo(Xyz.of(grey).y(), within(1e-6));
        }
    }

    /**
     * CIE 15: under equal energy all three add up alike, and daylight has the white point 0.3127, 0.3290; in steps of 10 nm without the
     * ends, which move it in the fourth digit.
     */
    @Test
    void theObserversTablesAddUp() {
        double x = 0;
        double y = 0;
        double z = 0;
        double whiteX = 0;
        double whiteY = 0;
        double whiteZ = 0;
        for (int band = 0; band < Observer.BANDS; band++) {
            x += Observer.X[band];
            y += Observer.Y[band];
            z += Observer.Z[band];
            whiteX += Observer.X[band] * Observer.D65[band];
            whiteY += Observer.Y[band] * Observer.D65[band];
            whiteZ += Observer.Z[band] * Observer.D65[band];
        }
        assertThat(x / y).isCloseTo(1, within(1e-3));
        assertThat(z / y).isCloseTo(1, within(1e-3));
        double sum = whiteX + whiteY + whiteZ;
        assertThat(whiteX / sum).isCloseTo(0.3127, within(2e-4));
        assertThat(whiteY / sum).isCloseTo(0.3290, within(2e-4));
    }

    private static int level(int step) {
        return Math.round(step * 255f / (GRID - 1));
    }
}
