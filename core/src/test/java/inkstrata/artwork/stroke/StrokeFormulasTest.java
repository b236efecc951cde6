package inkstrata.artwork.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.measure.Frame;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strokes of drawings whose area and box SVG 2, section 13.5, gives by a formula; lengths in millimetres. */
class StrokeFormulasTest {
    private static final String CROSS = "d='M20 30h20'";

    private static Artwork read(String attributes) throws IOException {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='60mm' viewBox='0 0 60 60'>"
                + "<path fill='none' stroke='red' " + attributes + "/></svg>";
        return SvgReader.read(
                "stroke.svg", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), ReadOptions.DEFAULT);
    }

    private static double area(Artwork artwork) {
        PlanarMap map = PlanarMapper.map(artwork, MapSettings.DEFAULT);
        double area = 0;
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            area += map.stacks().get(stack).isBare() ? 0 : map.areaMm2(stack);
        }
        return area;
    }

    private static void check(String attributes, double area, double left, double top, double right, double bottom)
            throws IOException {
        Artwork artwork = read(attributes);
        assertThat(area(artwork)).as("area of " + attributes).isCloseTo(area, within(area * 1e-4 + 1e-4));
        List<FlatShape> shapes = artwork.shapes();
        Frame box = shapes.get(0).area().outline().controlBox().orElseThrow();
        assertThat(new double[] {box.x(), box.y(), box.x() + box.width(), box.y() + box.height()})
                .as("box of " + attributes)
                .containsExactly(new double[] {left, top, right, bottom}, within(1e-3));
    }

    @Test
    void capsAreWhatTheyAreCalled() throws IOException {
        check(CROSS + " stroke-width='4'", 80, 20, 28, 40, 32);
        check(CROSS + " stroke-width='4' stroke-linecap='square'", 96, 18, 28, 42, 32);
        check(CROSS + " stroke-width='4' stroke-linecap='round'", 80 + 4 * Math.PI, 18, 28, 42, 32);
    }

    /** A line of no length has caps alone, square ones upright; a move-to alone has nothing. */
    @Test
    void dotsHaveCapsAlone() throws IOException {
        check("d='M30 30h0' stroke-width='4' stroke-linecap='square'", 16, 28, 28, 32, 32);
        check("d='M30 30z' stroke-width='4' stroke-linecap='round'", 4 * Math.PI, 28, 28, 32, 32);
        assertThat(read("d='M30 30h0' stroke-width='4'").shapes()).isEmpty();
        assertThat(read("d='M30 30' stroke-width='4' stroke-linecap='round'").shapes())
                .isEmpty();
    }

    /**
     * A right angle of two legs of 20, 4 wide: two rectangles that share a square of 2 x 2, and outside the corner nothing, a
     * triangle, a quarter of a disc or a square.
     */
    @ParameterizedTest
    @CsvSource({"bevel, 158, 2", "round, 159.14159265, 2", "miter, 160, 2"})
    void cornersAreWhatTheyAreCalled(String join, double area, double out) throws IOException {
        check("d='M20 40v-20h20' stroke-width='4' stroke-linejoin='" + join + "'", area, 18, 20 - out, 40, 40);
    }

    /** A mitre is 1 / sin(angle / 2) widths long: for 60 degrees 2, for 90 the square root of 2. */
    @ParameterizedTest
    @CsvSource({"1.41, false", "1.4143, true", "1, false", "4, true"})
    void mitresEndAtTheirLimit(double limit, boolean mitred) throws IOException {
        check(
                "d='M20 40v-20h20' stroke-width='4' stroke-miterlimit='" + limit + "'",
                mitred ? 160 : 158,
                18,
                18,
                40,
                40);
    }

    @ParameterizedTest
    @CsvSource({"1.99, 0", "2, 1", "2.01, 1"})
    void sharpMitresEndAtTheirLimitToo(double limit, double tip) throws IOException {
        // Both legs rise at 60 degrees; the tip lies 2 half widths above the vertex, the bevel's edge half of one.
        double top = 30 - (tip == 1 ? 4 : 1);
        String legs = "d='M20 47.320508L30 30L40 47.320508' stroke-width='4' stroke-miterlimit='" + limit + "'";
        Frame box = read(legs).shapes().get(0).area().outline().controlBox().orElseThrow();
        assertThat(box.y()).isCloseTo(top, within(1e-4));
    }

    /** Dashes of 3 and gaps of 2 on a line of 20; the offset says where in the pattern the line begins. */
    @ParameterizedTest
    @CsvSource({
        "0, 20 25 30 35, 23 28 33 38",
        "1, 20 24 29 34 39, 22 27 32 37 40",
        "-1, 21 26 31 36, 24 29 34 39",
        "3.5, 21.5 26.5 31.5 36.5, 24.5 29.5 34.5 39.5",
        "11, 20 24 29 34 39, 22 27 32 37 40"
    })
    void dashesBeginWhereTheOffsetSays(double offset, String starts, String ends) throws IOException {
        dashes(CROSS + " stroke-width='2' stroke-dasharray='3 2' stroke-dashoffset='" + offset + "'", starts, ends);
    }

    /** The line says that it is 40 long: dashes, gaps and offset halve. */
    @Test
    void pathLengthStretchesDashes() throws IOException {
        String half = CROSS + " stroke-width='2' pathLength='40' stroke-dasharray='6 14' stroke-dashoffset='";
        dashes(half + "0'", "20 30", "23 33");
        dashes(half + "2'", "20 29 39", "22 32 40");
    }

    @Test
    void anOddListOfDashesCountsTwice() throws IOException {
        dashes(CROSS + " stroke-width='2' stroke-dasharray='4 1 2'", "20 25 31 34 39", "24 27 32 38 40");
    }

    private static void dashes(String attributes, String starts, String ends) throws IOException {
        List<Double> lefts = new ArrayList<>();
        List<Double> rights = new ArrayList<>();
        read(attributes).shapes().get(0).area().outline().sendTo(new DashEnds(lefts, rights));
        assertThat(lefts).as(attributes).hasSameSizeAs(starts.split(" ", -1));
        String[] from = starts.split(" ", -1);
        String[] to = ends.split(" ", -1);
        for (int i = 0; i < from.length; i++) {
            assertThat(lefts.get(i)).as(attributes).isCloseTo(Double.parseDouble(from[i]), within(1e-6));
            assertThat(rights.get(i)).as(attributes).isCloseTo(Double.parseDouble(to[i]), within(1e-6));
        }
    }

    /** On a closed path the last dash runs on into the first, around the corner. */
    @Test
    void theLastDashOfAClosedPathMeetsTheFirst() throws IOException {
        String square = "d='M20 20h20v20h-20z' stroke-width='2' stroke-dasharray='10 10' stroke-dashoffset='5'";
        // Eight halves of dashes of 5 x 2 each, four corners with a mitre of 1 x 1 more and an inner 1 x 1 twice.
        assertThat(area(read(square))).isCloseTo(80, within(0.01));
    }

    /** A circle whose inner edge vanishes, and rings around it: half circles have areas of π r w / 2 and more inside. */
    @ParameterizedTest
    @CsvSource({"10, 2", "10, 19.9", "10, 20", "3, 12", "0.01, 8"})
    void circlesAreRingsOrDiscs(double radius, double width) throws IOException {
        String circle = "d='M" + (30 - radius) + " 30a" + radius + " " + radius + " 0 1 1 " + 2 * radius + " 0a"
                + radius + " " + radius + " 0 1 1 -" + 2 * radius + " 0z' stroke-width='" + width + "'";
        double inner = Math.max(0, radius - width / 2);
        double outer = radius + width / 2;
        assertThat(area(read(circle)))
                .as(circle)
                .isCloseTo(Math.PI * (outer * outer - inner * inner), within(outer * 6e-3));
    }

    /** A path that turns back inside a curve ends flat there: the standard gives a cusp neither cap nor corner. */
    @Test
    void cuspsEndFlat() throws IOException {
        // Goes from x = 20 to 38 and back, by a cubic whose handles lie on the line.
        check("d='M20 30C44 30 44 30 20 30' stroke-width='8' stroke-linejoin='round'", 18 * 8, 20, 26, 38, 34);
    }
}
