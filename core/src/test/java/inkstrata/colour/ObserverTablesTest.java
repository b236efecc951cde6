package inkstrata.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * The observer and the light entry by entry: {@code observer_d65.csv} holds the CIE 1931 colour-matching functions of 2 degrees (ISO/CIE
 * 11664-1) and the relative power of D65 (ISO/CIE 11664-2), as in Debian's colord-data 1.4.6.
 */
class ObserverTablesTest {
    /** The standard's digits are cut to six decimals here, and one source rounds the seventh another way. */
    private static final double DIGIT = 6e-7;

    @Test
    void everyEntryIsTheStandards() {
        List<double[]> rows = published();
        assertThat(rows).hasSize(Observer.BANDS);
        for (int band = 0; band < Observer.BANDS; band++) {
            double[] row = rows.get(band);
            assertThat((int) row[0]).isEqualTo(Spectrum.nanometres(band));
            String where = (int) row[0] + " nm";
            assertThat(Observer.X[band]).as("x at " + where).isCloseTo(row[1], within(DIGIT));
            assertThat(Observer.Y[band]).as("y at " + where).isCloseTo(row[2], within(DIGIT));
            assertThat(Observer.Z[band]).as("z at " + where).isCloseTo(row[3], within(DIGIT));
            assertThat(Observer.D65[band]).as("D65 at " + where).isCloseTo(100 * row[4], within(1e-9));
        }
    }

    private static List<double[]> published() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(ObserverTablesTest.class.getResourceAsStream("observer_d65.csv")),
                StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> Character.isDigit(line.charAt(0)))
                    .map(ObserverTablesTest::numbers)
                    .toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static double[] numbers(String line) {
        return List.of(line.split(",", -1)).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
