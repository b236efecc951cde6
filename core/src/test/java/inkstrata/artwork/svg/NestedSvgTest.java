package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.Rgb;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drawings inside drawings: nested svg, symbol and marker show what lies in their frame (SVG 2, sections 8.2, 5.5, 13.7; the
 * user agent style sheet of section 6.7 hides what sticks out).
 */
class NestedSvgTest {
    private static final Rgb RED = Rgb.parse("#ff0000");
    private static final String LARGE = "<rect x='-50' y='-50' width='200' height='200' fill='red'/>";

    /** Square units that show red on a sheet of 100 by 100, by hand. */
    private static void check(String content, double area) throws IOException {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100 100'>"
                + content.replace("LARGE", LARGE) + "</svg>";
        VisibleAreas areas = VisibleAreas.mapped(SvgReader.read(
                "nested.svg", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), ReadOptions.DEFAULT));
        assertThat(areas.colours().getOrDefault(RED, 0.0) * 100 * 100).isCloseTo(area, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({
        // Frame of 20 x 30.
        "<svg x='10' y='10' width='20' height='30'>LARGE</svg>, 600",
        "<svg x='10' y='10' width='20' height='30' overflow='hidden'>LARGE</svg>, 600",
        "<svg x='10' y='10' width='20' height='30' style='overflow:scroll'>LARGE</svg>, 600",
        "<svg x='10' y='10' width='20' height='30' overflow='visible'>LARGE</svg>, 10000",
        // Half of the frame lies off the sheet; 10 % of 100 and 20 % of 100.
        "<svg x='-10' width='20' height='30'>LARGE</svg>, 300",
        "<svg x='10%' y='10%' width='20%' height='10%'>LARGE</svg>, 200",
        // A frame inside a frame: 20 x 30 from (10, 10) and 100 x 10 from (10, 20).
        "<svg x='10' y='10' width='20' height='30'><svg y='10' height='10' overflow='hidden'>LARGE</svg></svg>, 200",
        // The whole sheet, by default.
        "<svg>LARGE</svg>, 10000"
    })
    void nestedDrawingsShowTheirFrame(String content, double area) throws IOException {
        check(content, area);
    }

    /** SVG 2, section 8.7; a circle of radius 5 in a viewBox of 10 by 10, in a frame of 20 by 40. */
    @ParameterizedTest
    @CsvSource({
        "xMidYMid meet, 20, 20",
        "none, 20, 40",
        // Scaled by 4: a circle of radius 20, of which the middle 20 across show.
        "xMidYMid slice, 0, 0"
    })
    void contentIsFitted(String fit, double across, double down) throws IOException {
        double strip = 2 * (10 * Math.sqrt(300) + 400 * Math.asin(0.5));
        double area = across > 0 ? Math.PI / 4 * across * down : strip;
        String circle = "<circle cx='5' cy='5' r='5' fill='red'/>";
        String frame = "width='20' height='40'";
        String attributes = " viewBox='0 0 10 10' preserveAspectRatio='" + fit + "'";
        String nested = "<svg x='10' y='10' " + frame + attributes + ">" + circle + "</svg>";
        String symbol =
                "<symbol id='s'" + attributes + ">" + circle + "</symbol><use href='#s' x='10' y='10' " + frame + "/>";
        for (String content : new String[] {nested, symbol}) {
            // A metre across, so that curves flattened to 5 µm lose nothing that matters.
            String text =
                    "<svg xmlns='http://www.w3.org/2000/svg' width='1000mm' height='1000mm' viewBox='0 0 100 100'>"
                            + content + "</svg>";
            VisibleAreas areas = VisibleAreas.mapped(SvgReader.read(
                    "nested.svg",
                    new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                    ReadOptions.DEFAULT));
            assertThat(areas.colours().get(RED) * 100 * 100).isCloseTo(area, within(area * 1e-4));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "<symbol id='s'>LARGE</symbol><use href='#s' width='20' height='30'/>, 600",
        "<symbol id='s' width='20' height='30'>LARGE</symbol><use href='#s'/>, 600",
        "<symbol id='s' width='20' height='30'>LARGE</symbol><use href='#s' width='10'/>, 300",
        "<symbol id='s' overflow='visible'>LARGE</symbol><use href='#s' width='20' height='30'/>, 10000",
        "<symbol id='s' style='overflow:visible'>LARGE</symbol><use href='#s' width='20' height='30'/>, 10000"
    })
    void symbolsShowTheirFrame(String content, double area) throws IOException {
        check(content, area);
    }

    /** Frames of 4 by 3, in stroke widths of 2 or in user units. */
    @ParameterizedTest
    @CsvSource({
        "markerUnits='strokeWidth', 48",
        "markerUnits='userSpaceOnUse', 12",
        "markerUnits='userSpaceOnUse' overflow='visible', 10000",
        "markerUnits='userSpaceOnUse' viewBox='0 0 8 6', 12"
    })
    void markersShowTheirFrame(String attributes, double area) throws IOException {
        check(
                "<marker id='m' markerWidth='4' markerHeight='3' " + attributes + ">LARGE</marker>"
                        + "<path d='M40 40h9' stroke='blue' stroke-width='2' marker-start='url(#m)'/>",
                area);
    }
}
