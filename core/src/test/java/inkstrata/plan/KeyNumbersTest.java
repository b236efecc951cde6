package inkstrata.plan;

import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.row;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Rgb;
import inkstrata.measure.Size;
import inkstrata.planar.Neighbours;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The numbers of docs/printing-rules.md by which an ink is taken for the key, each from just below and from just above. */
class KeyNumbersTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink BLACK = ink("black", "#101010");

    /**
     * Sand and rust have 100 mm of edges each. L* of a grey is 116 Y^(1/3) - 16 (CIE 15), with Y = ((v / 255 + 0.055) / 1.055)^2.4
     * (IEC 61966-2-1): of #525252 34.88, of #535353 35.30.
     */
    @ParameterizedTest
    @CsvSource({"#525252, 60, true", "#535353, 60, false", "#525252, 51, true", "#525252, 49, false"})
    void anInkUpToL35WithMoreThanHalfOfTheEdgesOfTwoIsTheKey(String swatch, double share, boolean isKey) {
        Ink grey = ink("grey", swatch);
        PlanningTable table = new PlanningTable(
                new Sheet(new Size(100, 100), Rgb.WHITE, Side.FRONT),
                List.of(SAND, RUST, grey, BLACK),
                List.of(),
                List.of(row(0), row(1, SAND), row(2, RUST), row(3, grey), row(4, BLACK)),
                List.of(
                        new Neighbours(1, 3, share),
                        new Neighbours(2, 3, share),
                        new Neighbours(1, 4, 30),
                        new Neighbours(2, 4, 30),
                        new Neighbours(1, 2, 70 - share)));
        assertThat(PrintingOrder.of(table, List.of(), 0.4).inks())
                .isEqualTo(isKey ? List.of(SAND, RUST, BLACK, grey) : List.of(SAND, RUST, grey, BLACK));
    }
}
