package inkstrata.check;

import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.planar.RegionExample.polygon;
import static inkstrata.planar.RegionExample.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.film.Film;
import inkstrata.measure.Frame;
import inkstrata.plan.Ink;
import inkstrata.planar.Affine;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.RegionExample;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of films whose faults are known to the last number. */
class CausesTest {
    private static final double SIDE = 60;
    private static final Frame PAGE = new Frame(0, 0, SIDE, SIDE);
    private static final Ink SAND = ink("sand", "#e8d9b0");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");

    /** A sail, a disc in it, and a hull: no two of them touch but disc and sail. */
    private static Separation boat() {
        return SimulationTest.trapped(new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.polygon(10, 40, 20, 8, 45, 40))
                .fill(RUST, FlatDrawing.disc(25, 30, 5))
                .fill(NIGHT, FlatDrawing.polygon(8, 44, 50, 44, 44, 54, 15, 54))
                .knockedOut(SAND, RUST, NIGHT));
    }

    private static Film film(int pull, Region picture) {
        return new Film("film" + pull + ".svg", PAGE, picture, marks(), List.of());
    }

    /** Four crosses beside the picture. */
    private static Region marks() {
        List<Region> marks = new ArrayList<>();
        for (double x : new double[] {-10, SIDE + 10}) {
            for (double y : new double[] {-10, SIDE + 10}) {
                marks.add(box(x - 4, y - 0.1, 8, 0.2).union(box(x - 0.1, y - 4, 0.2, 8)));
            }
        }
        return Region.of(marks);
    }

    private static Region box(double x, double y, double width, double height) {
        return RegionExample.of(polygon(rectangle(x, y, width, height)));
    }

    private static List<Finding> serious(Separation planned, List<Optional<Film>> films) {
        return new Comparison(planned, films, CheckedFilms.REGISTER_MM)
                .inspection().findings().stream()
                        .filter(finding -> finding.severity() != Severity.NOTE)
                        .toList();
    }

    /** All films as planned, one of them changed. */
    private static List<Finding> with(Separation planned, int changed, UnaryOperator<Film> change) {
        return serious(
                planned,
                IntStream.range(0, planned.printed().size())
                        .mapToObj(pull -> film(pull, planned.printed().get(pull)))
                        .map(film -> film.file().equals("film" + changed + ".svg") ? change.apply(film) : film)
                        .map(Optional::of)
                        .toList());
    }

    private static List<Finding> withAll(Separation planned, UnaryOperator<Film> change) {
        return serious(
                planned,
                IntStream.range(0, planned.printed().size())
                        .mapToObj(pull -> Optional.of(
                                change.apply(film(pull, planned.printed().get(pull)))))
                        .toList());
    }

    private static Film moved(Film film, Affine place) {
        return new Film(film.file(), film.page(), place.of(film.picture()), place.of(film.around()), List.of());
    }

    private static Finding only(List<Finding> findings) {
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    @Test
    void rightFilmsAreRight() {
        assertThat(withAll(boat(), film -> film)).isEmpty();
    }

    @Test
    void aPictureThatIsGoneIsSaidThoughMarksAreThere() {
        for (int pull = 0; pull < 3; pull++) {
            Finding finding = only(with(boat(), pull, film -> film.withPicture(Region.EMPTY)));
            assertThat(finding.rule()).isEqualTo("empty film");
            assertThat(finding.severity()).isEqualTo(Severity.ERROR);
            assertThat(finding.subject().pull()).hasValue(pull);
            assertThat(finding.subject().file()).isEqualTo("film" + pull + ".svg");
            assertThat(finding.area().orElseThrow()).isEqualTo(boat().printed().get(pull));
        }
    }

    @Test
    void allPicturesGoneAreSaid() {
        assertThat(withAll(boat(), film -> film.withPicture(Region.EMPTY)))
                .extracting(Finding::rule)
                .containsExactly("empty film", "empty film", "empty film");
    }

    @Test
    void areasAreTrue() {
        Region speck = box(50, 10, 3, 3);
        Finding finding =
                only(with(boat(), 1, film -> film.withPicture(film.picture().union(speck))));
        assertThat(finding.rule()).isEqualTo("ink on sheet");
        assertThat(finding.measured()).contains("(9.00 mm²)");
        assertThat(finding.quantity().orElseThrow().measured()).isCloseTo(9, within(1e-6));
        assertThat(finding.area().orElseThrow().differenceMm2(speck)).isZero();
    }

    /** Sheet, sail and trap are under it: it is one speck all the same. */
    @Test
    void aSpeckAcrossABorderIsOneFinding() {
        Region speck = box(30, 20, 3, 3);
        Finding finding =
                only(with(boat(), 2, film -> film.withPicture(film.picture().union(speck))));
        assertThat(finding.measured()).contains("(9.00 mm²)");
        assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    }

    @Test
    void aHoleHasItsAreaToo() {
        Region hole = box(25, 47, 3, 3);
        Finding finding =
                only(with(boat(), 2, film -> film.withPicture(film.picture().minus(hole))));
        assertThat(finding.rule()).isEqualTo("missing ink");
        assertThat(finding.measured()).contains("(9.00 mm²)");
    }

    @Test
    void aDiscAtAnotherSizeIsNotMirrored() {
        Affine smaller = new Affine(0.97, 0, 0, 0.97, 1, 2);
        Finding finding = only(with(boat(), 1, film -> film.withPicture(smaller.of(film.picture()))));
        assertThat(finding.rule()).isEqualTo("film size");
        assertThat(finding.measured()).isEqualTo("film1.svg is 0.9700 times as large as the artwork");
        assertThat(finding.quantity().orElseThrow().measured()).isCloseTo(0.97, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "0.75, points (1/72 inch) taken for px (1/96 inch)",
        "1.33333333, px (1/96 inch) taken for points (1/72 inch)",
        "0.26458333, mm taken for px (1/96 inch)",
        "3.77952756, px (1/96 inch) taken for mm",
        "0.35277778, mm taken for points (1/72 inch)",
        "10, mm taken for cm",
        "0.1, cm taken for mm",
        "0.03937008, inches taken for mm"
    })
    void aUnitTakenForAnotherIsSaidOnce(double larger, String slip) {
        Affine scaled = new Affine(larger, 0, 0, larger, 0, 0);
        Finding finding = only(withAll(boat(), film -> cut(moved(film, scaled))));
        assertThat(finding.rule()).isEqualTo("film size");
        assertThat(finding.measured()).startsWith("all 3 films are").contains(slip);
        assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    }

    /** At 75 % the lower marks lie in the frame of the picture. */
    @Test
    void marksOfAFilmThatIsTooSmallAreNotMissed() {
        Affine scaled = new Affine(0.75, 0, 0, 0.75, 0, 0);
        for (int pull = 0; pull < 3; pull++) {
            assertThat(only(with(boat(), pull, film -> cut(moved(film, scaled))))
                            .rule())
                    .isEqualTo("film size");
        }
    }

    @Test
    void filmsThatWereExchangedAndOneOfThemMirroredAreNamedSo() {
        Separation boat = boat();
        Affine mirror = new Affine(-1, 0, 0, 1, SIDE, 0);
        List<Finding> findings = serious(
                boat,
                List.of(
                        Optional.of(film(0, boat.printed().get(2))),
                        Optional.of(film(1, boat.printed().get(1))),
                        Optional.of(moved(film(2, boat.printed().get(0)), mirror))));
        assertThat(findings)
                .extracting(Finding::measured)
                .containsExactlyInAnyOrder(
                        "film0.svg prints what night is to print", "film2.svg prints what sand is to print, mirrored");
        assertThat(findings).extracting(Finding::rule).containsOnly("swapped films");
    }

    /** Black all over but for what is to print: its marks are clear on black. */
    @Test
    void marksOfANegativeAreNotMissed() {
        Region page = box(-20, -20, SIDE + 40, SIDE + 40);
        Finding finding = only(with(
                boat(),
                0,
                film -> cut(film.withPicture(page.minus(film.picture()).minus(film.around()))
                        .withAround(Region.EMPTY))));
        assertThat(finding.rule()).isEqualTo("negative film");
    }

    /** The rectangle is cut, and to the left of the line a hair of its edge is gone as well. */
    @Test
    void whatIsCutOffIsSaidWithTheHairThatHangsOnIt() {
        Finding finding = only(with(
                boat(),
                2,
                film -> film.withPicture(
                        film.picture().intersection(box(0, 0, 31.25, SIDE)).minus(box(30, 44, 2, 0.06)))));
        assertThat(finding.rule()).isEqualTo("cut film");
    }

    /** As the reader cuts: what lies beyond the picture's frame lies around it. */
    private static Film cut(Film film) {
        Region all = film.picture().union(film.around());
        Region frame = box(0, 0, SIDE, SIDE);
        return film.withPicture(all.intersection(frame)).withAround(all.minus(frame));
    }

    @Test
    void theBarTellsWhatWasScaled() {
        Region bar = bar();
        Affine scaled = new Affine(0.75, 0, 0, 0.75, 0, 0);
        Finding all = only(withAll(
                boat(), film -> cut(moved(film.withAround(film.around().union(bar)), scaled))));
        assertThat(all.measured()).endsWith("; its bar of 100 mm is 75.00 mm long");
        Finding alone = only(withAll(
                boat(), film -> film.withAround(film.around().union(bar)).withPicture(scaled.of(film.picture()))));
        assertThat(alone.measured()).endsWith("; its bar of 100 mm is 100.00 mm long, so the picture alone was scaled");
    }

    /** Ten blocks in two rows, below the picture. */
    private static Region bar() {
        List<Region> blocks = new ArrayList<>();
        for (int block = 0; block < 10; block++) {
            blocks.add(box(-20 + 10 * block, 80 + block % 2, 10, 1));
        }
        return Region.of(blocks);
    }

    @Test
    void aMirroredSetIsOneFindingDiscAndAll() {
        Affine mirror = new Affine(-1, 0, 0, 1, SIDE, 0);
        Finding finding = only(withAll(boat(), film -> moved(film, mirror)));
        assertThat(finding.rule()).isEqualTo("mirrored film");
        assertThat(finding.measured()).startsWith("all 3 films are mirrored");
        assertThat(finding.remedy()).contains("sheet.print: back");
    }

    @Test
    void oneFilmThatIsMirroredUnlikeTheOthersIsNamed() {
        Affine mirror = new Affine(-1, 0, 0, 1, SIDE, 0);
        Finding finding = only(with(boat(), 0, film -> moved(film, mirror)));
        assertThat(finding.rule()).isEqualTo("mirrored film");
        assertThat(finding.measured()).isEqualTo("film0.svg is mirrored");
    }

    @ParameterizedTest
    @CsvSource({"0.3", "0.1", "0.06"})
    void spreadAndChokedFilmsAreOneFindingEach(double amount) {
        for (int pull = 0; pull < 3; pull += 2) {
            Finding spread = only(with(
                    boat(), pull, film -> film.withPicture(film.picture().grown(amount, Corners.ROUND))));
            assertThat(spread.rule()).isEqualTo("spread film");
            assertThat(spread.quantity().orElseThrow().measured()).isCloseTo(amount, within(0.003));
            Finding choked = only(
                    with(boat(), pull, film -> film.withPicture(film.picture().shrunk(amount))));
            assertThat(choked.rule()).isEqualTo("choked film");
            assertThat(choked.quantity().orElseThrow().measured()).isCloseTo(amount, within(0.003));
        }
    }

    @Test
    void spreadAgainstTheDrawingWithoutTrapsIsKnownToo() {
        Separation boat = boat();
        Region drawn = boat.map().dissolve(boat.plan().pulls().get(0).prints());
        List<Finding> findings = with(boat, 0, film -> film.withPicture(drawn.grown(0.15, Corners.MITRE)));
        assertThat(findings)
                .filteredOn(finding -> finding.rule().equals("spread film"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.quantity().orElseThrow().measured()).isCloseTo(0.15, within(0.003)));
    }

    @Test
    void aSetThatIsSpreadIsOneFinding() {
        Finding finding =
                only(withAll(boat(), film -> film.withPicture(film.picture().grown(0.2, Corners.ROUND))));
        assertThat(finding.measured()).isEqualTo("all 3 films are spread by 0.20 mm all round");
    }

    /** They fit each other: only their place on the sheet is another. */
    @Test
    void aSetThatWasMovedIsOneWarning() {
        Finding finding = only(withAll(boat(), film -> cut(moved(film, new Affine(1, 0, 0, 1, 4.5, -7)))));
        assertThat(finding.measured())
                .isEqualTo("all 3 films lie 4.500 mm too far right and 7.000 mm too far up; they fit each other");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    }

    @Test
    void aCopyOfAnothersFilmHidesNoFaultOfThat() {
        Separation boat = boat();
        Region holed = boat.printed().get(2).minus(box(25, 47, 3, 3));
        List<Finding> findings = serious(
                boat,
                List.of(
                        Optional.of(film(0, boat.printed().get(2))),
                        Optional.of(film(1, boat.printed().get(1))),
                        Optional.of(film(2, holed))));
        assertThat(findings).extracting(Finding::rule).containsExactlyInAnyOrder("swapped films", "missing ink");
        assertThat(findings.get(0).measured() + findings.get(1).measured()).contains("as film2.svg does");
    }

    @Test
    void inkOverAllOfAnotherIsOneFinding() {
        Separation boat = boat();
        Finding finding = only(with(
                boat,
                2,
                film -> film.withPicture(film.picture().union(boat.printed().get(0)))));
        assertThat(finding.rule()).isEqualTo("prints over");
        assertThat(finding.measured()).contains("night prints all of what sand is to show");
        Region drawn = boat.map().dissolve(boat.plan().pulls().get(0).prints());
        Finding shown =
                only(with(boat, 2, film -> film.withPicture(film.picture().union(drawn))));
        assertThat(shown.measured()).contains("night prints all of what sand is to show");
        Finding solid = only(with(boat, 2, film -> film.withPicture(box(0, 0, SIDE, SIDE))));
        assertThat(solid.rule()).isEqualTo("solid film");
    }

    @Test
    void aFilmThatIsCutOffIsOneFinding() {
        Finding finding =
                only(with(boat(), 2, film -> film.withPicture(film.picture().intersection(box(0, 0, 31.25, SIDE)))));
        assertThat(finding.rule()).isEqualTo("cut film");
        assertThat(finding.measured())
                .startsWith("film2.svg is cut off: nothing prints right of a line 31.25 mm from the sheet's left edge");
    }

    /** A disc that is left looks like the other one made smaller. */
    @Test
    void whatLiesRightIsNotScaled() {
        Separation discs = SimulationTest.trapped(new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.disc(40, 40, 10))
                .fill(SAND, FlatDrawing.disc(15, 15, 3))
                .fill(NIGHT, FlatDrawing.polygon(2, 55, 20, 55, 20, 58, 2, 58))
                .knockedOut(SAND, NIGHT));
        Region left = discs.printed().get(0).minus(box(25, 25, 15, 35));
        Finding half = only(with(discs, 0, film -> film.withPicture(left)));
        assertThat(half.rule()).isIn("missing ink", "cut film");
        Region large = discs.printed().get(0).minus(box(0, 0, 25, 25));
        Region moved = discs.printed().get(0).minus(large).union(large.movedBy(2000, 0));
        assertThat(only(with(discs, 0, film -> film.withPicture(moved))).rule()).isEqualTo("moved part");
    }

    /** Three sails and a keel of one ink, with another below them. */
    private static Separation fleet() {
        return SimulationTest.trapped(new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.polygon(6, 20, 10, 4, 16, 20))
                .fill(SAND, FlatDrawing.polygon(22, 24, 40, 24, 40, 34, 22, 34))
                .fill(SAND, FlatDrawing.polygon(44, 40, 52, 22, 56, 41))
                .fill(SAND, FlatDrawing.disc(14, 38, 6))
                .fill(NIGHT, FlatDrawing.polygon(22, 34, 40, 34, 38, 50, 25, 50))
                .knockedOut(SAND, NIGHT));
    }

    @ParameterizedTest
    @CsvSource({
        "0.2, 0, 0.200 mm farther right",
        "-0.2, 0, 0.200 mm farther left",
        "0, 0.5, 0.500 mm farther down",
        "0.7, -0.3, 0.700 mm farther right and 0.300 mm farther up",
        "-2, 0, 2.000 mm farther left",
        "0.1, 0, 0.100 mm farther right"
    })
    void anIslandThatSlidIsOneFinding(double dx, double dy, String where) {
        Separation fleet = fleet();
        for (Region island :
                fleet.printed().get(0).polygons().stream().map(Region::of).toList()) {
            Finding finding = only(with(
                    fleet,
                    0,
                    film -> film.withPicture(
                            film.picture().minus(island).union(island.movedBy((int) Math.rint(dx * 4000), (int)
                                    Math.rint(dy * 4000))))));
            assertThat(finding.rule()).isEqualTo("moved part");
            assertThat(finding.severity()).isEqualTo(Severity.ERROR);
            assertThat(finding.measured()).startsWith("one part of film0.svg").endsWith(where + " than the rest");
            assertThat(finding.quantity().orElseThrow().measured()).isCloseTo(Math.hypot(dx, dy), within(0.002));
            assertThat(island.covers(finding.place())).isTrue();
            assertThat(finding.subject().pull()).hasValue(0);
        }
    }

    /** As of a film that was put together from two sheets: what lies beyond the line is a half of the rectangle, and more. */
    @ParameterizedTest
    @CsvSource({"0.5, 0", "0, 0.5", "0.3, -0.25", "0, 1.5"})
    void aHalfThatSlidIsOneFinding(double dx, double dy) {
        Finding finding = only(with(fleet(), 0, film -> {
            Region right = film.picture().intersection(box(30, 0, 30, SIDE));
            return film.withPicture(film.picture().minus(right).union(right.movedBy((int) Math.rint(dx * 4000), (int)
                    Math.rint(dy * 4000))));
        }));
        assertThat(finding.rule()).isEqualTo("moved part");
        assertThat(finding.quantity().orElseThrow().measured()).isCloseTo(Math.hypot(dx, dy), within(0.005));
        assertThat(finding.measured())
                .matches("what film0.svg prints (right of|left of) a line 30[.]00 mm from the sheet's left edge .*");
    }

    /** Where it came to lie over the rest, nothing tells where the line was. */
    @Test
    void aHalfThatSlidOverTheRestIsOneFinding() {
        Finding finding = only(with(fleet(), 0, film -> {
            Region right = film.picture().intersection(box(30, 0, 30, SIDE));
            return film.withPicture(film.picture().minus(right).union(right.movedBy(-1600, 0)));
        }));
        assertThat(finding.rule()).isEqualTo("moved part");
        assertThat(finding.measured()).endsWith(" lies 0.400 mm farther left than the rest");
    }

    @Test
    void aHoleInAPartThatSlidIsSaidBesides() {
        Region island = box(22, 24, 18, 10);
        List<Finding> findings = with(fleet(), 0, film -> {
            Region moved = film.picture().intersection(box(20, 22, 22, 15));
            return film.withPicture(
                    film.picture().minus(moved).union(moved.movedBy(-2000, 0)).minus(box(30, 27, 2, 2)));
        });
        assertThat(findings).extracting(Finding::rule).containsExactlyInAnyOrder("moved part", "missing ink");
        assertThat(island.covers(findings.get(0).place())).isTrue();
        assertThat(island.covers(findings.get(1).place())).isTrue();
    }

    @Test
    void aBarThatSlidAlongItselfIsMoved() {
        Separation bar = SimulationTest.trapped(new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.polygon(10, 10, 40, 10, 40, 11, 10, 11))
                .fill(NIGHT, FlatDrawing.polygon(10, 40, 30, 40, 20, 55))
                .knockedOut(SAND, NIGHT));
        Finding finding =
                only(with(bar, 0, film -> film.withPicture(film.picture().movedBy(2000, 0))));
        assertThat(finding.measured()).isEqualTo("film0.svg lies 0.500 mm too far right");
    }

    @Test
    void aSolidFilmOverATinyPictureIsNoLargerPicture() {
        Separation tiny = SimulationTest.trapped(new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.polygon(20, 20, 22, 20, 22, 22, 20, 22))
                .fill(NIGHT, FlatDrawing.polygon(10, 40, 30, 40, 20, 55))
                .knockedOut(SAND, NIGHT));
        Finding finding = only(with(tiny, 0, film -> film.withPicture(box(0, 0, SIDE, SIDE))));
        assertThat(finding.rule()).isEqualTo("solid film");
    }

    @Test
    void aBlobOnTheFilmsOwnEdgeOverBareSheetIsAnError() {
        Finding finding =
                only(with(boat(), 2, film -> film.withPicture(film.picture().union(box(25, 53, 3, 3)))));
        assertThat(finding.rule()).isEqualTo("ink on sheet");
        assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    }

    /** Nobody sees the place itself: that the two inks part along its edge is what is wrong, and the verdict knows it. */
    @Test
    void anOverprintThatIsLostIsSaidOnceByWhatTheFilmsHold() {
        Separation plan = new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.polygon(10, 10, 50, 10, 50, 50, 10, 50))
                .fill(NIGHT, FlatDrawing.polygon(20, 20, 40, 20, 40, 40, 20, 40))
                .fill(RUST, FlatDrawing.polygon(10, 53, 20, 53, 15, 58))
                .separated(
                        (ink, row) -> ink.equals(SAND)
                                ? row.inks().contains(Optional.of(SAND))
                                : row.top().equals(Optional.of(ink)),
                        SAND,
                        RUST,
                        NIGHT);
        List<Optional<Film>> films = List.of(
                Optional.of(film(0, plan.printed().get(0).minus(plan.printed().get(2)))),
                Optional.of(film(1, plan.printed().get(1))),
                Optional.of(film(2, plan.printed().get(2))));
        Inspection inspection = new Comparison(plan, films, CheckedFilms.REGISTER_MM).inspection();
        assertThat(only(serious(plan, films)).rule()).isEqualTo("register lost");
        assertThat(inspection.verdict().orElseThrow().heldMm().orElseThrow()).isLessThan(0.01);
    }

    @Test
    void aSetOfWhichOneInkAlonePrintsIsScaledTogether() {
        Separation plan = SimulationTest.trapped(new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.polygon(10, 40, 20, 8, 45, 40))
                .knockedOut(SAND, NIGHT));
        Affine scaled = new Affine(0.26458333, 0, 0, 0.26458333, 0, 0);
        Finding finding = only(withAll(plan, film -> cut(moved(film, scaled))));
        assertThat(finding.measured()).startsWith("all 2 films are 0.2646 times as large");
    }

    /** Cut in the middle, through the thin line that joins its parts: not this place and that. */
    @Test
    void halfAFilmThatIsGoneIsOneFinding() {
        Separation plan = SimulationTest.trapped(new FlatDrawing(SIDE, SIDE)
                .fill(SAND, FlatDrawing.polygon(10, 10, 50, 10, 50, 20, 10, 20))
                .fill(SAND, FlatDrawing.polygon(30, 20, 50, 35, 35, 45))
                .fill(RUST, FlatDrawing.polygon(5, 30, 20, 30, 20, 50, 5, 50))
                .knockedOut(SAND, RUST));
        Region left = plan.printed().get(0).minus(box(25, 12, 30, 48));
        Finding finding = only(with(plan, 0, film -> film.withPicture(left)));
        assertThat(finding.rule()).isIn("missing ink", "cut film");
    }
}
