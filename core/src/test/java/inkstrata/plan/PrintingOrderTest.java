package inkstrata.plan;

import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.key;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrintingOrderTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");
    private static final List<Ink> INKS = List.of(NIGHT, SAND, RUST);

    @Test
    void lightInksPrintBeforeDarkOnes() {
        assertThat(PrintingOrder.asAsked(INKS, List.of())).containsExactly(SAND, RUST, NIGHT);
    }

    @Test
    void aNamedKeyPrintsLastHoweverLight() {
        Ink gold = key("gold", "#d0b040");
        assertThat(PrintingOrder.lightToDark(List.of(gold, NIGHT, SAND))).containsExactly(SAND, NIGHT, gold);
    }

    @Test
    void theJobsOrderIsObeyedAndDotsStandForTheRest() {
        assertThat(PrintingOrder.asAsked(INKS, List.of("night", "..."))).containsExactly(NIGHT, SAND, RUST);
        assertThat(PrintingOrder.asAsked(INKS, List.of("...", "sand"))).containsExactly(RUST, NIGHT, SAND);
        assertThat(PrintingOrder.asAsked(INKS, List.of("rust", "...", "sand"))).containsExactly(RUST, NIGHT, SAND);
    }

    @Test
    void mistakesInTheOrderSayWhatIsKnown() {
        assertThatThrownBy(() -> PrintingOrder.asAsked(INKS, List.of("sind", "...")))
                .hasMessageContaining("'sind'")
                .hasMessageContaining("sand, rust, night");
        assertThatThrownBy(() -> PrintingOrder.asAsked(INKS, List.of("sand", "night")))
                .hasMessageContaining("leaves out rust");
        assertThatThrownBy(() -> PrintingOrder.asAsked(INKS, List.of("sand", "...", "sand")))
                .hasMessageContaining("'sand' twice");
    }
}
