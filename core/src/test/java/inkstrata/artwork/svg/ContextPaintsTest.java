package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.FlatShape;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code context-fill} and {@code context-stroke} after SVG 2, section 13.2. */
class ContextPaintsTest {
    private static final String MARKER = "<marker id='m' orient='auto'><g fill='context-stroke' stroke='none'>"
            + "<path d='M0 0h2v2z'/></g></marker>";

    private static List<FlatShape> read(String content) throws IOException {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='20mm' viewBox='0 0 20 20'>"
                + content + "</svg>";
        return SvgReader.read(
                        "test.svg",
                        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                        ReadOptions.DEFAULT)
                .shapes();
    }

    private static List<String> colours(String content) throws IOException {
        return read(content).stream().map(shape -> shape.colour().hex()).toList();
    }

    @Test
    void anArrowHeadTakesTheColourOfItsLine() throws IOException {
        assertThat(colours(MARKER + "<path d='M2 2h9' stroke='#112233' marker-end='url(#m)' fill='none'/>"
                        + "<path d='M2 9h9' stroke='#445566' marker-end='url(#m)' fill='none'/>"))
                .containsExactly("#112233", "#112233", "#445566", "#445566");
    }

    @Test
    void theColoursAlphaComesWithIt() throws IOException {
        List<FlatShape> shapes =
                read(MARKER + "<path d='M2 2h9' stroke='#11223380' marker-end='url(#m)' fill='none'/>");
        assertThat(shapes)
                .hasSize(2)
                .allSatisfy(shape -> assertThat(shape.opacity()).isEqualTo(128 / 255.0));
    }

    @Test
    void aCopyTakesTheColourOfItsUse() throws IOException {
        assertThat(colours("<defs><path id='p' d='M0 0h2v2z' fill='context-fill' stroke='context-stroke'/></defs>"
                        + "<use href='#p' fill='#112233'/><use href='#p' fill='#445566' stroke='#778899'/>"))
                .containsExactly("#112233", "#445566", "#778899");
    }

    @Test
    void markersInCopiesAskTwice() throws IOException {
        assertThat(colours(MARKER + "<defs><path id='p' d='M2 2h9' stroke='context-fill' fill='none'"
                        + " marker-end='url(#m)'/></defs><use href='#p' fill='#112233'/>"))
                .containsExactly("#112233", "#112233");
    }

    @Test
    void withoutAContextNothingIsPainted() throws IOException {
        assertThat(read("<path d='M0 0h2v2z' fill='context-fill' stroke='context-stroke'/>"))
                .isEmpty();
    }
}
