package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FlatShape;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers that overflow, vanish or mean nothing: the drawing is read or refused with a reason, never a fault of ours. */
class HostileValuesTest {
    private static final ReadOptions LEAVE_OUT = new ReadOptions(OptionalDouble.empty(), OptionalDouble.empty(), true);
    private static final Pattern ATTRIBUTE = Pattern.compile("(?<=\\s)(?!xmlns)[\\w:-]+=\"([^\"]*)\"");

    private static Artwork read(String drawing, ReadOptions options) throws IOException {
        return SvgReader.read(
                "hostile.svg", new ByteArrayInputStream(drawing.getBytes(StandardCharsets.UTF_8)), options);
    }

    private static String svg(String content) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='20mm' viewBox='0 0 20 20'>" + content
                + "<circle cx='9' cy='9' r='3'/></svg>";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<rect x='1e300' width='1e300' height='5'/>",
                "<rect width='1e308' height='1e308' transform='scale(1e10)'/>",
                "<path d='M0 0L1e39 0 0 1e39z'/>",
                "<path d='M0 0h9v9z' transform='translate(1e30)'/>",
                "<path d='M0 0h9v9z' transform='matrix(1e200 0 0 1e200 0 0)'/>",
                "<path d='M0 0h1e9' stroke='red'/>",
                "<path d='M0 0h9' stroke='red' stroke-width='1e9'/>",
                "<path d='M0 0h1e12' stroke='red' stroke-dasharray='3' pathLength='9'/>",
                "<text font-size='1e9'>ink</text>",
                "<clipPath id='c'><path d='M0 0L1e39 0 0 1e39z'/></clipPath><rect width='9' height='9' clip-path='url(#c)'/>",
                "<svg width='9' height='9' viewBox='0 0 1e-30 1e-30'><rect width='1' height='1'/></svg>"
            })
    void whatReachesTooFarIsRefusedOrLeftOut(String content) throws IOException {
        assertThatThrownBy(() -> read(svg(content), ReadOptions.DEFAULT))
                .isInstanceOf(ArtworkException.class)
                .hasMessageMatching(
                        "hostile.svg:1 <[a-z]+>: it or its clip reaches more than 10 km from the sheet. Mend .*");
        Artwork artwork = read(svg(content), LEAVE_OUT);
        assertThat(artwork.shapes()).hasSize(1);
        assertThat(artwork.notes()).anyMatch(note -> note.text().startsWith("left out: it or its clip reaches"));
    }

    /** Nothing is drawn of them, and nothing else suffers. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<rect width='0' height='5'/>",
                "<rect width='-3' height='5'/>",
                "<rect width='NaN' height='5'/>",
                "<rect width='1e400' height='5'/>",
                "<circle r='0'/>",
                "<ellipse rx='0' ry='4'/>",
                "<path d='M0 0h9' stroke='red' stroke-width='0'/>",
                "<rect width='9' height='9' transform='scale(0)'/>",
                "<rect width='9' height='9' transform='matrix(0 0 0 0 0 0)'/>",
                "<rect width='9' height='9' transform='scale(1e-200)'/>",
                "<rect width='9' height='9' transform='matrix(1 1 1 1 0 0)'/>",
                "<svg width='0' height='9'><rect width='9' height='9'/></svg>",
                "<svg width='9' height='9' viewBox='0 0 0 9'><rect width='9' height='9'/></svg>",
                "<text font-size='0'>ink</text>"
            })
    void whatHasNoSizeIsNotDrawn(String content) throws IOException {
        assertThat(read(svg(content), ReadOptions.DEFAULT).shapes()).hasSize(1);
    }

    /** Far away but drawable: SVG has no limit, so a background may stick out by a kilometre. */
    @Test
    void largeNumbersWithinReachAreDrawn() throws IOException {
        Artwork artwork = read(svg("<rect x='-1e6' y='-1e6' width='2e6' height='2e6'/>"), ReadOptions.DEFAULT);
        Rectangle2D box = Outlines.box(artwork.shapes().get(0).area().outline());
        assertThat(box).isEqualTo(new Rectangle2D.Double(-1e6, -1e6, 2e6, 2e6));
    }

    /** A marker's angle is in degrees; another unit means nothing. */
    @ParameterizedTest
    @CsvSource({"10%", "1cm", "1e400", "NaN", "') scale(2"})
    void anAngleThatIsNoneIsNone(String orient) throws IOException {
        assertThat(marked(orient)).isNotEmpty().isEqualTo(marked("0"));
        assertThat(marked(orient)).isNotEqualTo(marked("30"));
    }

    private static List<Area> marked(String orient) throws IOException {
        return read(
                        svg("<marker id='k' orient=\"" + orient + "\"><path d='M0 0h1v1z'/></marker>"
                                + "<path d='M1 1l3 3' stroke='red' marker-end='url(#k)'/>"),
                        ReadOptions.DEFAULT)
                .shapes()
                .stream()
                .map(FlatShape::area)
                .toList();
    }

    @Test
    void hostileValuesInAnyAttributeAreReadOrRefused() throws IOException {
        everyAttribute(List.of("1e300", "-1e20", "NaN", "1e400", "0", "10%", "", "url(#a)", "scale(1e300)", "x"));
    }

    @Test
    @Tag("long")
    void manyHostileValuesInAnyAttributeAreReadOrRefused() throws IOException {
        everyAttribute(List.of(
                "-1e300",
                "1e308",
                "1e-300",
                "-0",
                "-1",
                "Infinity",
                "1cm",
                "1em",
                "auto",
                "none",
                "inherit",
                "url(#zz)",
                "1 2",
                "99999999999999999999",
                "1e39",
                "3.5e38",
                "0.0000001",
                "1,",
                "matrix(0 0 0 0 0 0)",
                "scale(0)",
                "rotate(1e300)",
                "matrix(1e200 0 0 1e200 0 0)",
                "translate(1e300)",
                "skewX(90)",
                "M0 0L1e300 1e300",
                "M0 0",
                "M1e300 1e300h1",
                "0 0 0 0",
                "0 0 1e300 1e300",
                "0 0 1e-300 1e-300",
                "-1 -1 -1 -1",
                "calc(1px)",
                "rgba(0,0,0,1e300)",
                "M0 0A1e300 1e300 0 0 1 1 1",
                "M0 0A1 1 1e300 0 1 1e-300 1",
                "objectBoundingBox",
                "userSpaceOnUse",
                "non-scaling-stroke",
                "1e10",
                "1e7"));
    }

    private static void everyAttribute(List<String> values) throws IOException {
        String drawing;
        try (InputStream stream = HostileValuesTest.class.getResourceAsStream("/inkstrata/artwork/every-feature.svg")) {
            drawing = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
        assertThat(read(drawing, ReadOptions.DEFAULT).shapes()).hasSizeGreaterThan(12);
        List<MatchResult> places = ATTRIBUTE.matcher(drawing).results().toList();
        assertThat(places).hasSizeGreaterThan(90);
        List<String> tried = new ArrayList<>();
        for (MatchResult place : places) {
            for (String value : values) {
                String changed = drawing.substring(0, place.start(1)) + value + drawing.substring(place.end(1));
                assertThatCode(() -> readOrRefuse(changed))
                        .as(place.group() + " changed to '" + value + "'")
                        .doesNotThrowAnyException();
                tried.add(value);
            }
        }
        assertThat(tried).hasSize(places.size() * values.size());
    }

    private static void readOrRefuse(String drawing) throws IOException {
        try {
            for (FlatShape shape : read(drawing, LEAVE_OUT).shapes()) {
                Rectangle2D box = Outlines.box(shape.area().outline());
                assertThat(box.getMinX() + box.getMinY()).isGreaterThanOrEqualTo(-2e7);
                assertThat(box.getMaxX() + box.getMaxY()).isLessThanOrEqualTo(2e7);
            }
        } catch (ArtworkException refused) {
            assertThat(refused).hasMessageStartingWith("hostile.svg");
        }
    }
}
