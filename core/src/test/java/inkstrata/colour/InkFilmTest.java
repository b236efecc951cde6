package inkstrata.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Films of ink, against the theory of Kubelka and Munk as published and against its laws. */
class InkFilmTest {
    private static final double DIGITS = 1e-12;

    /** Kubelka (1948), J. Opt. Soc. Am. 38, 448-457: the closed form, worked out to 15 digits. */
    @ParameterizedTest
    @CsvFileSource(resources = "kubelka_munk_film.csv", numLinesToSkip = 1)
    void reflectsWhatTheTheorySays(
            double k, double s, double x, double ground, double expected, double alone, double through) {
        InkFilm film = InkFilm.of(k, s, x);
        assertThat(film.alone().at(0)).isCloseTo(alone, within(DIGITS));
        assertThat(film.through().at(0)).isCloseTo(through, within(DIGITS));
        assertThat(film.over(grey(ground)).at(0)).isCloseTo(expected, within(DIGITS));
    }

    /** Kubelka (1954), J. Opt. Soc. Am. 44, 330-335: films on films. */
    @ParameterizedTest
    @CsvFileSource(resources = "kubelka_munk_stacks.csv", numLinesToSkip = 1)
    void filmsOnFilms(String stack, double ground, double expected) {
        Map<String, InkFilm> films = Map.of("A", InkFilm.of(0.6, 0.3, 0.5), "B", InkFilm.of(0.05, 2.5, 0.8));
        List<String> topFirst = List.of(stack.split(" over ", -1));
        Spectrum seen = grey(ground);
        for (int i = topFirst.size() - 1; i >= 0; i--) {
            seen = films.get(topFirst.get(i)).over(seen);
        }
        assertThat(seen.at(7)).isCloseTo(expected, within(DIGITS));
    }

    /** K X, S X and the masstone come back from what a film reflects over white and black (Kubelka 1948, his inverse formulas). */
    @ParameterizedTest
    @CsvSource({
        "0.3, 1.2, 0.5",
        "0.012, 3.0, 0.9144678828576024",
        "1.05, 0.14, 0.059028491932933906",
        "0.1, 0.1, 0.2679491924311227"
    })
    void absorptionAndScatteringComeBack(double absorption, double scattering, double masstone) {
        InkFilm known = InkFilm.of(absorption, scattering, 1);
        InkFilm film = InkFilm.measured(known.over(Spectrum.WHITE), known.over(Spectrum.BLACK));
        assertThat(film.absorption(5)).isCloseTo(absorption, within(1e-10));
        assertThat(film.scattering(5)).isCloseTo(scattering, within(1e-10));
        assertThat(film.masstone().at(5)).isCloseTo(masstone, within(1e-10));
    }

    @Test
    void aFilmTwiceAsThickIsTwoFilms() {
        Spectrum twice = InkFilm.of(0.4, 0.9, 2).over(grey(0.3));
        InkFilm once = InkFilm.of(0.4, 0.9, 1);
        assertThat(once.over(once.over(grey(0.3))).at(3)).isCloseTo(twice.at(3), within(DIGITS));
    }

    /** The limits that hiding must have, for any colour over any ground. */
    @Test
    void clearInkFiltersAndOpaqueInkCovers() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            Spectrum swatch = Spectrum.of(Rgb.of(random.nextInt(1 << 24)));
            Spectrum ground = Spectrum.of(Rgb.of(random.nextInt(1 << 24)));
            Spectrum filtered = InkFilm.of(swatch, 0).over(ground);
            Spectrum covered = InkFilm.of(swatch, 1).over(ground);
            for (int band = 0; band < Spectrum.BANDS; band++) {
                assertThat(filtered.at(band)).isCloseTo(swatch.at(band) * ground.at(band), within(DIGITS));
                assertThat(covered.at(band)).isCloseTo(swatch.at(band), within(DIGITS));
            }
        }
    }

    @Test
    void hidingAndSwatchComeBackAndNothingShinesByItself() {
        Random random = new Random(6);
        for (int i = 0; i < 300; i++) {
            Rgb colour = Rgb.of(random.nextInt(1 << 24));
            double hiding = random.nextDouble();
            InkFilm film = InkFilm.of(Spectrum.of(colour), hiding);
            assertThat(film.hiding()).isCloseTo(hiding, within(1e-6));
            assertThat(Ciede2000.difference(film.over(Spectrum.WHITE).lab(), Lab.of(colour)))
                    .isLessThan(0.05);
            for (int band = 0; band < Spectrum.BANDS; band++) {
                assertThat(film.alone().at(band) + film.through().at(band)).isLessThanOrEqualTo(1 + DIGITS);
            }
        }
    }

    /** Film upon film, what is seen nears the masstone. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.6, 0.9})
    void manyFilmsNearTheMasstone(double hiding) {
        InkFilm film = InkFilm.of(Spectrum.of(Rgb.parse("#b4512d")), hiding);
        Spectrum seen = Spectrum.WHITE;
        double before = Double.POSITIVE_INFINITY;
        for (int films = 0; films < 60; films++) {
            seen = film.over(seen);
            double apart = Ciede2000.difference(seen.lab(), film.masstone().lab());
            assertThat(apart).isLessThanOrEqualTo(before + 1e-9);
            before = apart;
        }
        assertThat(before).isLessThan(0.01);
    }

    @Test
    void noFilmIsLighterOverBlack() {
        assertThatThrownBy(() -> InkFilm.measured(grey(0.3), grey(0.4)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no film is like that");
    }

    private static Spectrum grey(double share) {
        return Spectrum.of(band -> share);
    }
}
