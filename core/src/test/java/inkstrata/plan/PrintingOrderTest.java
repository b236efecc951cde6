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
        assertThat(PrintingOrder.asAsked(INKS, List.of(), Side.FRONT)).containsExactly(SAND, RUST, NIGHT);
    }

    @Test
    void aNamedKeyPrintsLastHoweverLight() {
        Ink gold = key("gold", "#d0b040");
        assertThat(PrintingOrder.lightToDark(List.of(gold, NIGHT, SAND))).containsExactly(SAND, NIGHT, gold);
    }

    @Test
    void onTheBackTheKeyPrintsFirstAndLightInksLast() {
        Ink gold = key("gold", "#d0b040");
        List<Ink> inks = List.of(SAND, gold, NIGHT);
        assertThat(PrintingOrder.asAsked(inks, List.of(), Side.BACK)).containsExactly(gold, NIGHT, SAND);
        assertThat(PrintingOrder.asAsked(INKS, List.of("sand", "..."), Side.BACK))
                .containsExactly(SAND, NIGHT, RUST);
    }

    @Test
    void theLaterPullIsNearerToTheEyeButOnTheBackTheEarlierOne() {
        assertThat(Side.FRONT.isNearer(1, 0)).isTrue();
        assertThat(Side.FRONT.isNearer(0, 1)).isFalse();
        assertThat(Side.BACK.isNearer(1, 0)).isFalse();
        assertThat(Side.BACK.isNearer(0, 1)).isTrue();
        assertThat(Side.BACK.isNearer(1, 1)).isFalse();
    }

    @Test
    void theJobsOrderIsObeyedAndDotsStandForTheRest() {
        assertThat(PrintingOrder.asAsked(INKS, List.of("night", "..."), Side.FRONT))
                .containsExactly(NIGHT, SAND, RUST);
        assertThat(PrintingOrder.asAsked(INKS, List.of("...", "sand"), Side.FRONT))
                .containsExactly(RUST, NIGHT, SAND);
        assertThat(PrintingOrder.asAsked(INKS, List.of("rust", "...", "sand"), Side.FRONT))
                .containsExactly(RUST, NIGHT, SAND);
    }

    @Test
    void mistakesInTheOrderSayWhatIsKnown() {
        assertThatThrownBy(() -> PrintingOrder.asAsked(INKS, List.of("sind", "..."), Side.FRONT))
                .hasMessageContaining("'sind'")
                .hasMessageContaining("sand, rust, night");
        assertThatThrownBy(() -> PrintingOrder.asAsked(INKS, List.of("sand", "night"), Side.FRONT))
                .hasMessageContaining("leaves out rust");
        assertThatThrownBy(() -> PrintingOrder.asAsked(INKS, List.of("sand", "...", "sand"), Side.FRONT))
                .hasMessageContaining("'sand' twice");
    }
}
