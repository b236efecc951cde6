package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Note;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands inside text and points elsewhere is read or refused, never a fault of ours. */
class TextContentTest {
    private static final ReadOptions LEAVE_OUT = new ReadOptions(OptionalDouble.empty(), OptionalDouble.empty(), true);

    private static Artwork read(String content, ReadOptions options) throws IOException {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='30mm'"
                + " height='30mm' viewBox='0 0 30 30' font-size='5'>" + content + "</svg>";
        return SvgReader.read("text.svg", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), options);
    }

    private static Artwork read(String content) throws IOException {
        return read(content, ReadOptions.DEFAULT);
    }

    private static List<String> said(Artwork artwork) {
        return artwork.notes().stream().map(Note::text).toList();
    }

    private static List<Area> drawn(Artwork artwork) {
        return artwork.shapes().stream().map(FlatShape::area).toList();
    }

    /** SVG 1.1, section 10.6: tref draws the characters of what it refers to. */
    @Test
    void wordsReferredToAreDrawnLikeWordsWrittenOut() throws IOException {
        Artwork byReference = read("<defs><text id='w'>ink <tspan>and</tspan> paper</text></defs>"
                + "<text y='9' x='1'>a <tref fill='red' xlink:href='#w'/> b</text>");
        Artwork written = read("<text y='9' x='1'>a <tspan fill='red'>ink and paper</tspan> b</text>");
        assertThat(drawn(byReference)).isNotEmpty().isEqualTo(drawn(written));
    }

    @Test
    void alternateGlyphsAreDrawnAsTheirWords() throws IOException {
        Artwork artwork = read("<defs><altGlyphDef id='g'><glyphRef xlink:href='#none'/></altGlyphDef></defs>"
                + "<text y='9' x='1'>a<altGlyph fill='red' xlink:href='#g'>b</altGlyph></text>");
        assertThat(drawn(artwork))
                .isNotEmpty()
                .isEqualTo(drawn(read("<text y='9' x='1'>a<tspan fill='red'>b</tspan></text>")));
        assertThat(said(artwork)).contains("its words are drawn with the usual glyphs of the font");
    }

    @ParameterizedTest
    @CsvSource({
        "<tref xlink:href='#none'/>, not in the file",
        "<tref xlink:href='x.svg#a'/>, outside the file",
        "<textPath xlink:href='#none'>lost</textPath>, its words are left out",
        "<textPath href='x.svg#a'>lost</textPath>, its words are left out",
        "<textPath href='#group'>lost</textPath>, it follows something that is no shape",
        "<textPath>lost</textPath>, it has no path to follow"
    })
    void whatPointsNowhereIsLeftOutAndSaid(String content, String note) throws IOException {
        Artwork artwork = read("<g id='group'/><text y='9' x='1'>kept" + content + "</text>");
        assertThat(drawn(artwork)).isEqualTo(drawn(read("<text y='9' x='1'>kept</text>")));
        assertThat(said(artwork)).anyMatch(text -> text.contains(note));
    }

    @Test
    void theFilesOwnFontIsNotUsedAndThatIsSaid() throws IOException {
        String font = "<font horiz-adv-x='100'><font-face font-family='own' units-per-em='100'/><missing-glyph"
                + " d='M0 0h50v50z'/><glyph unicode='a' d='M0 0h90v90z'/></font>";
        Artwork artwork = read(font + "<text y='9' font-family='own, sans-serif'>a</text>");
        assertThat(drawn(artwork)).isEqualTo(drawn(read("<text y='9' font-family='sans-serif'>a</text>")));
        assertThat(said(artwork)).contains("the file's own font is not used; turn text into outlines to keep it");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<text x='1 b' y='9'>ink</text>",
                "<text y='9' dx='?'>ink</text>",
                "<text y='9' rotate='much'>ink</text>",
                "<text y='9' textLength='-3'>ink</text>",
                "<text y='9' textLength='long'>ink</text>",
                "<text y='9'><tspan x='1mmm'>ink</tspan></text>",
                "<path id='p' d='M0 9h9'/><text><textPath xlink:href='#p' startOffset='5q'>ink</textPath></text>",
            })
    void attributesThatMeanNothingNameTheirElement(String content) throws IOException {
        assertThatThrownBy(() -> read(content))
                .isInstanceOf(ArtworkException.class)
                .hasMessageMatching("text\\.svg:1 <t[a-zA-Z]+>: the text cannot be laid out: \\S.*\\. Mend the .*");
        Artwork artwork = read(content + "<rect width='9' height='9'/>", LEAVE_OUT);
        assertThat(drawn(artwork)).isNotEmpty();
        assertThat(said(artwork)).anyMatch(text -> text.startsWith("left out: the text cannot be laid out"));
    }

    @Test
    void wordsThatMultiplyAreRefused() {
        String words = "x".repeat(100_000);
        String content = "<text id='w'>" + words + "</text>" + "<text><tref xlink:href='#w'/></text>".repeat(60);
        assertThatThrownBy(() -> read(content))
                .isInstanceOf(ArtworkException.class)
                .hasMessageContaining("tref elements repeat more than 5000000 characters. Write");
    }

    /** SVG 2, section 11.8.1: text follows the shape it refers to, transformed as that is. */
    @Test
    void textFollowsEveryShapeEvenOneWithAMistake() throws IOException {
        String words = "<text><textPath href='#p' startOffset='2'>ink</textPath></text>";
        List<Area> along = drawn(read("<defs><path id='p' d='M3 11H22'/></defs>" + words));
        assertThat(along).isNotEmpty();
        assertThat(drawn(read("<defs><line id='p' x1='3' y1='11' x2='22' y2='11'/></defs>" + words)))
                .isEqualTo(along);
        assertThat(drawn(read("<defs><path id='p' d='M1 1H20' style='transform:translate(2px,10px)'/></defs>" + words)))
                .isEqualTo(along);
        Artwork mistaken = read("<defs><path id='p' d='M3 11H22 L 4 oops'/></defs>" + words);
        assertThat(drawn(mistaken)).isEqualTo(along);
        assertThat(said(mistaken)).anyMatch(text -> text.contains("oops") || text.contains("at fault"));
    }

    /** The paints of parts of a text are their own: colour, its alpha and the opacities of fill and stroke. */
    @Test
    void partsOfATextHaveTheirOwnPaints() throws IOException {
        Artwork artwork = read("<text y='9' x='1' fill='rgba(255,0,0,.3)'>a<tspan fill='rgb(0 0 255 / 40%)'>b</tspan>"
                + "<tspan fill-opacity='.5'>c</tspan><tspan fill='lime' fill-opacity='.7'>d</tspan>"
                + "<tspan fill='none' stroke='rgba(0,0,0,.6)' stroke-opacity='.5'>e</tspan>"
                + "<tspan fill='#123456'>f</tspan></text>");
        assertThat(artwork.shapes().stream().map(shape -> shape.colour() + " " + shape.opacity()))
                .containsExactly(
                        "#ff0000 0.3", "#0000ff 0.4", "#ff0000 0.15", "#00ff00 0.7", "#000000 0.3", "#123456 1.0");
    }

    @Test
    void anUnderlineKeepsThePaintOfTheTextThatDrewIt() throws IOException {
        Artwork artwork = read(
                "<text y='9' x='1' fill='red' text-decoration='underline'>a<tspan fill='#00f'>b</tspan>" + "</text>");
        assertThat(artwork.shapes().stream().map(shape -> shape.colour().hex()))
                .containsExactly("#ff0000", "#ff0000", "#0000ff");
    }

    @Test
    void aGradientInPartOfATextNamesThatPart() {
        assertThatThrownBy(
                        () -> read("<linearGradient id='g'><stop stop-color='red'/><stop offset='1'/></linearGradient>"
                                + "<text y='9'>a<tspan id='b' fill='url(#g)'>b</tspan></text>"))
                .hasMessageContaining("<tspan id=\"b\">: fill is a gradient (#g)");
    }

    @ParameterizedTest
    @CsvSource({
        "text-transform:uppercase, text-transform 'uppercase'",
        "dominant-baseline:central, dominant-baseline 'central'",
        "font-variant:small-caps, font-variant 'small-caps'",
        "white-space:pre, white-space 'pre'"
    })
    void textPropertiesThatAreNotFollowedAreSaid(String style, String said) throws IOException {
        String note = "text is drawn without its " + said;
        assertThat(said(read("<text y='9' style='" + style + "'>a</text>"))).contains(note);
        assertThat(said(read("<g style='" + style + "'><text y='9'>a</text></g>")))
                .contains(note);
        assertThat(said(read("<g style='" + style + "'><path d='M0 0h9v9z'/></g>")))
                .isEmpty();
    }
}
