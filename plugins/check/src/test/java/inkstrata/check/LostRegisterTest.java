package inkstrata.check;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Outline;
import inkstrata.plan.Ink;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import inkstrata.separation.Verdict;
import inkstrata.separation.Verdict.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Films that hold less than was planned, by lengths that follow from the drawing. */
class LostRegisterTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final double REGISTER_MM = 0.4;

    /** What branch and bound may miss, the grid, and what is forgiven. */
    private static final double CLOSE = 0.005;

    /** Sand reaches 0.4 mm beneath rust; along 8 mm only 0.1 mm is left of it. */
    @Test
    void aTrapThinnedAlongPartOfABorderIsAnErrorThere() {
        Separation planned = sideBySide();
        LimitFindings limit = limit(planned, cut(planned, rectangle(10.1, 12, 0.9, 8)));
        assertThat(limit.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.ERROR);
            assertThat(finding.rule()).isEqualTo(LimitFindings.LOST);
            assertThat(finding.place().x()).isEqualTo(10, within(0.4));
            assertThat(finding.place().y()).isBetween(11.5, 20.5);
            assertThat(finding.subject().ink()).isEqualTo("sand");
            assertThat(finding.measured()).contains("rust and sand", "0.10 mm");
            assertThat(finding.limit()).isEqualTo("0.40 mm, as planned");
            assertThat(finding.quantity().orElseThrow().measured()).isEqualTo(0.1, within(CLOSE));
            assertThat(finding.quantity().orElseThrow().limit().orElseThrow()).isEqualTo(0.4);
            assertThat(finding.area().orElseThrow().areaMm2()).isEqualTo(0.3 * 8, within(0.01));
        });
        Verdict verdict = limit.verdict(Obstacles.among(limit.findings()));
        assertThat(verdict.answer()).isEqualTo(Answer.DOES_NOT_HOLD);
        assertThat(verdict.line())
                .startsWith("Does not hold: paper shows from 0.10 mm on (asked: 0.40, as planned: 0.40), first");
    }

    @Test
    void eachPlaceIsSaidOnItsOwn() {
        Separation planned = sideBySide();
        LimitFindings limit = limit(planned, cut(planned, rectangle(10.1, 5, 0.9, 2), rectangle(10.2, 8, 0.9, 2)));
        assertThat(limit.findings())
                .hasSize(2)
                .allMatch(finding -> finding.rule().equals(LimitFindings.LOST))
                .anyMatch(finding -> finding.place().y() > 4 && finding.place().y() < 7.5)
                .anyMatch(
                        finding -> finding.place().y() > 7.5 && finding.place().y() < 10.5);
    }

    /** Many are counted, and the worst are named. */
    @Test
    void manyPlacesAreCounted() {
        Separation planned = sideBySide(60);
        Outline[] cuts = new Outline[24];
        for (int i = 0; i < cuts.length; i++) {
            cuts[i] = rectangle(10.1, 3 + 2 * i, 0.9, 0.5);
        }
        List<Finding> findings = limit(planned, cut(planned, cuts)).findings();
        assertThat(findings).hasSize(20);
        assertThat(findings.get(19).measured()).endsWith("and likewise in 4 smaller places");
    }

    /** The drawing's own weak place stays a warning, though the film lacks something beside it that makes nothing worse. */
    @Test
    void whatTheDrawingCannotHoldStaysAWarning() {
        Separation butt = new FlatDrawing(20, 30)
                .fill(SAND, rectangle(2, 2, 8, 26))
                .fill(RUST, rectangle(10, 2, 8, 26))
                .knockedOut(SAND, RUST);
        assertThat(limit(butt, cut(butt, rectangle(9.98, 12, 0.02, 0.5))).findings())
                .isNotEmpty()
                .filteredOn(finding -> !finding.rule().equals("gap"))
                .allMatch(finding -> finding.severity() == Severity.WARNING);
        assertThat(limit(butt, butt.printed()).findings())
                .isNotEmpty()
                .allMatch(finding -> finding.severity() == Severity.WARNING);
    }

    @Test
    void whatMattersToNoBorderIsNoLoss() {
        Separation planned = sideBySide();
        assertThat(limit(planned, cut(planned, rectangle(2, 12, 0.1, 8))).findings())
                .allMatch(finding -> finding.rule().equals("gap"));
        assertThat(limit(planned, planned.printed()).findings()).isEmpty();
    }

    /** Sand from 2 to 10.4 mm, rust from 10 to 18. */
    private static Separation sideBySide() {
        return sideBySide(30);
    }

    private static Separation sideBySide(double height) {
        return new FlatDrawing(20, height)
                .fill(SAND, rectangle(2, 2, 8.4, height - 4))
                .fill(RUST, rectangle(10, 2, 8, height - 4))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, RUST);
    }

    private static List<Region> cut(Separation planned, Outline... cuts) {
        List<Region> films = new ArrayList<>(planned.printed());
        for (Outline cut : cuts) {
            Separation out = new FlatDrawing(20, 60).fill(SAND, cut).knockedOut(SAND);
            films.set(0, films.get(0).minus(out.printed().get(0)));
        }
        return films;
    }

    private static LimitFindings limit(Separation planned, List<Region> films) {
        return Check.limit(planned, films, REGISTER_MM);
    }
}
