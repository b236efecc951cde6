package inkstrata.check;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.planar.RegionExample.polygon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.plan.Ink;
import inkstrata.planar.Affine;
import inkstrata.planar.Region;
import inkstrata.planar.RegionExample;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The numbers of docs/films.md, each from just below and from just above; and amounts and directions as they are told. */
class NumbersTest {
    private static final double SIDE = 60;
    private static final Ink SAND = ink("sand", "#e8d9b0");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");

    @ParameterizedTest
    @CsvSource({"0.19, 30, true", "0.21, 30, false", "0.15, 1.1, true", "0.15, 0.9, false"})
    void linesBelow20HundredthsAndFrom1MmAreThin(double width, double length, boolean isThin) {
        assertThat(thin(line(length, width))).isEqualTo(isThin ? List.of("thin line") : List.of());
    }

    private static Separation line(double length, double width) {
        return new FlatDrawing(SIDE, SIDE)
                .fill(SAND, rectangle(5, 5, 20, 20))
                .fill(SAND, rectangle(10, 40, length, width))
                .knockedOut(SAND);
    }

    @ParameterizedTest
    @CsvSource({"0.24, 30, true", "0.26, 30, false", "0.15, 1.1, true", "0.15, 0.9, false"})
    void gapsBelow25HundredthsAndFrom1MmAreThin(double width, double length, boolean isThin) {
        Region slotted = RegionExample.of(
                polygon(RegionExample.rectangle(5, 5, 50, 50), RegionExample.rectangle(10, 30, length, width)));
        Separation drawn = new FlatDrawing(SIDE, SIDE)
                .fill(SAND, rectangle(5, 5, 50, 50))
                .fill(inkstrata.colour.Rgb.WHITE, rectangle(10, 30, length, width))
                .knockedOut(SAND);
        assertThat(drawn.printed().get(0).differenceMm2(slotted)).isZero();
        assertThat(thin(drawn)).isEqualTo(isThin ? List.of("thin gap") : List.of());
    }

    @ParameterizedTest
    @CsvSource({"0.09, 20, true", "0.11, 20, false", "0.09, 5.2, true", "0.09, 4.8, false"})
    void linesBelow10HundredthsAndFrom5MmAreFine(double width, double length, boolean isFine) {
        assertThat(printable(line(length, width))).isEqualTo(isFine ? List.of("fine line") : List.of());
    }

    @ParameterizedTest
    @CsvSource({"0.99, true", "1.01, false"})
    void lessThan1SquareMillimetreIsLittleInk(double area, boolean isLittle) {
        Separation drawn = new FlatDrawing(SIDE, SIDE)
                .fill(SAND, rectangle(5, 5, 20, 20))
                .fill(NIGHT, rectangle(40, 40, area, 1))
                .knockedOut(SAND, NIGHT);
        assertThat(printable(drawn)).isEqualTo(isLittle ? List.of("little ink") : List.of());
    }

    @ParameterizedTest
    @CsvSource({"0.018, false", "0.022, true", "-0.018, false", "-0.022, true", "0.09, true"})
    void marksAreOffByMoreThan2Hundredths(double off, boolean isOff) {
        List<Finding> findings =
                with(boat(), 1, film -> film.withAround(new Affine(1, 0, 0, 1, 0, off).of(film.around())));
        assertThat(findings).extracting(Finding::rule).isEqualTo(isOff ? List.of("register marks") : List.of());
        if (isOff) {
            assertThat(findings.get(0).quantity().orElseThrow().measured()).isCloseTo(Math.abs(off), within(0.0005));
        }
    }

    /** As CSS Transforms 1 has it (rotate()): where y points down, sin below x turns clockwise. */
    @ParameterizedTest
    @CsvSource({"0.5, clockwise", "-0.5, anticlockwise", "3, clockwise", "-3, anticlockwise"})
    void aTurnIsToldTheWayItWasMade(double degrees, String way) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        double middle = SIDE / 2;
        Affine turn = new Affine(
                cos, -sin, sin, cos, middle - cos * middle + sin * middle, middle - sin * middle - cos * middle);
        Finding finding = only(with(
                boat(), 2, film -> film.withPicture(turn.of(film.picture())).withAround(turn.of(film.around()))));
        assertThat(finding.rule()).isEqualTo("turned film");
        assertThat(finding.measured())
                .matches("film2[.]svg is turned by " + String.format(java.util.Locale.ROOT, "%.1f", Math.abs(degrees))
                        + "0[0-9] degrees " + way);
    }

    @ParameterizedTest
    @CsvSource({"1.25, 1.2500", "0.8, 0.8000", "1.03, 1.0300"})
    void aSizeIsToldAsTimesTheArtwork(double larger, String told) {
        double rest = SIDE / 2 * (1 - larger);
        Affine scaled = new Affine(larger, 0, 0, larger, rest, rest);
        Finding finding = only(with(boat(), 2, film -> film.withPicture(scaled.of(film.picture()))));
        assertThat(finding.rule()).isEqualTo("film size");
        assertThat(finding.measured()).startsWith("film2.svg is " + told + " times as large as the artwork");
        assertThat(finding.quantity().orElseThrow().measured()).isCloseTo(larger, within(2e-4));
    }

    @Test
    void aStretchIsToldAsTimesTheArtwork() {
        Affine wider = new Affine(1.05, 0, 0, 1, -1.5, 0);
        Finding finding = only(with(boat(), 2, film -> film.withPicture(wider.of(film.picture()))));
        assertThat(finding.rule()).isEqualTo("stretched film");
        assertThat(finding.measured()).contains("1.0500 times as wide and 1.0000 times as high as the artwork");
    }

    /** Overlaps of less than a hundredth more than what is told: films hold to more than that, and never to less. */
    @ParameterizedTest
    @CsvSource({"0.2075, 0.20", "0.2040, 0.20", "0.3060, 0.30"})
    void whatHoldsIsToldRoundedDown(double overlap, String told) {
        Separation drawn = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 2, 8, 16))
                .fill(RUST, rectangle(10 - overlap, 2, 8, 16))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, RUST);
        List<Finding> findings = findings(drawn, films(drawn));
        assertThat(findings)
                .filteredOn(finding -> finding.rule().equals("register"))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.measured()).contains("off by " + told + " mm"));
    }

    /** A hole in a ground, well within what covers it: it holds as far as before, and nobody sees it. */
    @Test
    void anOverprintThatIsLostWithinIsTold() {
        Separation plan = new FlatDrawing(SIDE, SIDE)
                .fill(SAND, rectangle(10, 10, 40, 40))
                .fill(NIGHT, rectangle(20, 20, 20, 20))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, NIGHT);
        Region hole = box(28, 27, 5, 6);
        Finding finding =
                only(with(plan, 0, film -> film.withPicture(film.picture().minus(hole))));
        assertThat(finding.rule()).isEqualTo("lost overprint");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.measured())
                .isEqualTo("sand is knocked out where it was to run on beneath night (30.00 mm²)");
        assertThat(hole.covers(finding.place())).isTrue();
        assertThat(finding.area().orElseThrow().differenceMm2(hole)).isZero();
    }

    private static List<String> thin(Separation drawn) {
        return ThinParts.of(drawn.printed().get(0), "sand", ThinParts.drawn(drawn)).stream()
                .map(Finding::rule)
                .toList();
    }

    private static List<String> printable(Separation drawn) {
        return new Printable()
                .inspect(drawn, Job.DEFAULT).findings().stream()
                        .map(Finding::rule)
                        .toList();
    }

    private static Separation boat() {
        return SimulationTest.trapped(new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.polygon(10, 40, 20, 8, 45, 40))
                .fill(RUST, FlatDrawing.disc(25, 30, 5))
                .fill(NIGHT, FlatDrawing.polygon(8, 44, 50, 44, 44, 54, 15, 54))
                .knockedOut(SAND, RUST, NIGHT));
    }

    private static List<Film> films(Separation planned) {
        List<Region> marks = new ArrayList<>();
        for (double x : new double[] {-10, SIDE + 10}) {
            for (double y : new double[] {-10, SIDE + 10}) {
                marks.add(box(x - 4, y - 0.1, 8, 0.2).union(box(x - 0.1, y - 4, 0.2, 8)));
            }
        }
        Region around = Region.of(marks);
        List<Film> films = new ArrayList<>();
        for (Region picture : planned.printed()) {
            films.add(
                    new Film("film" + films.size() + ".svg", new Frame(0, 0, SIDE, SIDE), picture, around, List.of()));
        }
        return films;
    }

    private static List<Finding> with(Separation planned, int pull, UnaryOperator<Film> change) {
        List<Film> films = films(planned);
        films.set(pull, change.apply(films.get(pull)));
        return findings(planned, films);
    }

    /** All but notes. */
    private static List<Finding> findings(Separation planned, List<Film> films) {
        return new Comparison(planned, films.stream().map(Optional::of).toList(), CheckedFilms.REGISTER_MM)
                .inspection().findings().stream()
                        .filter(finding -> finding.severity() != Severity.NOTE)
                        .toList();
    }

    private static Finding only(List<Finding> findings) {
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    private static Region box(double x, double y, double width, double height) {
        return RegionExample.of(polygon(RegionExample.rectangle(x, y, width, height)));
    }
}
