package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Rgb;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A strip that is found once more in a later map is told once. */
class SeamPlacesTest {
    private static final Paint RED = new Paint(new Rgb(180, 20, 20));
    private static final SeamStacks FIRST =
            new SeamStacks(List.of(PaintStack.BARE, new PaintStack(List.of(RED))), MapSettings.ALL);

    /** The same stacks in another order. */
    private static final SeamStacks LATER =
            new SeamStacks(List.of(new PaintStack(List.of(RED)), PaintStack.BARE), MapSettings.ALL);

    @Test
    void whatWasFoundIsKnownFromBothSidesAndInParts() {
        SeamPlaces places = new SeamPlaces();
        List<List<SeamStretch>> all = List.of(List.of(along(0, 0, 100_000, 40_000)));
        assertThat(places.notBefore(all, FIRST)).isEqualTo(all);
        assertThat(places.notBefore(List.of(List.of(along(1, 0, 100_000, 40_000))), LATER))
                .allMatch(List::isEmpty);
        assertThat(places.notBefore(
                        List.of(
                                List.of(along(1, 49_000, 51_000, 40_000), along(1, 10, 30, 40_000)),
                                List.of(along(1, 99_980, 99_990, 40_010))),
                        LATER))
                .allMatch(List::isEmpty);
    }

    @Test
    void whatLiesElsewhereOrIsOfOtherPaintIsNew() {
        SeamPlaces places = new SeamPlaces();
        places.notBefore(List.of(List.of(along(0, 0, 100_000, 40_000))), FIRST);
        List<List<SeamStretch>> beyond = List.of(List.of(along(1, 100_000, 100_020, 40_000)));
        assertThat(places.notBefore(beyond, LATER)).isEqualTo(beyond);
        List<List<SeamStretch>> above = List.of(List.of(along(1, 0, 100_000, 40_200)));
        assertThat(places.notBefore(above, LATER)).isEqualTo(above);
        List<List<SeamStretch>> red = List.of(List.of(along(0, 0, 100_000, 40_000)));
        assertThat(places.notBefore(red, LATER)).isEqualTo(red);
    }

    /** 0.02 mm high, of a stack. */
    private static SeamStretch along(int strip, int from, int to, int y) {
        return new SeamStretch(
                strip, -1, -1, 0, 1, 7, way(from, y), way(to, y), Math.abs(to - (double) from), 80, true, true);
    }

    private static SeamWay way(int x, int y) {
        return SeamWay.of(x, y, 0, 0, 0, 80, 0, 1);
    }
}
