package inkstrata.check;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.Rgb;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import inkstrata.separation.Verdict;
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

    private static boolean shows(Ink ink, Row row) {
        return row.top().equals(Optional.of(ink));
    }

    private static Verdict verdict(Separation separation) {
        return Check.limit(separation, separation.printed(), 0.4).verdict(List.of());
    }
}
