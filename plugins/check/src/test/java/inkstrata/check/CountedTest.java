package inkstrata.check;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.Rgb;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.RegionExample;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import inkstrata.separation.Verdict;
import inkstrata.separation.Verdict.Answer;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.junit.jupiter.api.Test;

/** Which inks keep paper from showing: none that would hide every fault. */
class CountedTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink BASE = ink("base", "#f2e6a0");
    private static final Ink COAT = new Ink("coat", Rgb.parse("#fffffe"), 0, Optional.empty(), false);

    /** Sand and rust only touch. */
    private static final FlatDrawing DRAWING =
            new FlatDrawing(20, 20).fill(SAND, rectangle(2, 2, 8, 16)).fill(RUST, rectangle(10, 2, 8, 16));

    @Test
    void aClearCoatOverEverythingHidesNothing() {
        for (BiPredicate<Ink, Row> coated : List.<BiPredicate<Ink, Row>>of(
                (ink, row) -> ink.equals(COAT) || shows(ink, row),
                (ink, row) -> ink.equals(COAT) ? !row.top().isEmpty() : shows(ink, row),
                (ink, row) -> ink.equals(COAT) ? shows(SAND, row) : shows(ink, row))) {
            Verdict verdict = verdict(DRAWING.separated(coated, SAND, RUST, COAT));
            assertThat(verdict.line())
                    .startsWith(
                            "Does not hold: paper shows as soon as pulls are off (asked: 0.40; coat not counted), first");
            assertThat(verdict.inks()).containsExactly("sand", "rust");
        }
    }

    @Test
    void whatLiesBeneathEverythingHidesNothing() {
        Separation based = DRAWING.separated((ink, row) -> ink.equals(BASE) || shows(ink, row), BASE, SAND, RUST);
        assertThat(verdict(based).line()).contains("(asked: 0.40; base not counted), first between rust and sand");
        assertThat(verdict(based).heldMm().orElseThrow()).isEqualTo(0, within(0.003));
    }

    @Test
    void oneInkHasNothingToRegister() {
        Separation alone =
                new FlatDrawing(20, 20).fill(SAND, rectangle(2, 2, 8, 16)).knockedOut(SAND);
        assertThat(verdict(alone).line()).isEqualTo("Nothing to register: only sand prints.");
        Separation coated = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(2, 2, 8, 16))
                .separated((ink, row) -> ink.equals(COAT) || shows(ink, row), SAND, COAT);
        assertThat(verdict(coated).line())
                .isEqualTo("Nothing to register: no two inks have to fit each other (coat not counted).");
    }

    /** The base was to lie beneath all of rust; cut out there it only meets it, as far as it is cut out. */
    @Test
    void aBaseThatIsCutBackCounts() {
        Separation based =
                DRAWING.separated((ink, row) -> ink.equals(BASE) || (ink.equals(RUST) && shows(ink, row)), BASE, RUST);
        assertThat(verdict(based).answer()).isEqualTo(Answer.NOTHING_TO_REGISTER);
        Region cutOut = RegionExample.of(RegionExample.polygon(RegionExample.rectangle(10, 2, 8, 16)));
        List<Region> films =
                List.of(based.printed().get(0).minus(cutOut), based.printed().get(1));
        Holding holding = Check.limit(based, films, 0.4);
        assertThat(holding.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo(LimitFindings.LOST);
            assertThat(finding.severity()).isEqualTo(Severity.ERROR);
            assertThat(finding.subject().ink()).isEqualTo("base");
            assertThat(cutOut.grown(1, Corners.ROUND).covers(finding.place())).isTrue();
            assertThat(finding.area().orElseThrow().areaMm2()).isEqualTo(8 * 16, within(0.01));
        });
        Verdict verdict = holding.verdict(List.of());
        assertThat(verdict.answer()).isEqualTo(Answer.DOES_NOT_HOLD);
        assertThat(verdict.heldMm().orElseThrow()).isEqualTo(0, within(0.003));
        assertThat(verdict.inks()).containsExactly("base", "rust");
    }

    /** In the midst of what covers it, farther from its edge than pulls may be off, nobody sees it. */
    @Test
    void aBaseThatIsCutOutFarFromAnyEdgeHoldsAllTheSame() {
        Separation based =
                DRAWING.separated((ink, row) -> ink.equals(BASE) || (ink.equals(RUST) && shows(ink, row)), BASE, RUST);
        Region cutOut = RegionExample.of(RegionExample.polygon(RegionExample.rectangle(10.5, 2.5, 7, 15)));
        Holding holding = Check.limit(
                based,
                List.of(based.printed().get(0).minus(cutOut), based.printed().get(1)),
                0.4);
        assertThat(holding.findings()).isEmpty();
        assertThat(holding.verdict(List.of()).answer()).isEqualTo(Answer.NOTHING_TO_REGISTER);
    }

    private static boolean shows(Ink ink, Row row) {
        return row.top().equals(Optional.of(ink));
    }

    private static Verdict verdict(Separation separation) {
        return Check.limit(separation, separation.printed(), 0.4).verdict(List.of());
    }
}
