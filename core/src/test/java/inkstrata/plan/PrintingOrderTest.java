package inkstrata.plan;

import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.key;
import static inkstrata.plan.PlanningExample.row;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.colour.Rgb;
import inkstrata.measure.Size;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.planar.Neighbours;
import inkstrata.planar.PaintStack;
import inkstrata.planar.Pieces;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The rules are common practice, no source. */
class PrintingOrderTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");
    private static final List<Ink> INKS = List.of(NIGHT, SAND, RUST);
    private static final double REGISTER_MM = 0.4;

    @Test
    void lightInksPrintBeforeDarkOnes() {
        assertThat(order(table(Side.FRONT, INKS))).containsExactly(SAND, RUST, NIGHT);
    }

    @Test
    void aNamedKeyPrintsLastHoweverLight() {
        Ink gold = key("gold", "#d0b040");
        assertThat(order(table(Side.FRONT, List.of(gold, NIGHT, SAND)))).containsExactly(SAND, NIGHT, gold);
    }

    @Test
    void onTheBackTheKeyPrintsFirstAndLightInksLast() {
        Ink gold = key("gold", "#d0b040");
        PlanningTable back = table(Side.BACK, List.of(SAND, gold, NIGHT));
        assertThat(order(back)).containsExactly(gold, NIGHT, SAND);
        assertThat(order(table(Side.BACK, INKS), "sand", "...")).containsExactly(SAND, NIGHT, RUST);
    }

    @Test
    void theDarkInkWhoseEdgesPartTheOthersIsTheKeyThoughAnotherIsDarker() {
        Ink black = ink("black", "#101010");
        PlanningTable outlined = new PlanningTable(
                sheet(Side.FRONT),
                List.of(SAND, RUST, NIGHT, black),
                List.of(),
                List.of(row(0), row(1, SAND), row(2, RUST), row(3, NIGHT), row(4, black)),
                List.of(new Neighbours(1, 3, 60), new Neighbours(2, 3, 50), new Neighbours(1, 4, 20)));
        PrintingOrder order = PrintingOrder.of(outlined, List.of(), REGISTER_MM);
        assertThat(order.inks()).containsExactly(SAND, RUST, black, NIGHT);
        assertThat(order.decisions())
                .anySatisfy(decision -> assertThat(decision)
                        .returns("night", Decision::about)
                        .extracting(Decision::why)
                        .asString()
                        .contains("most of the edges of 2 other inks", "85 % of all edges"));
    }

    @Test
    void thinOpaqueLightsPrintAfterTheDarkTheyLieOn() {
        Ink spark = new Ink("spark", Rgb.parse("#fff4c8"), 1, Optional.empty(), false);
        Ink faint = new Ink("spark", Rgb.parse("#fff4c8"), 0.6, Optional.empty(), false);
        assertThat(order(starry(spark, 10))).containsExactly(NIGHT, spark);
        assertThat(order(starry(faint, 10))).as("it would not hide the night").containsExactly(faint, NIGHT);
        assertThat(order(starry(spark, 1))).as("it is wide").containsExactly(spark, NIGHT);
    }

    /** Light shapes of 1 mm² on dark ones with an outline of that length. */
    private static PlanningTable starry(Ink light, double outlineMm) {
        return new PlanningTable(
                sheet(Side.FRONT),
                List.of(light, NIGHT),
                List.of(),
                List.of(row(0), row(1, NIGHT), row(2, light, NIGHT)),
                List.of(new Neighbours(1, 2, outlineMm)));
    }

    @Test
    void clearInksPrintAfterWhatTheyTintAndGlossAfterAll() {
        Ink tint = drawing("tint", "#ffe040", 0.05);
        Ink solid = drawing("solid", "#305080", 0.9);
        Ink gloss = drawing("gloss", "#ffffff", 0);
        List<Ink> inks = List.of(tint, solid, gloss, NIGHT);
        List<Row> rows = new ArrayList<>(List.of(row(0), row(1, NIGHT)));
        rows.add(new Row(2, PaintStack.BARE, List.of(), 1, Set.of("tint", "solid"), new Pieces(1, Optional.empty())));
        PlanningTable table = new PlanningTable(sheet(Side.FRONT), inks, List.of(), rows, List.of());
        assertThat(order(table)).containsExactly(solid, tint, NIGHT, gloss);
    }

    @Test
    void whatIsOnTheBackPrintsAfterTheFrontNearestToTheEyeFirst() {
        Ink glow = onTheBack("glow", "#f0d060");
        Ink dusk = onTheBack("dusk", "#403060");
        PlanningTable table = table(Side.FRONT, List.of(glow, dusk, SAND, RUST));
        assertThat(order(table)).containsExactly(SAND, RUST, dusk, glow);
        List<Pull> pulls = PlanningExample.start(order(table)).pulls();
        assertThat(table.sheet().farthestFirst(pulls)).containsExactly(3, 2, 0, 1);
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
        PlanningTable table = table(Side.FRONT, INKS);
        assertThat(order(table, "night", "...")).containsExactly(NIGHT, SAND, RUST);
        assertThat(order(table, "...", "sand")).containsExactly(RUST, NIGHT, SAND);
        assertThat(order(table, "rust", "...", "sand")).containsExactly(RUST, NIGHT, SAND);
    }

    @Test
    void whatAnAskedOrderCostsIsSaidWhereItIsMuch() {
        PlanningTable table = new PlanningTable(
                sheet(Side.FRONT),
                List.of(SAND, NIGHT),
                List.of(),
                List.of(row(0), row(1, SAND), row(2, NIGHT)),
                List.of(new Neighbours(1, 2, 80)));
        assertThat(why(table, "night", "sand"))
                .contains("along 80 of the 80 mm")
                .contains("sand, night");
        assertThat(why(table, "sand", "night")).isEqualTo("It is the usual one.");
    }

    private static String why(PlanningTable table, String... names) {
        return PrintingOrder.of(table, List.of(names), REGISTER_MM)
                .decisions()
                .get(0)
                .why();
    }

    @Test
    void mistakesInTheOrderSayWhatIsKnown() {
        PlanningTable table = table(Side.FRONT, INKS);
        assertThatThrownBy(() -> order(table, "sind", "..."))
                .hasMessageContaining("'sind'")
                .hasMessageContaining("sand, rust, night");
        assertThatThrownBy(() -> order(table, "sand", "night")).hasMessageContaining("leaves out rust");
        assertThatThrownBy(() -> order(table, "sand", "...", "sand")).hasMessageContaining("'sand' twice");
    }

    private static List<Ink> order(PlanningTable table, String... names) {
        return PrintingOrder.of(table, List.of(names), REGISTER_MM).inks();
    }

    private static PlanningTable table(Side side, List<Ink> inks) {
        return new PlanningTable(sheet(side), inks, List.of());
    }

    private static Sheet sheet(Side side) {
        return new Sheet(new Size(100, 100), Rgb.WHITE, side);
    }

    private static Ink drawing(String name, String swatch, double hiding) {
        return special(
                new Ink(name, Rgb.parse(swatch), hiding, Optional.empty(), false),
                Optional.empty(),
                Optional.of("#" + name));
    }

    private static Ink onTheBack(String name, String swatch) {
        return special(ink(name, swatch), Optional.of(Side.BACK), Optional.empty());
    }

    private static Ink special(Ink ink, Optional<Side> side, Optional<String> from) {
        return new Ink(ink.name(), ink.swatch(), ink.hiding(), ink.mesh(), ink.key(), ink.film(), side, from);
    }
}
