package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.separation.Subject;
import inkstrata.shop.Separator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** The map of what was found can be read, whatever and however much that is. */
class FindingsMapTest {
    private static final Severity[] SEVERITIES = Severity.values();

    @TempDir
    private Path folder;

    @Test
    void threeHundredFindingsCanStillBeRead() throws Exception {
        Document map = drawn(many(300));
        String words = map.getDocumentElement().getTextContent();
        Matcher rest = Pattern.compile("And (\\d+) more, each a dot").matcher(words);
        assertThat(rest.find()).isTrue();
        long told = Pattern.compile("(error|warning|note): (gap|wide rim|thin line)")
                .matcher(words)
                .results()
                .count();
        assertThat(told).isGreaterThanOrEqualTo(MapSpots.MOST);
        assertThat(told + Integer.parseInt(rest.group(1))).isEqualTo(300);
        assertThat(words).contains("100 errors, 100 warnings, 100 notes.");
        assertThat(map.getElementsByTagName("text").getLength()).isLessThan(200);
    }

    @Test
    void numbersStandOverNoOtherNumberAndOnTheSheet() {
        Random random = new Random(5);
        Frame sheet = new Frame(0, 0, 300, 200);
        for (int round = 0; round < 50; round++) {
            List<Place> asked = new ArrayList<>();
            double spread = 3 + random.nextInt(300);
            for (int i = 0; i < MapSpots.MOST; i++) {
                asked.add(new Place(
                        Math.min(300, random.nextDouble() * spread), Math.min(200, random.nextDouble() * spread)));
            }
            List<Place> badges = new MapBadges(sheet, 6).places(asked);
            for (int i = 0; i < badges.size(); i++) {
                Place one = badges.get(i);
                assertThat(one.x()).as("round %s", round).isBetween(3.0, 297.0);
                assertThat(one.y()).as("round %s", round).isBetween(3.0, 197.0);
                for (Place other : badges.subList(0, i)) {
                    assertThat(Math.max(Math.abs(one.x() - other.x()), Math.abs(one.y() - other.y())))
                            .as("round %s: two numbers", round)
                            .isGreaterThan(6);
                }
            }
        }
    }

    @Test
    void filmPlaceAreaTitleScaleAndLegendAreThere() throws Exception {
        Separation planned = planned();
        Finding gap = new Finding(
                        Severity.ERROR,
                        "gap",
                        new Place(20, 20),
                        "nothing <here> \u0007 & \uD83C\uDF0A",
                        "ink",
                        "Draw it.")
                .about(Subject.ink("sand").withFile("01-sand.svg"))
                .withArea(planned.printed().get(0));
        Finding all =
                new Finding(Severity.WARNING, "picture size", new Place(0, 0), "300 mm", "400 mm", "Make it anew.");
        Document map = drawn(planned, List.of(gap, all));
        assertThat(map.getDocumentElement().getTextContent())
                .contains(
                        "What was found on the films of boats",
                        "1 error, 1 warning.",
                        "error: gap, 01-sand.svg, at 20.0, 20.0 mm",
                        "nothing <here> \uFFFD & \uD83C\uDF0A; limit: ink.",
                        "warning: picture size, the whole set",
                        "20 mm",
                        "filled: all that is wrong");
        NodeList paths = map.getElementsByTagName("path");
        long filled = 0;
        for (int i = 0; i < paths.getLength(); i++) {
            filled += paths.item(i).getAttributes().getNamedItem("fill-opacity") == null ? 0 : 1;
        }
        assertThat(filled).as("areas").isEqualTo(1);
    }

    @Test
    void nothingWrongIsSaid() throws Exception {
        assertThat(drawn(List.of()).getDocumentElement().getTextContent()).contains("Nothing is wrong.");
    }

    private static List<Finding> many(int count) {
        Random random = new Random(3);
        List<String> rules = List.of("thin line", "wide rim", "gap");
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            findings.add(new Finding(
                            SEVERITIES[i % 3],
                            rules.get(i % 3),
                            new Place(
                                    12 + 60 * (i % 20 + random.nextDouble() / 2) / 20,
                                    12 + 40 * (Math.floorDiv(i, 20) + random.nextDouble() / 2) / 15),
                            "ink " + i + " leaves out a place that shows it (1.00 mm²)",
                            "ink wherever the drawing shows it",
                            "Add the place to the film.")
                    .about(Subject.ink("ink " + i).withFile("0" + i % 4 + "-ink.svg")));
        }
        return findings;
    }

    private Document drawn(List<Finding> findings) throws Exception {
        return drawn(planned(), findings);
    }

    private Document drawn(Separation planned, List<Finding> findings) throws Exception {
        Path file = folder.resolve("map.svg");
        Files.writeString(file, new FindingsMap(planned, Inspection.of(findings)).svg());
        assertThat(FindingsMap.isOne(file)).isTrue();
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    }

    private static Separation planned() throws IOException {
        Plugins plugins = Plugins.load(FindingsMapTest.class.getClassLoader());
        byte[] svg = AtTheCounter.drawing().getBytes(StandardCharsets.UTF_8);
        return new Separator(plugins)
                .separate(SvgReader.read("boats.svg", new ByteArrayInputStream(svg), ReadOptions.DEFAULT), Job.DEFAULT);
    }
}
