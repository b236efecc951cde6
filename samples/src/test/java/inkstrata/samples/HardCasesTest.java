package inkstrata.samples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.jr.ob.JSON;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Jobs and drawings that ask for odd things: each gets its films, or one clear line. */
class HardCasesTest {
    /** Sand below, a dark square on it, red over half of the dark one. */
    private static final String THREE = "<rect width='40' height='40' fill='#e8cf9a'/>"
            + "<rect x='10' y='10' width='20' height='20' fill='#1d2440'/>"
            + "<rect x='20' y='10' width='20' height='20' fill='#b4512d'/>";

    private static final String INKS = """
            inks:
              - {name: sand, prints: "#e8cf9a"}
              - {name: rust, prints: "#b4512d"}
              - {name: night, prints: "#1d2440"}
            """;

    @Test
    void sandRunsOnBeneathBothThatAreDarker() throws IOException {
        assertThat(areas(THREE, INKS + "use: {trap: {width: 0 mm}}"))
                .containsEntry("01-sand.svg", 1600.0)
                .containsEntry("02-rust.svg", 400.0)
                .containsEntry("03-night.svg", 200.0);
    }

    @Test
    void whatIsRightBeneathANamedKeyRunsOnWhateverItsColour() throws IOException {
        String named = INKS.replace("\"#b4512d\"", "\"#b4512d\", key: true") + "use: {trap: {width: 0 mm}}";
        assertThat(areas(THREE, named))
                .containsEntry("01-sand.svg", 1600.0 - 200)
                .containsEntry("02-night.svg", 400.0)
                .containsEntry("03-rust.svg", 400.0);
    }

    @Test
    void ofTwoKeysEachPrintsOverWhatIsRightBeneathIt() throws IOException {
        String both =
                INKS.replace("\"#b4512d\"", "\"#b4512d\", key: true").replace("\"#1d2440\"", "\"#1d2440\", key: true")
                        + "order: [sand, night, rust]\nuse: {trap: {width: 0 mm}}";
        assertThat(areas(THREE, both))
                .containsEntry("01-sand.svg", 1600.0 - 200)
                .containsEntry("02-night.svg", 400.0)
                .containsEntry("03-rust.svg", 400.0);
    }

    @Test
    void whereOneFilmIsAllowedEveryColourIsKnockedOut() throws IOException {
        assertThat(areas(THREE, INKS + "use: {trap: {width: 0 mm}, overprint: {maxFilms: 1}}"))
                .containsEntry("01-sand.svg", 1600.0 - 600)
                .containsEntry("02-rust.svg", 400.0)
                .containsEntry("03-night.svg", 200.0);
    }

    @Test
    void nothingRunsOnBeneathAnInkThatIsPrintedFirst() throws IOException {
        assertThat(areas(THREE, INKS + "order: [night, ...]\nuse: {trap: {width: 0 mm}}"))
                .containsEntry("01-night.svg", 400.0)
                .containsEntry("02-sand.svg", 1600.0 - 200);
    }

    @Test
    void aListedInkThatPrintsNowhereHasNoFilmAndMayStandInTheOrder() throws IOException {
        String more = INKS + "  - {name: gold, prints: \"#ffcc00\"}\norder: [gold, sand, ..., night]\n";
        Map<String, byte[]> files = files(THREE, more);
        assertThat(files)
                .containsOnlyKeys(
                        "01-sand.svg",
                        "02-rust.svg",
                        "03-night.svg",
                        "films.json",
                        "overview.png",
                        "overview.svg",
                        "plan.json");
        assertThat(new String(files.get("plan.json"), UTF_8)).contains("Ink 'gold' (#ffcc00) prints nowhere");
    }

    @Test
    void anOrderThatForgetsOrInventsInksSaysSo() {
        assertThatThrownBy(() -> files(THREE, INKS + "order: [sand, night]"))
                .isInstanceOf(JobException.class)
                .hasMessage("mill.yaml:5: order leaves out rust. Name them, or write ... where the rest shall print.");
        assertThatThrownBy(() -> files(THREE, INKS + "order: [sand, knight, ...]"))
                .isInstanceOf(JobException.class)
                .hasMessage(
                        "mill.yaml:5: order names 'knight', which no ink is called. The inks are sand, rust, night.");
    }

    @Test
    void artworkInTheSheetsColourIsBareSheetAndKnocksOut() throws IOException {
        String window = THREE + "<rect x='12' y='12' width='4' height='4' fill='#f7efdc'/>";
        assertThat(areas(window, "sheet: {colour: \"#f7efdc\"}\n" + INKS + "use: {trap: {width: 0 mm}}"))
                .hasSize(3)
                .containsEntry("01-sand.svg", 1600.0 - 16)
                .containsEntry("03-night.svg", 200.0 - 16);
    }

    @Test
    void aDrawingThatPrintsNothingHasNoFilmsAndSaysSo() throws IOException {
        for (String drawing : List.of("", "<rect width='40' height='40' fill='#ffffff'/>")) {
            Map<String, byte[]> files = files(drawing, "");
            assertThat(files).containsOnlyKeys("films.json", "plan.json");
            assertThat(new String(files.get("plan.json"), UTF_8)).contains("nothing prints");
        }
    }

    @Test
    void oneInkIsOneFilm() throws IOException {
        assertThat(areas("<circle cx='20' cy='20' r='10' fill='#111111'/>", ""))
                .hasSize(1)
                .allSatisfy((file, area) -> {
                    assertThat(file).isEqualTo("01-black.svg");
                    assertThat(area).isBetween(313.9, 314.16);
                });
    }

    @Test
    void thirtyInksSortInPrintOrder() throws IOException {
        StringBuilder drawing = new StringBuilder();
        StringBuilder inks = new StringBuilder("merge: 0\ninks:\n");
        for (int i = 0; i < 30; i++) {
            String colour = String.format(java.util.Locale.ROOT, "#%02x%02x%02x", 240 - 7 * i, 200 - 5 * i, 10 * i / 2);
            drawing.append("<rect x='%d' width='1' height='40' fill='%s'/>".formatted(i, colour));
            inks.append("  - {name: \"n\u00b0 %d / \u00e9t\u00e9\", prints: \"%s\"}\n".formatted(30 - i, colour));
        }
        List<String> films =
                List.copyOf(areas(drawing.toString(), inks.toString()).keySet());
        assertThat(films)
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 30)
                        .mapToObj(i -> String.format(java.util.Locale.ROOT, "%02d-n-%d-ete.svg", i, 31 - i))
                        .toList());
    }

    @Test
    void aSheetSmallerThanThePictureIsTheJobsFault() {
        assertThatThrownBy(() -> files(THREE, "sheet: {size: 30 x 60 mm}"))
                .isInstanceOf(JobException.class)
                .hasMessage("mill.yaml: the picture, 40.0 x 40.0 mm with its corner at -5.0, 10.0, does not lie on the"
                        + " sheet of 30.0 x 60.0 mm. Make the sheet larger, or set artwork.width or artwork.place.");
        assertThatThrownBy(() -> files(THREE, "sheet: {size: 60 x 60 mm}\nartwork: {place: {x: 30 mm, y: 5 mm}}"))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("does not lie on the sheet");
    }

    @Test
    void theBackOfASheetIsPrintedMirroredKeyFirst() throws IOException {
        Map<String, byte[]> files =
                files(THREE, "sheet: {size: 100 x 90 mm, print: back}\n" + INKS + "use: {trap: {width: 0 mm}}");
        assertThat(files)
                .containsOnlyKeys(
                        "01-night.svg",
                        "02-rust.svg",
                        "03-sand.svg",
                        "films.json",
                        "overview.png",
                        "overview.svg",
                        "plan.json");
        String rust = new String(files.get("02-rust.svg"), UTF_8);
        // Seen from the front it lies from 50 to 70 mm across; the hidden corner of the dark square leaves a vertex at
        // 40.
        assertThat(rust).containsPattern("M50 35(H40)?H30V55(H40)?H50Z").contains("mirrored for the back of the sheet");
        assertThat(areas(files)).containsEntry("03-sand.svg", 1600.0);
    }

    private static Map<String, Double> areas(String drawing, String job) throws IOException {
        return areas(files(drawing, job));
    }

    /** What each film prints, in mm², as the plan says. */
    private static Map<String, Double> areas(Map<String, byte[]> files) throws IOException {
        Map<String, Double> areas = new TreeMap<>();
        Map<String, Object> plan = JSON.std.mapFrom(new String(files.get("plan.json"), UTF_8));
        for (Object pull : (List<?>) plan.get("pulls")) {
            Map<?, ?> facts = (Map<?, ?>) pull;
            areas.put((String) facts.get("file"), ((Number) facts.get("areaMm2")).doubleValue());
        }
        return areas;
    }

    /** A drawing of 40 x 40 mm, one unit a millimetre. */
    private static Map<String, byte[]> files(String drawing, String job) throws IOException {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='40mm' height='40mm' viewBox='0 0 40 40'>" + drawing
                + "</svg>";
        Artwork artwork =
                SvgReader.read("mill.svg", new ByteArrayInputStream(svg.getBytes(UTF_8)), ReadOptions.DEFAULT);
        return Press.files(artwork, JobReader.read("mill.yaml", job), Press.plugins());
    }
}
