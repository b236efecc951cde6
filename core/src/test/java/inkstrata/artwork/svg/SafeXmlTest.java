package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Layer;
import inkstrata.artwork.Note;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SafeXmlTest {
    private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm'>";
    private final Notes notes = new Notes();

    private SVGOMDocument parse(String text) {
        return SafeXml.parse("test.svg", text.getBytes(StandardCharsets.UTF_8), notes);
    }

    private int lineOf(SVGOMDocument document, String id) {
        return Elements.source(document.getElementById(id)).line();
    }

    @Test
    void everyElementKnowsTheLineItStartsOn() {
        SVGOMDocument document = parse(SVG + "\n<!-- a comment\nof two lines -->\n<g id='a'\n   fill='red'>\n"
                + "<path\n\n id='b'/><path id='c'/>\n<![CDATA[ \n ]]><path id='d'/></g>\n</svg>");
        assertThat(lineOf(document, "a")).isEqualTo(4);
        assertThat(lineOf(document, "b")).isEqualTo(6);
        assertThat(lineOf(document, "c")).isEqualTo(8);
        assertThat(lineOf(document, "d")).isEqualTo(10);
    }

    @Test
    void sourceNamesTheGroupsAround() {
        SVGOMDocument document = parse(SVG + "<g id='outer'><g><g id='inner'><path id='p'/></g></g></g></svg>");
        assertThat(Elements.source(document.getElementById("p")).layers())
                .extracting(Layer::id)
                .containsExactly("outer", "inner", "p");
        assertThat(Elements.source(document.getElementById("p"))).hasToString("<path id=\"p\">");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "ISO-8859-1"})
    void readsEveryEncoding(String encoding) {
        String bom = encoding.startsWith("UTF-16") && encoding.length() > 6 ? "\ufeff" : "";
        String text = bom + "<?xml version='1.0' encoding='" + encoding.replaceAll("[LB]E$", "") + "'?>" + SVG
                + "<g id='blüte'/></svg>";
        SVGOMDocument document = SafeXml.parse("test.svg", text.getBytes(Charset.forName(encoding)), notes);
        assertThat(document.getElementById("blüte")).isNotNull();
    }

    @Test
    void readsUtf8WithMark() {
        assertThat(parse("\ufeff" + SVG + "<g id='é'/></svg>").getElementById("é"))
                .isNotNull();
    }

    @Test
    void unzipsSvgz() throws IOException {
        ByteArrayOutputStream zipped = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(zipped)) {
            zip.write((SVG + "</svg>").getBytes(StandardCharsets.UTF_8));
        }
        byte[] bytes = SvgBytes.read("test.svgz", new ByteArrayInputStream(zipped.toByteArray()));
        assertThat(new String(bytes, StandardCharsets.UTF_8)).isEqualTo(SVG + "</svg>");
        byte[] cut = java.util.Arrays.copyOf(zipped.toByteArray(), zipped.size() / 2);
        assertThatExceptionOfType(ArtworkException.class)
                .isThrownBy(() -> SvgBytes.read("test.svgz", new ByteArrayInputStream(cut)))
                .withMessageContaining("compressed and damaged");
    }

    @Test
    void aZipBombIsRefused() throws IOException {
        ByteArrayOutputStream zipped = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(zipped)) {
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i <= Limits.BYTES >> 20; i++) {
                zip.write(zeros);
            }
        }
        assertThatExceptionOfType(ArtworkException.class)
                .isThrownBy(() -> SvgBytes.read("bomb.svgz", new ByteArrayInputStream(zipped.toByteArray())))
                .withMessage("bomb.svgz: the drawing has more than 256 MB. Split it, or simplify its outlines in the"
                        + " drawing program.");
    }

    @Test
    void entitiesOfDrawingProgramsWork() {
        SVGOMDocument document = parse("<?xml version='1.0'?><!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
                + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd' [ <!ENTITY ns_svg"
                + " 'http://www.w3.org/2000/svg'><!ENTITY st0 'fill:#ff0000;'> ]><svg xmlns='&ns_svg;' width='1mm'"
                + " height='1mm'><path id='p' style='&st0;'/></svg>");
        Element path = document.getElementById("p");
        assertThat(path.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
        assertThat(path.getAttributeNS(null, "style")).isEqualTo("fill:#ff0000;");
    }

    @Test
    void entitiesThatMultiplyAreRefused() {
        StringBuilder text = new StringBuilder("<!DOCTYPE svg [<!ENTITY e0 'xxxxxxxxxx'>");
        for (int i = 1; i < 12; i++) {
            text.append("<!ENTITY e")
                    .append(i)
                    .append(" '")
                    .append(("&e" + (i - 1) + ";").repeat(10))
                    .append("'>");
        }
        text.append("]>").append(SVG).append("<text>&e11;</text></svg>");
        assertThatThrownBy(() -> parse(text.toString()))
                .isInstanceOf(ArtworkException.class)
                .hasMessageContaining("entities grow too large");
    }

    @Test
    void aFewLongEntitiesAreRefusedToo() {
        String text = "<!DOCTYPE svg [<!ENTITY e '" + "x".repeat(100_000) + "'>]>" + SVG + "<text>" + "&e;".repeat(100)
                + "</text></svg>";
        assertThatThrownBy(() -> parse(text))
                .isInstanceOf(ArtworkException.class)
                .hasMessageContaining("entities grow too large");
    }

    @Test
    void depthHasABound() {
        parse(SVG + "<g>".repeat(Limits.DEPTH - 1) + "</g>".repeat(Limits.DEPTH - 1) + "</svg>");
        assertThatThrownBy(() -> parse(SVG + "<g>".repeat(Limits.DEPTH) + "</g>".repeat(Limits.DEPTH) + "</svg>"))
                .isInstanceOf(ArtworkException.class)
                .hasMessage("test.svg:1 <g>: elements are nested more than 400 deep. Ungroup the drawing and save it"
                        + " again.");
    }

    @Test
    void attributesHaveABound() {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < Limits.ATTRIBUTES; i++) {
            many.append(" a").append(i).append("='1'");
        }
        parse(SVG + "<g" + many + "/></svg>");
        assertThatThrownBy(() -> parse(SVG + "<g" + many + " b='1'/></svg>"))
                .isInstanceOf(ArtworkException.class)
                .hasMessageContaining("501 attributes");
    }

    @Test
    void undeclaredPrefixesAreLivedWith() {
        SVGOMDocument document = parse(SVG + "<g id='g' tool:label='x'><use xlink:href='#g' id='u'/></g></svg>");
        assertThat(Elements.href(document.getElementById("u"))).isEqualTo("#g");
    }

    @Test
    void svgWithoutNamespaceIsReadWithANote() {
        SVGOMDocument document = parse("<svg width='1mm' height='1mm'><path id='p'/></svg>");
        assertThat(Elements.isSvg(document.getElementById("p"), "path")).isTrue();
        assertThat(notes.list())
                .extracting(Note::text)
                .singleElement()
                .asString()
                .contains("no xmlns");
    }

    @Test
    void oldAndNewVersionsAndUnknownElementsAreRead() {
        SVGOMDocument document = parse("<svg xmlns='http://www.w3.org/2000/svg' version='2.0' width='1mm'"
                + " height='1mm'><hatch id='h'/><p:x xmlns:p='urn:x' id='x'/></svg>");
        assertThat(Elements.isSvg(document.getElementById("h"), "hatch")).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "no markup",
                "<html/>",
                "<svg><path></svg>",
                "<svg xmlns='urn:other'/>",
                "<svg>&nbsp;</svg>",
                "<svg width='1' width='2'/>"
            })
    void whatIsNotSvgIsRefused(String text) {
        assertThatExceptionOfType(ArtworkException.class)
                .isThrownBy(() -> parse(text))
                .withMessageStartingWith("test.svg");
    }

    @Test
    void equalNotesAreCounted() {
        for (int i = 0; i < 25; i++) {
            notes.info(inkstrata.artwork.Source.UNKNOWN, "same");
        }
        assertThat(notes.list()).hasSize(Notes.OF_THE_SAME_WORDS);
        assertThat(notes.list().get(Notes.OF_THE_SAME_WORDS - 1).text()).isEqualTo("same (and 5 more)");
    }
}
