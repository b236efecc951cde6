package inkstrata.separation;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.measure.Place;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Verdict.Answer;
import inkstrata.separation.Verdict.Parting;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class VerdictTest {
    private static final Parting SAND_AND_RUST = new Parting(new Place(331.88, 25.6), List.of("sand", "rust"));

    @Test
    void whatHoldsIsRoundedDown() {
        assertThat(verdict(0.4, 0.4019).line())
                .isEqualTo("Pulls may be 0.40 mm off before paper shows (asked: 0.40), first between sand and rust,"
                        + " 331.9 mm from the left edge of the sheet, 25.6 from its top.");
        assertThat(verdict(0.4, 0.4399999).line()).startsWith("Pulls may be 0.43 mm off");
        assertThat(verdict(0.4, 0.44).line()).startsWith("Pulls may be 0.44 mm off");
    }

    @Test
    void whatDoesNotHoldSaysFromWhere() {
        assertThat(verdict(0.4, 0.0679).line())
                .startsWith("Does not hold: paper shows from 0.06 mm on (asked: 0.40), first between sand and rust, ");
        assertThat(verdict(0.4, 0.0023).line())
                .startsWith("Does not hold: paper shows as soon as pulls are off (asked: 0.40), first between ");
        assertThat(verdict(0.4, 0.39999).answer()).isEqualTo(Answer.DOES_NOT_HOLD);
        assertThat(verdict(0.4, 0.4).answer()).isEqualTo(Answer.HOLDS);
    }

    /** What is asked never seems to be more than what is said to hold, though it holds. */
    @Test
    void aRegisterWithMoreDigitsIsSaidWithThem() {
        assertThat(verdict(0.405, 0.4051).line())
                .startsWith("Pulls may be 0.405 mm off before paper shows (asked: 0.405)");
        assertThat(verdict(0.405, 0.4049).line())
                .startsWith("Does not hold: paper shows from 0.40 mm on (asked: 0.405)");
    }

    @Test
    void nothingThatOpensIsSaidAsFarAsWasLooked() {
        Verdict far = new Verdict(
                4,
                OptionalDouble.of(4.01),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of(),
                List.of("sand", "rust"),
                List.of("coat"));
        assertThat(far.line())
                .isEqualTo("Pulls may be 4.01 mm off, and more, before paper shows (asked: 4.00; coat not counted).");
    }

    @Test
    void oneInkHasNothingToRegister() {
        Verdict alone = new Verdict(
                0.4,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of(),
                List.of("sand"),
                List.of());
        assertThat(alone.line()).isEqualTo("Nothing to register: only sand prints.");
        assertThat(alone.answer()).isEqualTo(Answer.NOTHING_TO_REGISTER);
    }

    @Test
    void whatMakesASetUnusableComesFirst() {
        Inspection missing = Inspection.NOTHING.withVerdict(
                verdict(0.4, 0.4).withObstacles(List.of("2 films are missing (moss, rust)")));
        Finding other = new Finding(Severity.ERROR, "ink height", new Place(1, 2), "90 µm", "60 µm", "Print less.");
        Verdict both = missing.and(Inspection.of(List.of(other))).verdict().orElseThrow();
        assertThat(both.answer()).isEqualTo(Answer.NOT_READY);
        assertThat(both.line())
                .startsWith("Not ready: 2 films are missing (moss, rust) and 1 error (ink height). Once that is mended:"
                        + " Pulls may be 0.40 mm off");
        assertThat(Inspection.of(List.of(other)).and(missing).verdict()).contains(both);
        assertThat(missing.and(Inspection.of(List.of(other.withSeverity(Severity.WARNING))))
                        .verdict())
                .isEqualTo(missing.verdict());
    }

    @Test
    void ofTwoVerdictsTheWorseCounts() {
        Inspection holds = Inspection.NOTHING.withVerdict(verdict(0.4, 0.5));
        Inspection fails = Inspection.NOTHING.withVerdict(verdict(0.4, 0.3));
        assertThat(holds.and(fails).verdict()).isEqualTo(fails.verdict());
        assertThat(fails.and(holds).verdict()).isEqualTo(fails.verdict());
    }

    private static Verdict verdict(double asked, double held) {
        return new Verdict(
                asked,
                OptionalDouble.of(held),
                OptionalDouble.empty(),
                Optional.of(SAND_AND_RUST),
                List.of(),
                List.of("sand", "rust"),
                List.of());
    }
}
