package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What stays just inside the bounds is read, from any thread; what was made to exhaust the shop is refused soon. */
class LimitsTest {
    private static final String PATH = "<path id='u0' d='M0 0h9v9z'/>";

    private static Artwork read(String content) throws IOException {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='20mm'>" + content + "</svg>";
        return SvgReader.read(
                "test.svg", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), ReadOptions.DEFAULT);
    }

    @Test
    void readsAsDeepAsAllowed() throws IOException {
        int deep = Limits.DEPTH - 2;
        String open = "<g transform='translate(0.01)' opacity='.999' style='fill:red'>".repeat(deep);
        assertThat(read(open + PATH + "</g>".repeat(deep)).shapes()).hasSize(1);
    }

    @Test
    void followsReferencesAsDeepAsAllowed() throws IOException {
        StringBuilder chain = new StringBuilder("<defs>" + PATH);
        int length = 2 * Limits.DEPTH - 4;
        for (int i = 1; i < length; i++) {
            chain.append("<use id='u")
                    .append(i)
                    .append("' href='#u")
                    .append(i - 1)
                    .append("'/>");
        }
        chain.append("</defs><use href='#u").append(length - 1).append("'/>");
        assertThat(read(chain.toString()).shapes()).hasSize(1);
    }

    @Test
    void nestedClipsAreFollowed() throws IOException {
        StringBuilder clips = new StringBuilder();
        for (int i = 0; i < 200; i++) {
            clips.append("<clipPath id='c")
                    .append(i)
                    .append("' clip-path='url(#c")
                    .append(i + 1)
                    .append(")'><path d='M0 0h9v9z'/></clipPath>");
        }
        clips.append("<clipPath id='c200'><path d='M0 0h9v9z'/></clipPath><path d='M0 0h9v9z' clip-path='url(#c0)'/>");
        assertThat(read(clips.toString()).shapes()).hasSize(1);
    }

    @Test
    @Timeout(20)
    void aThousandRulesOnThousandsOfElementsAreSoonDone() throws IOException {
        StringBuilder content = new StringBuilder("<style>");
        for (int i = 0; i < 1000; i++) {
            content.append(".c")
                    .append(i)
                    .append(":nth-child(n+1){fill:#00")
                    .append(1000 + i)
                    .append("}");
        }
        content.append("</style>");
        for (int i = 0; i < 3000; i++) {
            content.append("<path class='c").append(i % 1000).append("' d='M0 0h9v9z'/>");
        }
        assertThat(read(content.toString()).shapes()).hasSize(3000);
    }

    @Test
    @Timeout(20)
    void aFloodOfRulesIsRefused() {
        String flood = "<style>" + "a,b,c,d,e{fill:red}".repeat(Limits.STYLE_RULES / 5 + 1) + "</style>" + PATH;
        assertThatThrownBy(() -> read(flood))
                .isInstanceOf(ArtworkException.class)
                .hasMessage("test.svg:1 <style>: the style sheets have more than 50000 rules. Save the drawing with"
                        + " styles as attributes.");
    }
}
