package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Note;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentMendingTest {
    private final Notes notes = new Notes();

    private SVGOMDocument read(String content) {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='10mm'"
                + " height='10mm'>" + content + "</svg>";
        return SafeDocument.read("test.svg", text.getBytes(StandardCharsets.UTF_8), ReadOptions.DEFAULT, notes)
                .document();
    }

    private List<String> said() {
        return notes.list().stream().map(Note::text).toList();
    }

    /** SVG 1.1, section 5.8.2: the first child whose conditions hold is drawn, the others are not. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<foreignObject requiredExtensions='http://there.invalid/'/><g id='yes'/><g id='no'/>",
                "<g systemLanguage='de' id='no'/><g systemLanguage='fr, en-GB' id='yes'/>",
                "<g requiredFeatures='http://www.w3.org/TR/SVG11/feature#Shape' id='yes'/><g id='no'/>",
                "<g id='no' systemLanguage=''/><g id='yes'/>"
            })
    void switchDrawsTheFirstChildThatHolds(String children) {
        SVGOMDocument document = read("<switch>" + children + "</switch>");
        assertThat(document.getElementById("yes")).isNotNull();
        assertThat(document.getElementById("no")).isNull();
        assertThat(said()).isEmpty();
    }

    @Test
    void conditionsCountOutsideASwitchToo() {
        assertThat(read("<g id='no' systemLanguage='de'/>").getElementById("no"))
                .isNull();
        assertThat(said()).hasSize(1);
    }

    @Test
    void scriptsAndAnimationsAreTakenOut() {
        SVGOMDocument document =
                read("<script>x</script><rect onclick='x()' width='1'><set attributeName='width'/></rect>");
        assertThat(document.getElementsByTagNameNS("*", "script").getLength()).isZero();
        assertThat(document.getElementsByTagNameNS("*", "set").getLength()).isZero();
        assertThat(said())
                .containsExactly(
                        "the script in onclick does not run",
                        "the script does not run",
                        "the animation stands still; the drawing is read as written");
    }

    @Test
    void linksLeadWhereBatikLooksAndStayInTheFile() {
        SVGOMDocument document = read(
                "<g id='g'/><use id='a' href='#g' xlink:href='#old'/><use id='b' href='x.svg#g'/>"
                        + "<use id='c' xlink:href='#none'/><image id='d' href='data:image/png;base64,'/><a id='e' href='http://x'/>");
        assertThat(Elements.href(document.getElementById("a"))).isEqualTo("#g");
        assertThat(document.getElementById("a").hasAttributeNS(null, "href")).isFalse();
        assertThat(Elements.href(document.getElementById("b"))).isEmpty();
        assertThat(Elements.href(document.getElementById("c"))).isEmpty();
        assertThat(Elements.href(document.getElementById("d"))).startsWith("data:");
        assertThat(Elements.href(document.getElementById("e"))).isEmpty();
        assertThat(said())
                .containsExactly(
                        "it refers to 'x.svg#g', which lies outside the file and is not read",
                        "it refers to '#none', which is not in the file");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<g id='g'><use href='#g'/></g>",
                "<use id='a' href='#b'/><use id='b' href='#a'/>",
                "<clipPath id='c'><path clip-path='url(#c)'/></clipPath><path clip-path='url(#c)'/>",
                "<mask id='m'><g mask='url(#m)'/></mask>",
                "<marker id='k'><path style='marker:url(#k)'/></marker>",
                "<pattern id='p'><path fill='url(#p)'/></pattern>",
                "<pattern id='p' href='#q'/><pattern id='q' href='#p'/>",
                "<clipPath id='c' clip-path='url(#d)'/><clipPath id='d' clip-path='url(#c)'/>"
            })
    void ringsOfReferencesAreCut(String content) {
        read(content);
        assertThat(said()).isNotEmpty().allMatch(text -> text.endsWith("which leads back to it; that was left out"));
    }

    @Test
    void doublingCopiesAreRefusedAtOnce() {
        StringBuilder content = new StringBuilder("<path id='u0'/>");
        for (int i = 1; i <= 30; i++) {
            String below = "<use href='#u" + (i - 1) + "'/>";
            content.append("<g id='u")
                    .append(i)
                    .append("'>")
                    .append(below)
                    .append(below)
                    .append("</g>");
        }
        Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> assertThatThrownBy(() -> read(content.toString()))
                        .isInstanceOf(ArtworkException.class)
                        .hasMessageContaining("unfold to more than 4000000 elements. Use fewer copies"));
    }

    @Test
    void longChainsOfCopiesAreRefused() {
        StringBuilder content = new StringBuilder();
        for (int i = 0; i < 100_000; i++) {
            content.append("<use id='u")
                    .append(i)
                    .append("' href='#u")
                    .append(i + 1)
                    .append("'/>");
        }
        content.append("<path id='u100000'/>");
        assertThatThrownBy(() -> read(content.toString()))
                .isInstanceOf(ArtworkException.class)
                .hasMessageContaining("refer to one another more than 800 deep");
    }
}
