package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Size;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import org.junit.jupiter.api.Test;

class FilmLayoutTest {
    private static final FilmSettings DEFAULT = new FilmSettings(true, 40_000, 600, true, true, "");

    @Test
    void filmIsTheSheetWhereItLeavesRoom() {
        FilmLayout layout = layout(new Size(500, 700), new Frame(50, 75, 400, 550), DEFAULT);
        assertThat(layout.film()).isEqualTo(box(0, 0, 500, 700));
        assertThat(layout.isLargerThanSheet()).isFalse();
    }

    @Test
    void roomOf25MmAroundAWidePictureIsEnough() {
        assertThat(layout(new Size(290, 120), new Frame(25, 25, 240, 70), DEFAULT)
                        .isLargerThanSheet())
                .isFalse();
    }

    @Test
    void filmGrowsBeyondASheetThatThePictureFills() {
        FilmLayout layout = layout(new Size(200, 100), new Frame(0, 0, 200, 100), DEFAULT);
        assertThat(layout.film()).isEqualTo(box(-16, -36, 216, 125));
        assertThat(layout.isLargerThanSheet()).isTrue();
    }

    @Test
    void filmGrowsToHoldTheBarOnATinySheet() {
        FilmLayout layout = layout(new Size(20, 20), new Frame(0, 0, 20, 20), DEFAULT);
        assertThat(layout.film()).isEqualTo(box(-50, -36, 70, 45));
        assertThat(layout.bar()).contains(spot(-40, -23));
    }

    @Test
    void barAndWedgeLieBetweenTheMarksAboveAWidePicture() {
        FilmLayout wide = layout(new Size(500, 700), new Frame(50, 75, 400, 550), DEFAULT);
        assertThat(wide.bar()).contains(spot(95, 61.5));
        assertThat(wide.wedge()).contains(spot(305, 61.5));
        FilmLayout narrow = layout(new Size(400, 700), new Frame(100, 75, 200, 550), DEFAULT);
        assertThat(narrow.bar()).contains(spot(150, 52));
        assertThat(narrow.wedge()).contains(spot(150, 42));
    }

    @Test
    void eightMarksLieAtCornersAndSides() {
        assertThat(layout(new Size(500, 700), new Frame(50, 75, 400, 550), DEFAULT)
                        .marks())
                .containsExactly(
                        spot(40, 65),
                        spot(250, 65),
                        spot(460, 65),
                        spot(40, 350),
                        spot(460, 350),
                        spot(40, 635),
                        spot(250, 635),
                        spot(460, 635));
    }

    @Test
    void withoutMarksAndBarOnlyTheLabelTakesRoom() {
        FilmLayout layout = layout(
                new Size(200, 100), new Frame(0, 0, 200, 100), new FilmSettings(false, 40_000, 600, false, false, ""));
        assertThat(layout.film()).isEqualTo(box(-3, -3, 203, 112));
        assertThat(layout.marks()).isEmpty();
        assertThat(layout.bar()).isEmpty();
    }

    private static FilmLayout layout(Size paper, Frame picture, FilmSettings settings) {
        return FilmLayout.of(new Sheet(paper, Rgb.WHITE, Side.FRONT), Box.of(picture), settings, 2);
    }

    private static Box box(double left, double top, double right, double bottom) {
        return Box.of(new Frame(left, top, right - left, bottom - top));
    }

    private static Spot spot(double x, double y) {
        return new Spot(Grid.steps(x), Grid.steps(y));
    }
}
