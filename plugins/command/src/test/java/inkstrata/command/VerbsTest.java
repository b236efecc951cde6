package inkstrata.command;

import static inkstrata.command.AtTheCounter.drawing;
import static inkstrata.command.AtTheCounter.say;
import static inkstrata.command.AtTheCounter.sayWith;
import static inkstrata.command.AtTheCounter.write;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerbsTest {
    @TempDir
    private Path folder;

    private Path boats;

    @BeforeEach
    void aDrawing() throws IOException {
        boats = write(folder.resolve("boats.svg"), drawing());
    }

    @Test
    void readSaysSizeColoursAndAreas() {
        AtTheCounter read = say("read", boats).isDone();
        assertThat(read.out().lines())
                .containsExactly(
                        "boats.svg: 60.00 x 40.00 mm, shapes: 3, colours: 3",
                        "  colour      mm²  of picture",
                        "  #f4d78c  1100.0     45.83 %",
                        "  #d2603f   750.0     31.25 %",
                        "  #14182c   150.0      6.25 %");
        assertThat(read.said()).isEmpty();
    }

    @Test
    void readHasTheSameAsJson() throws IOException {
        Map<String, Object> read = json(say("read", boats, "--json").isDone());
        assertThat(read.keySet()).containsExactly("format", "artwork", "shapes", "colours", "seams", "notes");
        Map<?, ?> artwork = (Map<?, ?>) read.get("artwork");
        assertThat(((Number) artwork.get("widthMm")).doubleValue()).isEqualTo(60);
        assertThat(((Number) artwork.get("heightMm")).doubleValue()).isEqualTo(40);
        assertThat((List<?>) read.get("colours"))
                .asString()
                .isEqualTo("[{colour=#f4d78c, areaMm2=1100}, {colour=#d2603f, areaMm2=750},"
                        + " {colour=#14182c, areaMm2=150}]");
        assertThat((List<?>) read.get("notes")).isEmpty();
    }

    @Test
    void aDrawingMayComeFromStandardInput() throws IOException {
        assertThat(sayWith(drawing(), "read", "-").isDone().out())
                .startsWith("standard input: 60.00 x 40.00 mm, shapes: 3, colours: 3");
        Path films = folder.resolve("films");
        sayWith(drawing(), "separate", "-", "-o", films).isDone();
        assertThat(sayWith(drawing(), "check", "-", films).isDone().out())
                .isEqualTo(say("check", boats, films).isDone().out());
        sayWith("<svg", "plan", "-").failsWith(ExitCode.ARTWORK_AT_FAULT, "standard input:1");
        sayWith("", "plan", "-").failsWith(ExitCode.ARTWORK_AT_FAULT, "standard input");
    }

    @Test
    void anEmptyDrawingIsReadToo() throws IOException {
        Path empty = write(
                folder.resolve("empty.svg"), "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'/>");
        assertThat(say("read", empty).isDone().out()).isEqualTo("empty.svg: 9.00 x 9.00 mm, shapes: 0, colours: 0\n");
    }

    @Test
    void widthComesFromTheCommandElseTheJobElseTheDrawing() throws IOException {
        write(folder.resolve("boats.yaml"), "artwork: {width: 120 mm}");
        assertThat(say("read", boats).isDone().out()).startsWith("boats.svg: 120.00 x 80.00 mm");
        assertThat(say("read", boats).isDone().said())
                .containsExactly("inkstrata: job file: " + folder.resolve("boats.yaml"));
        assertThat(say("read", boats, "--width", "30 cm").isDone().out()).startsWith("boats.svg: 300.00 x 200.00 mm");
        Path other = write(folder.resolve("other.yaml"), "title: Other");
        assertThat(say("read", boats, "--job", other).isDone().out()).startsWith("boats.svg: 60.00 x 40.00 mm");
    }

    @Test
    void aDrawingWithoutUnitsIsReadAsToldElseAsCssPixelsWithANote() throws IOException {
        Path bare = write(
                folder.resolve("bare.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='72' height='36'><rect width='72' height='36'/></svg>");
        assertThat(say("read", bare, "--units-per-inch", "72").isDone().out()).startsWith("bare.svg: 25.40 x 12.70 mm");
        assertThat(say("read", bare).isDone().out())
                .startsWith("bare.svg: 19.05 x 9.53 mm")
                .contains("\nwarning: ", "read as px, 96 to the inch", "19.05 x 9.53 mm");
    }

    @Test
    void leftOutElementsAreNoted() throws IOException {
        Path photo = write(
                folder.resolve("photo.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'>\n"
                        + "<image id='photo' width='5' height='5' href='a.png'/></svg>");
        assertThat(say("read", photo, "--leave-out").isDone().out())
                .contains("warning: photo.svg:2 <image id=\"photo\">: ");
    }

    @Test
    void whatTheGridSwallowsIsToldWithPlaceAndSize() throws IOException {
        Path dust = write(
                folder.resolve("dust.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm' viewBox='0 0 9 9'>\n"
                        + "<rect id='speck' x='3' y='4' width='0.0001' height='0.0001'/></svg>");
        String note = "info: dust.svg:2 <rect id=\"speck\">: An outline of 0.00010 x 0.00010 mm at %s"
                + " is too narrow for the grid of 0.00025 mm and prints nothing.";
        assertThat(say("read", dust).isDone().out().lines())
                .contains(note.formatted("3.000, 4.000 mm from the picture's top left corner"));
        assertThat(say("plan", dust).out().lines()).contains(note.formatted("63.500, 29.000 mm on the sheet"));
        Path sand = write(
                folder.resolve("sand.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm' viewBox='0 0 9 9'>"
                        + "<rect x='3' y='4' width='0.0001' height='0.0001'/>".repeat(13) + "</svg>");
        assertThat(say("read", sand).isDone().out().lines())
                .hasSize(12)
                .last()
                .isEqualTo("info: 3 more outlines are too narrow for the grid of 0.00025 mm and print nothing.");
    }

    @Test
    void planListsPullsLightToDarkWithReasons() {
        AtTheCounter plan = say("plan", boats).isDone();
        List<String> lines = plan.out().lines().toList();
        assertThat(lines.get(0)).isEqualTo("boats.svg: 3 pulls on the front of a sheet of 130.0 x 90.0 mm in #ffffff");
        assertThat(lines.subList(2, 5))
                .map(line -> line.replaceAll(".*(#\\w+).*", "$1"))
                .containsExactly("#f4d78c", "#d2603f", "#14182c");
        assertThat(plan.out()).contains("knockout: ").contains("overprint: ").contains("Trap: ");
    }

    @Test
    void planFindsWhatSeparateFinds() throws IOException {
        List<String> planned = say("plan", boats).isDone().out().lines().toList();
        List<String> separated = say("separate", boats, "-o", folder.resolve("films"))
                .isDone()
                .out()
                .lines()
                .toList();
        assertThat(planned)
                .last()
                .isEqualTo(separated.get(separated.size() - 1))
                .asString()
                .startsWith("Pulls may be ");
        Path jars = StrangersJar.finding(folder.resolve("jars"));
        assertThat(say("plan", boats, "--plugins", jars, "--fail-on", "warning").code())
                .isEqualTo(ExitCode.FINDINGS);
    }

    @Test
    void planHasTheSameAsJson() throws IOException {
        Map<String, Object> plan =
                json(say("plan", boats, "--json", "--plugins", StrangersJar.finding(folder.resolve("jars")))
                        .isDone());
        assertThat(plan.keySet())
                .containsExactly(
                        "verdict",
                        "format",
                        "artwork",
                        "sheet",
                        "pulls",
                        "stacks",
                        "decisions",
                        "seams",
                        "notes",
                        "findings");
        assertThat((List<?>) plan.get("findings")).hasSize(1);
        assertThat((List<?>) plan.get("pulls")).hasSize(3);
        assertThat((List<?>) plan.get("decisions")).isNotEmpty();
    }

    @Test
    void aStarterIsWrittenOnceAndGivesTheSamePlan() {
        Path job = folder.resolve("boats.yaml");
        String plan = say("plan", boats, "--starter", job).isDone().out();
        assertThat(job).isRegularFile();
        assertThat(say("plan", boats).isDone().out()).isEqualTo(plan);
        assertThat(say("plan", boats, "--starter", folder.resolve("more.yaml")).said())
                .last()
                .asString()
                .contains("there is a job file already, boats.yaml");
    }

    @Test
    void aStarterOverwritesNothing() throws IOException {
        Path job = write(folder.resolve("mine.yaml"), "title: Mine");
        assertThat(say("plan", boats, "--starter", job).said())
                .singleElement()
                .asString()
                .contains("is there already. Name another file.");
        assertThat(job).hasContent("title: Mine");
    }

    @Test
    void fewerInksSayWhatIsLost() {
        String plan = say("plan", boats, "--inks", "2").isDone().out();
        assertThat(plan).contains("boats.svg: 2 pulls").contains("is printed with ink '");
        assertThat(say("plan", boats, "--inks", "0").said())
                .singleElement()
                .asString()
                .contains("must be 1 or more");
    }

    @Test
    void anInkMayPrintTheDrawingOfAnotherFile() throws IOException {
        write(
                folder.resolve("fog.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='40mm' viewBox='0 0 60 40'>"
                        + "<rect y='20' width='60' height='10'/></svg>");
        String fog = "inks: [{name: fog, prints: '#c8d4d8', hiding: 0.3, from: %s}]";
        Path job = write(folder.resolve("fog.yaml"), fog.formatted("fog.svg"));
        assertThat(say("plan", boats, "--job", job).isDone().out())
                .contains("fog")
                .contains("8.0");
        Path missing = write(folder.resolve("none.yaml"), fog.formatted("none.svg"));
        assertThat(say("plan", boats, "--job", missing).said())
                .singleElement()
                .asString()
                .contains("none.svg: there is no such drawing");
    }

    @Test
    void planWritesNothing() throws IOException {
        say("plan", boats).isDone();
        try (var files = java.nio.file.Files.list(folder)) {
            assertThat(files).containsExactly(boats);
        }
    }

    @Test
    void aJobFileThatWasFoundIsNamedUnlessQuiet() throws IOException {
        Path job = write(folder.resolve("boats.yaml"), "title: Boats");
        assertThat(say("plan", boats).isDone().said()).containsExactly("inkstrata: job file: " + job);
        assertThat(say("plan", boats, "--quiet").isDone().err()).isEmpty();
        assertThat(say("plan", boats, "--job", job).isDone().said()).isEmpty();
    }

    @Test
    void separateListsWhatItFoundAndWrote() {
        Path films = folder.resolve("films");
        List<String> lines =
                say("separate", boats, "-o", films).isDone().out().lines().toList();
        assertThat(lines.get(lines.size() - 1))
                .startsWith("Pulls may be 0.40 mm off before paper shows (asked: 0.40), first between ");
        List<String> written = lines.subList(0, lines.size() - 1);
        assertThat(written)
                .hasSize(7)
                .last()
                .isEqualTo(films.resolve("plan.json").toString());
        assertThat(written).allSatisfy(file -> assertThat(Path.of(file)).isRegularFile());
    }

    @Test
    void separateListsThemAsJson() throws IOException {
        Map<String, Object> result = json(
                say("separate", boats, "-o", folder.resolve("films"), "--json").isDone());
        assertThat(result.keySet()).containsExactly("verdict", "format", "folder", "files", "findings");
        assertThat((List<?>) result.get("files")).hasSize(7);
    }

    @Test
    void sameBytesOnASecondRun() throws IOException {
        say("separate", boats, "-o", folder.resolve("one")).isDone();
        say("separate", boats, "-o", folder.resolve("two")).isDone();
        assertThat(folder.resolve("one/SHA256SUMS")).hasSameTextualContentAs(folder.resolve("two/SHA256SUMS"));
    }

    @Test
    void pluginsAreListedInRunningOrderWithTheirOptions() throws IOException {
        String list = say("plugins", "--plugins", StrangersJar.finding(folder.resolve("jars")))
                .isDone()
                .out();
        assertThat(list.lines().filter(line -> !line.startsWith(" ")).map(line -> line.replaceAll(" .*", "")))
                .containsExactly(
                        "knockout",
                        "underbase",
                        "overprint",
                        "reduction",
                        "trap",
                        "slivers",
                        "choke",
                        "check",
                        "ink-height",
                        "printable",
                        "sheet-colours",
                        "step-colours",
                        "stranger",
                        "positive",
                        "pdf-films",
                        "pixel-films");
        assertThat(list)
                .contains("stranger (inspector, stranger.jar): looks over your shoulder")
                .contains("  width: ");
    }

    @Test
    void pluginsHaveTheSameAsJson() throws IOException {
        List<?> plugins = (List<?>) json(say("plugins", "--json").isDone()).get("plugins");
        assertThat(plugins)
                .map(plugin -> ((Map<?, ?>) plugin).get("id"))
                .asString()
                .isEqualTo(
                        "[knockout, underbase, overprint, reduction, trap, slivers, choke, check, ink-height, printable, sheet-colours, step-colours, positive, pdf-films, pixel-films]");
    }

    @Test
    void helpTeaches() {
        assertThat(say("--help").isDone().out())
                .contains("Begin like this", "separate boats.svg -o films", "Exit codes");
        for (String verb : List.of("read", "plan", "separate", "plugins")) {
            assertThat(say(verb, "--help").isDone().out()).contains("Example: inkstrata " + verb);
        }
        assertThat(say("help", "separate").isDone().out())
                .isEqualTo(say("separate", "--help").isDone().out());
        assertThat(say("help").isDone().out()).isEqualTo(say("--help").isDone().out());
        assertThat(say("--version").isDone().out()).matches("inkstrata \\d+\\.\\d+\\.\\d+\\S*\\R");
    }

    private static Map<String, Object> json(AtTheCounter answer) throws IOException {
        return JSON.std.mapFrom(answer.out());
    }
}
