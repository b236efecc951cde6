package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.xml.sax.SAXException;

/** What is too large is refused before time or memory run out, and the message says what, how large, and the bound. */
class BoundsTest {
    private static final Source HERE = new Source("path", "coast", 7, List.of());

    private static int read(String content) throws IOException {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='20mm'>" + content + "</svg>";
        return SvgReader.read(
                        "large.svg",
                        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                        ReadOptions.DEFAULT)
                .shapes()
                .size();
    }

    @Test
    @Timeout(60)
    void tooManyLettersAreRefusedBeforeTheyAreLaidOut() {
        String half = "<text>" + "ink ".repeat(Limits.LETTERS / 8 + 1) + "</text>";
        assertThatThrownBy(() -> read("<defs>" + half + half + "</defs><g display='none'>" + half + "</g><text>"
                        + "ink ".repeat(Limits.LETTERS / 4 + 1) + "</text>"))
                .isInstanceOf(ArtworkException.class)
                .hasMessage(
                        "large.svg:1 <text>: up to here the drawing's texts have 100004 letters; 100000 are the limit."
                                + " Take out what nobody reads, or split the drawing.");
    }

    @Test
    void lettersOfAllTextsAreCounted() {
        Budget budget = new Budget("large.svg", 100, 10);
        budget.letters(6, HERE);
        budget.letters(4, HERE);
        assertThatThrownBy(() -> budget.letters(1, HERE))
                .isInstanceOf(ArtworkException.class)
                .hasMessageContaining("11 letters; 10 are the limit");
    }

    @Test
    void curvesOfAllShapesAreCounted() {
        Budget budget = new Budget("large.svg", 100, 10);
        budget.curves(100, HERE);
        assertThatThrownBy(() -> budget.curves(20, HERE))
                .isInstanceOf(ArtworkException.class)
                .hasMessage(
                        "large.svg:7 <path id=\"coast\">: up to here the drawing's shapes have 120 lines and curves;"
                                + " 100 are the limit. Simplify its paths, draw strokes with longer dashes, use fewer copies, or"
                                + " split the drawing.");
    }

    /** A third of a megabyte holds some 70 copies, or three times as many shapes and groups; long values count too. */
    @Test
    void moreElementsThanMemoryHoldsAreRefused() throws Exception {
        build("<use/>".repeat(72));
        assertThatThrownBy(() -> build("<use/>".repeat(73)))
                .isInstanceOf(ArtworkException.class)
                .hasMessage(
                        "large.svg:1 <use>: up to here the drawing has 74 elements, more than fit into the 0 MiB of memory"
                                + " that the program may use. Merge shapes of one colour, split the drawing, or give the program"
                                + " more memory: JDK_JAVA_OPTIONS=-Xmx8g.");
        for (String shape : List.of("<rect/>", "<path/>", "<g/>")) {
            build(shape.repeat(240));
            assertThatThrownBy(() -> build(shape.repeat(250))).isInstanceOf(ArtworkException.class);
        }
        String path = "<path d='" + "l1 1".repeat(10_000) + "'/>";
        build(path.repeat(2));
        assertThatThrownBy(() -> build(path.repeat(3))).isInstanceOf(ArtworkException.class);
    }

    private static void build(String content) throws SAXException, IOException, ParserConfigurationException {
        String text = "<svg xmlns='http://www.w3.org/2000/svg'>" + content + "</svg>";
        SAXParserFactory.newDefaultInstance()
                .newSAXParser()
                .parse(
                        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                        new DocumentBuilding("large.svg", new Notes(), 74 * Limits.ELEMENT_BYTES));
    }

    /** Four times as many shapes take about four times as long; the best of three counts, after one to warm up. */
    @Test
    @Tag("long")
    void readingTakesTimeInProportion() throws IOException {
        best(20_000);
        double once = best(20_000);
        double fourTimes = best(80_000);
        assertThat(fourTimes / once).as("%.2f s and %.2f s", once, fourTimes).isLessThan(4.6);
    }

    private static double best(int shapes) throws IOException {
        StringBuilder content = new StringBuilder();
        for (int i = 0; i < shapes; i++) {
            content.append("<rect x='").append(i % 100).append("' width='3' height='2' fill='#c04020'/>");
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            long start = System.nanoTime();
            assertThat(read(content.toString())).isEqualTo(shapes);
            best = Math.min(best, (System.nanoTime() - start) / 1e9);
        }
        return best;
    }
}
