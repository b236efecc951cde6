package inkstrata.separation;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.separation.FilmStack.Comparison;
import inkstrata.separation.FilmStack.Film;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** That the comparison sees what is wrong, before anything of ours is compared with it. */
class FilmStackTest {
    private static final Rgb RED = Rgb.parse("#c03020");
    private static final Rgb BLUE = Rgb.parse("#2030c0");
    private static final Frame PICTURE = new Frame(10, 20, 30, 30);
    private static final byte[] ARTWORK = ("<svg xmlns='http://www.w3.org/2000/svg' width='30mm' height='30mm'"
                    + " viewBox='0 0 300 300'><path fill='#c03020' d='M50 50H250V250H50Z'/>"
                    + "<path fill='#2030c0' d='M100 100H200V200H100Z'/></svg>")
            .getBytes(UTF_8);

    @Test
    void rightFilmsMakeTheDrawing() {
        Comparison same = compared(film("M15 25H35V45H15ZM20 30H30V40H20Z", RED), film("M20 30H30V40H20Z", BLUE));
        assertThat(same.pixels()).isEqualTo(300 * 300);
        assertThat(same.differences()).isEmpty();
    }

    @Test
    void theLastFilmLiesOnTop() {
        assertThat(compared(film("M15 25H35V45H15Z", RED), film("M20 30H30V40H20Z", BLUE))
                        .differences())
                .isEmpty();
        assertThat(compared(film("M20 30H30V40H20Z", BLUE), film("M15 25H35V45H15Z", RED))
                        .differences())
                .hasSize(100 * 100);
    }

    @Test
    void aShiftedFilmIsSeenAndMeasured() {
        Comparison shifted =
                compared(film("M15 25H35V45H15ZM20 30H30V40H20Z", RED), film("M20.5 30H30.5V40H20.5Z", BLUE));
        assertThat(shifted.differences()).hasSize(2 * 5 * 100);
        // Where blue is missing, the first and last pixel of each column also lie beside the square's other sides.
        assertThat(shifted.fartherThan(1)).hasSize(4 * 100 + 4 * 98);
        assertThat(shifted.fartherThan(5)).isEmpty();
    }

    @Test
    void aSpeckFarFromEveryBorderIsSeen() {
        Comparison speck = compared(
                film("M15 25H35V45H15ZM20 30H30V40H20Z", RED), film("M20 30H30V40H20ZM17 27H17.1V27.1H17Z", BLUE));
        assertThat(speck.differences()).singleElement().satisfies(difference -> {
            assertThat(difference.drawn()).isEqualTo(RED);
            assertThat(difference.printed()).isEqualTo(BLUE);
            assertThat(difference.toBorder()).isEqualTo(21);
        });
    }

    @Test
    void theMagnifyingGlassMeasuresToTheNearestPlaceOfAColour() {
        assertThat(toColour(9.98, 15, RED)).isZero();
        assertThat(toColour(9.98, 15, BLUE)).isCloseTo(0.02, within(0.001));
        assertThat(toColour(20.01, 20.01, BLUE)).isCloseTo(0.01 * Math.sqrt(2), within(0.001));
        assertThat(toColour(9.96, 15, BLUE)).isInfinite();
    }

    private static double toColour(double x, double y, Rgb colour) {
        Size size = new Size(PICTURE.width(), PICTURE.height());
        return FilmStack.toColour(ARTWORK, Rgb.WHITE, size, new Place(x, y), colour, 0.03);
    }

    private static Comparison compared(Film... films) {
        BufferedImage drawing = FilmStack.drawing(ARTWORK, Rgb.WHITE, new Size(PICTURE.width(), PICTURE.height()), 10);
        return FilmStack.compare(drawing, FilmStack.print(List.of(films), Rgb.WHITE, PICTURE, 10));
    }

    /** On a film that reaches 5 mm beyond the sheet. */
    private static Film film(String path, Rgb ink) {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='70mm' viewBox='-5 -5 60 70'>"
                + "<path fill-rule='evenodd' d='" + path + "'/></svg>";
        return new Film(svg.getBytes(UTF_8), ink);
    }
}
