package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every row of docs/unsupported-input.md is true of a small drawing that has its feature and nothing else. */
class UnsupportedInputTest {
    private static final Path TABLE = Path.of("docs", "unsupported-input.md");
    private static final ReadOptions LEAVE_OUT = new ReadOptions(OptionalDouble.empty(), OptionalDouble.empty(), true);
    private static final String STOPS = "<stop stop-color='red'/><stop offset='1' stop-color='blue'/>";
    private static final String RECT = "<rect width='5' height='5' ";
    private static final Map<String, String> DRAWINGS = drawings();

    private static Map<String, String> drawings() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(
                "fill with a linear gradient",
                svg("<linearGradient id='a'>" + STOPS + "</linearGradient>" + RECT + "fill='url(#a)'/>"));
        all.put(
                "stroke with a radial gradient",
                svg("<radialGradient id='a'>" + STOPS + "</radialGradient>" + RECT + "fill='none' stroke='url(#a)'/>"));
        all.put(
                "gradient whose stops are all one colour",
                svg("<linearGradient id='a'><stop stop-color='red'/><stop"
                        + " offset='1' stop-color='#f00'/></linearGradient>" + RECT + "fill='url(#a)'/>"));
        all.put(
                "fill with a pattern",
                svg("<pattern id='a' width='2' height='2'><path d='M0 0h1v1z'/></pattern>" + RECT
                        + "fill='url(#a)'/>"));
        all.put("mesh gradient", svg("<meshgradient id='a'/>" + RECT + "fill='url(#a)'/>"));
        all.put("paint that is not in the file, with a colour to fall back on", svg(RECT + "fill='url(#a) red'/>"));
        all.put("paint that is not in the file, without a colour", svg(RECT + "fill='url(#a)'/>"));
        all.put(
                "colour outside sRGB: `lab()`, `oklch()`, `color(display-p3 …)`",
                svg("<g fill='none'>" + RECT + "fill='oklch(40% 0.2 30)'/></g>"));
        all.put("ICC or device colour beside an sRGB colour", svg(RECT + "fill='#f00 icc-color(acme, 0.1)'/>"));
        all.put("opacity below 1 of a shape, group, fill, stroke or colour", svg(RECT + "fill='#ff000080'/>"));
        all.put(
                "filter element",
                svg("<filter id='a'><feGaussianBlur stdDeviation='1'/></filter>" + RECT + "filter='url(#a)'/>"));
        all.put("filter function such as `blur()`", svg(RECT + "style='filter:blur(1px)'/>"));
        all.put("blend mode other than normal", svg(RECT + "style='mix-blend-mode:multiply'/>"));
        all.put(
                "mask that lets shapes shine through in part",
                svg("<mask id='a'>" + RECT + "fill='gray'/></mask>" + RECT + "mask='url(#a)'/>"));
        all.put(
                "mask or clip that is not in the file",
                svg(RECT + "clip-path='url(#a)'/>" + RECT + "mask='url(#a)'/>"));
        all.put("clip path written as a CSS shape such as `circle()`", svg(RECT + "style='clip-path:circle(50%)'/>"));
        all.put("mask written as an image or gradient", svg(RECT + "style='mask:linear-gradient(#000,#fff)'/>"));
        all.put("text", svg("<text y='8'>ink</text>"));
        all.put(
                "font within the file (`<font>`)",
                svg("<font><font-face font-family='own'/></font><text y='8' font-family='own'>ink</text>"));
        all.put(
                "text property such as `text-transform` or `dominant-baseline`",
                svg("<text y='8' style='text-transform:uppercase' dominant-baseline='middle'>ink</text>"));
        all.put("alternate glyphs in text (`altGlyph`)", svg("<text y='8'><altGlyph>ink</altGlyph></text>"));
        all.put(
                "words along a path, or repeated by `tref`, that is not in the file",
                svg("<text y='8'><tref href='#a'/><textPath href='a.svg#b'>ink</textPath></text>"));
        all.put("text whose position or length means nothing", svg("<text x='?' y='8'>ink</text>"));
        all.put(
                "image, linked or embedded",
                svg("<image width='5' height='5' href='data:image/png;base64,iVBORw0KGgo='/>"));
        all.put(
                "content that is not SVG (`foreignObject`)",
                svg("<foreignObject width='5' height='5'><p"
                        + " xmlns='http://www.w3.org/1999/xhtml'>x</p></foreignObject>"));
        all.put("copy of something outside the file", svg("<use href='other.svg#a'/>"));
        all.put("copy of something that is not in the file", svg("<use href='#a'/>"));
        all.put("references that lead back to themselves", svg("<g id='a'><use href='#a'/></g>"));
        all.put("script, event attribute", svg("<script>x</script><g onclick='x()'/>"));
        all.put("animation", svg(RECT + "><animate attributeName='width' to='9'/></rect>"));
        all.put("element for another language than English, outside a `switch`", svg(RECT + "systemLanguage='de'/>"));
        all.put("style sheet outside the file", "<?xml-stylesheet href='a.css'?>" + svg(RECT + "/>"));
        all.put("`@import`", sheet("@import url(a.css);"));
        all.put("`@font-face`", sheet("@font-face{font-family:x}"));
        all.put("`@supports`, `@layer`, `@keyframes`", sheet("@layer a{rect{display:none}}"));
        all.put("media query with conditions", sheet("@media (min-width:1px){rect{display:none}}"));
        all.put("selector that is not known", sheet("rect:sparkling{display:none}"));
        all.put("value that means nothing, or `calc()`", svg(RECT + "style='fill:calc(1);opacity:calc(0)'/>"));
        all.put(
                "`transform-box: stroke-box` or `border-box`",
                svg(RECT + "style='transform:scale(.5);transform-box:stroke-box'/>"));
        all.put("property that is not known", sheet("rect{sparkle:much}"));
        all.put(
                "dashes too short to print by the hundred thousand",
                svg("<path d='M0 0h9' stroke='red' fill='none'" + " stroke-dasharray='1e-7'/>"));
        all.put(
                "shape or clip that reaches more than 10 km from the sheet",
                svg("<path d='M0 0h9v9z' transform='scale(1e30)'/>"));
        all.put("joins `arcs` and `miter-clip`", svg(RECT + "stroke='red' stroke-linejoin='arcs'/>"));
        all.put("no namespace (`xmlns`)", "<svg width='10mm' height='10mm'>" + RECT + "/></svg>");
        all.put("no size", "<svg xmlns='http://www.w3.org/2000/svg'>" + RECT + "/></svg>");
        all.put(
                "size in bare numbers or px",
                "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'>" + RECT + "/></svg>");
        all.put("path data with an error", svg("<path d='M0 0h5v5h-5z h3 x 4 l'/>"));
        all.put("not well-formed XML", svg("<g>"));
        all.put("not SVG", "<html/>");
        all.put(
                "entities that multiply",
                "<!DOCTYPE svg [<!ENTITY a '" + "x".repeat(9999) + "'><!ENTITY b '" + "&a;".repeat(99) + "'>]>"
                        + svg("<desc>" + "&b;".repeat(99) + "</desc>"));
        all.put("copies that unfold to millions of elements", svg(copies()));
        all.put("elements nested more than 400 deep", svg("<g>".repeat(400) + "</g>".repeat(400)));
        return all;
    }

    private static String svg(String content) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm'>" + content + "</svg>";
    }

    private static String sheet(String css) {
        return svg("<style>" + css + "</style>" + RECT + "/>");
    }

    private static String copies() {
        StringBuilder copies = new StringBuilder("<path id='u0' d='M0 0h1v1z'/>");
        for (int i = 1; i < 24; i++) {
            String below = "<use href='#u" + (i - 1) + "'/>";
            copies.append("<g id='u")
                    .append(i)
                    .append("'>")
                    .append(below)
                    .append(below)
                    .append("</g>");
        }
        return copies.toString();
    }

    @TestFactory
    Stream<DynamicTest> rows() throws IOException {
        return table().entrySet().stream()
                .map(row -> DynamicTest.dynamicTest(row.getKey(), () -> check(row.getKey(), row.getValue())));
    }

    @Test
    void everyDrawingHasItsRow() throws IOException {
        assertThat(table().keySet()).containsExactlyElementsOf(DRAWINGS.keySet());
    }

    @Test
    void everyBadElementIsListedWithWhatLeavingItOutWouldDo() {
        String drawing = svg("""

                <defs><linearGradient id='sky'><stop/><stop offset='1' stop-color='red'/></linearGradient></defs>
                <rect width='9' height='9'/><rect width='9' height='9' fill='red'/>
                <rect id='a' width='9' height='9' fill='url(#sky)'/>
                <g id='b' style='filter: blur(2px)'><rect width='9' height='9'/><g><path d='M0 0h9v9z'/></g></g>
                <image id='c' width='5' height='5' href='a.png'/>
                <rect width='9' height='5' fill='blue'/>""");
        assertThatThrownBy(() -> read(drawing, ReadOptions.DEFAULT)).hasMessage("""
                        small.svg:4 <rect id="a">: fill is a gradient (#sky), which a single film cannot hold. Give the shape one flat colour.
                        small.svg:5 <g id="b">: a filter changes this element, which a single film cannot hold. Take the filter off, or draw its effect as shapes.
                        small.svg:6 <image id="c">: this is an image, which has no outlines. Trace it into flat shapes, or take it out.
                        --leave-out would print the drawing without them: 3 of 7 shapes.""");
    }

    @Test
    void beyond20BadElementsAreOnlyCounted() {
        String images = IntStream.range(0, 25)
                .mapToObj(i -> "<image id='i" + i + "' width='5' height='5' href='a.png'/>")
                .collect(Collectors.joining("\n"));
        assertThatThrownBy(() -> read(svg(RECT + "/>" + images), ReadOptions.DEFAULT))
                .satisfies(fault -> {
                    List<String> lines = fault.getMessage().lines().toList();
                    assertThat(lines).hasSize(22);
                    assertThat(lines.get(19)).startsWith("small.svg:20 <image id=\"i19\">: ");
                    assertThat(lines.get(20)).isEqualTo("And 5 more of the kind.");
                    assertThat(lines.get(21))
                            .isEqualTo("--leave-out would print the drawing without them: 1 of 26 shapes.");
                });
    }

    /** Feature and what happens, from every table of the page. */
    private static Map<String, String> table() throws IOException {
        Map<String, String> rows = new LinkedHashMap<>();
        for (String line : Files.readAllLines(TABLE, StandardCharsets.UTF_8)) {
            if (!line.startsWith("|") || line.startsWith("|---") || line.startsWith("| Feature")) {
                continue;
            }
            List<String> cells =
                    Stream.of(line.split("\\|", -1)).map(String::trim).toList();
            assertThat(cells).as(line).hasSize(5);
            assertThat(cells.get(3)).as("what the artist can do, in " + line).isNotEmpty();
            rows.put(cells.get(1), cells.get(2));
        }
        return rows;
    }

    private static void check(String feature, String whatHappens) throws IOException {
        String drawing = DRAWINGS.get(feature);
        assertThat(drawing).as("a drawing for the row " + feature).isNotNull();
        if (whatHappens.startsWith("drawn")) {
            Artwork artwork = read(drawing, ReadOptions.DEFAULT);
            assertThat(artwork.shapes()).isNotEmpty();
            assertThat(artwork.notes()).isEqualTo(read(drawing, LEAVE_OUT).notes());
        } else if (whatHappens.startsWith("left out")) {
            Artwork artwork = read(drawing, ReadOptions.DEFAULT);
            assertThat(artwork.shapes()).isEmpty();
            assertThat(artwork.notes()).isNotEmpty();
        } else if (whatHappens.startsWith("refused")) {
            assertThatThrownBy(() -> read(drawing, ReadOptions.DEFAULT))
                    .isInstanceOf(ArtworkException.class)
                    .hasMessageMatching("small\\.svg:1 <[A-Za-z]+>: \\S.*\\. [A-Z].*\\."
                            + " Without it nothing is left to print\\.");
            Artwork artwork = read(drawing, LEAVE_OUT);
            assertThat(artwork.shapes()).isEmpty();
            assertThat(artwork.notes()).isNotEmpty();
        } else {
            assertThat(whatHappens).isEqualTo("stopped");
            assertThatThrownBy(() -> read(drawing, LEAVE_OUT))
                    .isInstanceOf(ArtworkException.class)
                    .hasMessageMatching("small\\.svg(:1)?.*: \\S.*\\. [A-Z].*\\.");
        }
        if (whatHappens.contains("drawn in that colour") || whatHappens.contains("sRGB colour")) {
            assertThat(read(drawing, ReadOptions.DEFAULT).shapes())
                    .extracting(FlatShape::colour)
                    .containsOnly(Rgb.parse("#ff0000"));
        }
        boolean mustBeSaid = whatHappens.startsWith("drawn") && !feature.startsWith("ICC");
        if (mustBeSaid) {
            assertThat(read(drawing, ReadOptions.DEFAULT).notes()).isNotEmpty();
        }
    }

    private static Artwork read(String drawing, ReadOptions options) throws IOException {
        return SvgReader.read("small.svg", new ByteArrayInputStream(drawing.getBytes(StandardCharsets.UTF_8)), options);
    }
}
