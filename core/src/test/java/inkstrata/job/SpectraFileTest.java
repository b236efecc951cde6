package inkstrata.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.InkFilm;
import inkstrata.colour.Spectrum;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpectraFileTest {
    @TempDir
    private Path folder;

    @Test
    void betweenWavelengthsSharesRunStraightAndBeyondTheEndsTheyStay() {
        InkFilm film = SpectraFile.ink(file("nm,400,420,700\n".replace("420,", steps(420)) + "white,"
                + shares(nm -> nm / 1000.0) + "\nblack," + shares(nm -> nm / 2000.0) + "\n"));
        Spectrum white = film.over(Spectrum.WHITE);
        assertThat(white.at(band(450))).isCloseTo(0.45, within(1e-12));
        assertThat(white.at(band(380))).isCloseTo(0.40, within(1e-12));
        assertThat(film.alone().at(band(610))).isCloseTo(0.305, within(1e-12));
    }

    /** What a film shows over any ground is the same whatever cards it was measured over: the two-flux theory has one film for it. */
    @Test
    void realCardsGiveTheFilmThatIdealOnesGive() {
        InkFilm film = InkFilm.measured(Spectrum.of(band -> 0.7), Spectrum.of(band -> 0.2));
        double white = 0.83;
        double black = 0.04;
        double overWhite = film.over(Spectrum.of(band -> white)).at(0);
        double overBlack = film.over(Spectrum.of(band -> black)).at(0);
        InkFilm again = SpectraFile.ink(file("nm," + steps(400) + "700\nwhite," + shares(nm -> overWhite) + "\nblack,"
                + shares(nm -> overBlack) + "\nwhite card," + shares(nm -> white) + "\nblack card,"
                + shares(nm -> black)));
        assertThat(again.alone().at(0)).isCloseTo(0.2, within(1e-9));
        assertThat(again.through().at(0)).isCloseTo(film.through().at(0), within(1e-9));
    }

    @Test
    void aSheetMeasuredOnceHidesAll() {
        InkFilm sheet = SpectraFile.sheet(file("nm," + steps(400) + "700\nwhite," + shares(nm -> 0.8) + "\n"));
        assertThat(sheet.hiding()).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nm,500,510\\nwhite,1,1 | line 1 | 400 nm or less",
                "nm,400,500,700\\nwhite,1,1,1 | line 1 | at most 20 nm",
                "nm,400,x\\n | line 1 | 'x' is not a number",
            })
    void aFaultNamesItsLine(String text, String where, String what) {
        Path file = file(text.replace("\\n", "\n"));
        assertThatThrownBy(() -> SpectraFile.ink(file))
                .hasMessageContaining("ink.csv")
                .hasMessageContaining(where)
                .hasMessageContaining(what);
    }

    @Test
    void whatNoFilmCanReflectIsAFault() {
        String head = "nm," + steps(400) + "700\n";
        Path percent = file(head + "white," + shares(nm -> 80) + "\n");
        assertThatThrownBy(() -> SpectraFile.ink(percent)).hasMessageContaining("Divide per cent by 100");
        Path turned = file(head + "white," + shares(nm -> 0.1) + "\nblack," + shares(nm -> 0.5) + "\n");
        assertThatThrownBy(() -> SpectraFile.ink(turned)).hasMessageContaining("no film is like that");
        Path half = file(head + "white," + shares(nm -> 0.1) + "\n");
        assertThatThrownBy(() -> SpectraFile.ink(half)).hasMessageContaining("no line 'black'");
    }

    private Path file(String text) {
        try {
            return Files.writeString(folder.resolve("ink.csv"), text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Wavelengths from one on to 680 in steps of 20, each with a comma behind it. */
    private static String steps(int from) {
        return IntStream.iterate(from, nm -> nm <= 680, nm -> nm + 20)
                .mapToObj(nm -> nm + ",")
                .collect(Collectors.joining());
    }

    private static String shares(IntToDoubleFunction share) {
        return IntStream.iterate(400, nm -> nm <= 700, nm -> nm + 20)
                .mapToObj(nm -> String.format(Locale.ROOT, "%.12f", share.applyAsDouble(nm)))
                .collect(Collectors.joining(","));
    }

    private static int band(int nanometres) {
        return IntStream.range(0, Spectrum.BANDS)
                .filter(band -> Spectrum.nanometres(band) == nanometres)
                .findFirst()
                .orElseThrow();
    }
}
