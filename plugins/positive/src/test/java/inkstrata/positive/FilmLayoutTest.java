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
    private static final FilmSettings DEFAULT = new FilmSettings(true, 600, true);

    @Test
    void filmIsTheSheetWhereItLeavesRoom() {
        FilmLayout layout = layout(new Size(500, 700), new Frame(50, 75, 400, 550), DEFAULT);
        assertThat(layout.film()).isEqualTo(box(0, 0, 500, 700));
        assertThat(layout.isLargerThanSheet()).isFalse();
    }

    @Test
    void roomOf25MmAroundAPictureIsEnough() {
        assertThat(layout(new Size(150, 120), new Frame(25, 25, 100, 70), DEFAULT)
                        .isLargerThanSheet())
                .isFalse();
    }

    @Test
    void filmGrowsBeyondASheetThatThePictureFills() {
        FilmLayout layout = layout(new Size(200, 100), new Frame(0, 0, 200, 100), DEFAULT);
        assertThat(layout.film()).isEqualTo(box(-16, -25, 216, 125));
        assertThat(layout.isLargerThanSheet()).isTrue();
    }

    @Test
    void filmGrowsToHoldTheBarOnATinySheet() {
        FilmLayout layout = layout(new Size(20, 20), new Frame(0, 0, 20, 20), DEFAULT);
        assertThat(layout.film()).isEqualTo(box(-50, -25, 70, 45));
        assertThat(layout.bar()).contains(new Spot(-40 * Grid.STEPS_PER_MM, -22 * Grid.STEPS_PER_MM));
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
        FilmLayout layout = layout(new Size(200, 100), new Frame(0, 0, 200, 100), new FilmSettings(false, 600, false));
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
