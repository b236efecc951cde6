package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.plan.Side;
import inkstrata.planar.Region;
import inkstrata.planar.RegionExample;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xmlunit.assertj3.XmlAssert;
import org.xmlunit.builder.Input;
import org.xmlunit.util.Convert;

/** The structure of a film, read by an XML parser. */
class FilmSvgTest {
    private static final Map<String, String> SVG = Map.of("s", "http://www.w3.org/2000/svg");

    @Test
    void oneUserUnitIsOneMillimetreOfTheSheet() throws IOException {
        for (String film : PrintExample.films(PrintExample.poster(Side.FRONT))) {
            xml(film).valueByXPath("/s:svg/@width").isEqualTo("500mm");
            xml(film).valueByXPath("/s:svg/@height").isEqualTo("700mm");
            xml(film).valueByXPath("/s:svg/@viewBox").isEqualTo("0 0 500 700");
        }
    }

    @Test
    void aFilmLargerThanItsSheetKeepsTheSheetsCoordinates() throws IOException {
        String film = PrintExample.films(
                        PrintExample.print(new Size(20, 20), new Frame(0, 0, 20, 20), Side.FRONT, Region.EMPTY))
                .get(0);
        xml(film).valueByXPath("/s:svg/@width").isEqualTo("120mm");
        xml(film).valueByXPath("/s:svg/@height").isEqualTo("81mm");
        xml(film).valueByXPath("/s:svg/@viewBox").isEqualTo("-50 -36 120 81");
    }

    @Test
    void pictureMarksBarAndLabelHaveTheirGroups() throws IOException {
        for (String film : PrintExample.films(PrintExample.poster(Side.FRONT))) {
            xml(film)
                    .nodesByXPath("/s:svg/s:g[@id='picture'][@fill-rule='evenodd']")
                    .hasSize(1);
            xml(film).nodesByXPath("/s:svg/s:g[@id='register']/s:path").hasSize(8);
            xml(film).nodesByXPath("/s:svg/s:g[@id='bar']/s:path").hasSize(1);
            xml(film).nodesByXPath("/s:svg/s:g[@id='wedge']/s:g/s:title").hasSize(10);
            xml(film)
                    .nodesByXPath("/s:svg/s:g[@id='crop' or @id='centre']/s:path")
                    .hasSize(12);
            xml(film).nodesByXPath("/s:svg/s:g[@id='label']/s:g/s:path").hasSize(2);
        }
    }

    @Test
    void strangersWordsStayWords() throws IOException {
        String film = PrintExample.films(PrintExample.poster(Side.FRONT)).get(1);
        xml(film).valueByXPath("/s:svg/s:title").isEqualTo("tide-mill, pull 2 of 3: r\u00f6t & <blue>");
        xml(film)
                .valueByXPath("//s:g[@id='label']/s:g[1]/s:title")
                .isEqualTo("tide-mill \u00b7 pull 2 of 3 \u00b7 r\u00f6t & <blue>");
        String odd = PrintExample.films(PrintExample.print(
                        new Size(300, 300),
                        new Frame(100, 100, 50, 50),
                        Side.FRONT,
                        List.of("nul\u0000 \ud800 \"quoted\" ]]> \ud83d\udc1f"),
                        Region.EMPTY))
                .get(0);
        xml(odd).valueByXPath("/s:svg/s:title")
                .isEqualTo("tide-mill, pull 1 of 1: nul\ufffd \ufffd \"quoted\" ]]> \ud83d\udc1f");
    }

    @Test
    void blackIsTheOnlyPaintAndNothingElseChangesHowAFilmLooks() throws IOException {
        Set<String> allowed =
                new HashSet<>(Arrays.asList("xmlns version width height viewBox fill fill-rule id d".split(" ", -1)));
        for (String film : PrintExample.films(PrintExample.poster(Side.FRONT))) {
            NodeList all = Convert.toDocument(
                            Input.fromReader(new StringReader(film)).build())
                    .getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                Element element = (Element) all.item(i);
                assertThat(element.getTagName()).isIn("svg", "title", "g", "path");
                NamedNodeMap attributes = element.getAttributes();
                for (int j = 0; j < attributes.getLength(); j++) {
                    Node attribute = attributes.item(j);
                    assertThat(attribute.getNodeName()).isIn(allowed);
                    if (attribute.getNodeName().equals("fill")) {
                        assertThat(attribute.getNodeValue()).isEqualTo("#000000");
                    }
                }
            }
            xml(film).valueByXPath("/s:svg/@fill").isEqualTo("#000000");
        }
    }

    @Test
    void marksAreTheSameOnEveryFilm() throws IOException {
        List<String> films = PrintExample.films(PrintExample.poster(Side.FRONT));
        assertThat(films).hasSize(3);
        assertThat(films.stream().map(film -> between(film, "<g id=\"register\"", "<g id=\"label\"")))
                .allMatch(marks -> marks.equals(between(films.get(0), "<g id=\"register\"", "<g id=\"label\"")));
        assertThat(films.stream().map(film -> between(film, "<svg", "<title>")).distinct())
                .hasSize(1);
    }

    @Test
    void aLongerNameOfOneInkMovesNoMark() throws IOException {
        String longName = "ink with a name that goes on and on ".repeat(3).strip();
        List<String> films = PrintExample.films(PrintExample.print(
                new Size(100, 100),
                new Frame(25, 25, 50, 50),
                Side.FRONT,
                List.of("sand", longName),
                Region.EMPTY,
                Region.EMPTY));
        assertThat(between(films.get(0), "<svg", "<title>")).isEqualTo(between(films.get(1), "<svg", "<title>"));
        assertThat(between(films.get(0), "<g id=\"register\"", "<g id=\"label\""))
                .isEqualTo(between(films.get(1), "<g id=\"register\"", "<g id=\"label\""));
    }

    @Test
    void theBackOfASheetGetsTheMirroredPictureAndSaysSo() throws IOException {
        Region region = RegionExample.of(RegionExample.polygon(RegionExample.ringMm(12, 20, 30.00025, 21, 15, 50)));
        Size paper = new Size(300, 200);
        String front = PrintExample.films(PrintExample.print(paper, new Frame(10, 20, 120, 100), Side.FRONT, region))
                .get(0);
        String back = PrintExample.films(PrintExample.print(paper, new Frame(10, 20, 120, 100), Side.BACK, region))
                .get(0);
        assertThat(FilmReader.paths(front)).containsExactly("M12 20L30.00025 21 15 50Z");
        assertThat(FilmReader.paths(back)).containsExactly("M288 20L269.99975 21 285 50Z");
        xml(back).valueByXPath("//s:g[@id='label']").contains("mirrored for the back of the sheet");
        xml(front).valueByXPath("//s:g[@id='label']").contains("reads right");
        // Marks are mirrored with the picture: the left ones of the front are the right ones of the back.
        xml(front).valueByXPath("//s:g[@id='register']/s:path[1]/@d").asString().startsWith("M-5 9.925H5");
        xml(back).valueByXPath("//s:g[@id='register']/s:path[3]/@d").asString().startsWith("M295 9.925H305");
    }

    @Test
    void sameJobSameBytesInAnyLocale() throws IOException {
        Locale usual = Locale.getDefault();
        Map<String, byte[]> first = PrintExample.written(PrintExample.poster(Side.FRONT), Job.DEFAULT);
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            Map<String, byte[]> second = PrintExample.written(PrintExample.poster(Side.FRONT), Job.DEFAULT);
            assertThat(second.keySet()).containsExactlyElementsOf(first.keySet());
            first.forEach((name, bytes) -> assertThat(second.get(name)).isEqualTo(bytes));
        } finally {
            Locale.setDefault(usual);
        }
        first.remove("overview.png");
        first.forEach((name, bytes) -> assertThat(new String(bytes, StandardCharsets.UTF_8))
                .as(name)
                .endsWith("\n")
                .doesNotContain("\r"));
    }

    private static String between(String film, String start, String end) {
        return film.substring(film.indexOf(start), film.indexOf(end));
    }

    private static XmlAssert xml(String film) {
        return XmlAssert.assertThat(film).withNamespaceContext(SVG);
    }
}
