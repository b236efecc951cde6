package inkstrata.command;

import static inkstrata.command.AtTheCounter.drawing;
import static inkstrata.command.AtTheCounter.say;
import static inkstrata.command.AtTheCounter.write;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

class CheckVerbTest {
    @TempDir
    private Path folder;

    private Path boats;
    private Path films;
    private Path middle;

    @BeforeEach
    void aSetOfFilms() throws IOException {
        boats = write(folder.resolve("boats.svg"), drawing());
        films = folder.resolve("films");
        say("separate", boats, "-o", films).isDone();
        middle = films.resolve("02-red.svg");
        assertThat(middle).isRegularFile();
    }

    @Test
    void ourOwnFilmsAreRight() {
        AtTheCounter check = say("check", boats, films).isDone();
        assertThat(check.said()).isEmpty();
        assertThat(check.out().lines()).hasSize(1);
        assertThat(check.out()).startsWith("Pulls may be 0.40 mm off before paper shows (asked: 0.40), first between ");
    }

    @Test
    void aFilmThatWasMovedIsNamed() throws IOException {
        spoil("<g id=\"picture\"", "<g transform=\"translate(.3 0)\" id=\"picture\"");
        AtTheCounter check = say("check", boats, films);
        assertThat(check.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(check.out())
                .contains(
                        "error at ",
                        "(film place): 02-red.svg lies 0.300 mm too far right (should be: where the drawing has it)");
        assertThat(lastLine(check))
                .startsWith("Not ready: film place")
                .contains(". Once that is mended: Pulls may be 0.40 mm off before paper shows (asked: 0.40), first");
    }

    /** What moves with the picture is not said again of each mark. */
    @Test
    void aWholeSheetThatWasMovedIsOneError() throws IOException {
        spoil("<g id=\"picture\"", "<g transform=\"translate(.3 0)\"><g id=\"picture\"");
        spoil("</svg>", "</g></svg>");
        assertThat(say("check", boats, films).out().lines().filter(line -> line.startsWith("error")))
                .singleElement()
                .asString()
                .contains("(film place): 02-red.svg lies 0.300 mm too far right");
    }

    @Test
    void failOnSaysWhatIsBadEnough() throws IOException {
        say("check", boats, films, "--fail-on", "note").isDone();
        Path rough = write(folder.resolve("rough.yaml"), "register: 0.6 mm\nuse: {trap: {width: 0.4 mm}}");
        Path less = folder.resolve("less");
        AtTheCounter separated =
                say("separate", boats, "-o", less, "--job", rough).isDone();
        assertThat(lastLine(separated)).startsWith("Does not hold: paper shows from 0.40 mm on (asked: 0.60), first");
        say("check", boats, less, "--job", rough).isDone();
        assertThat(say("check", boats, less, "--job", rough, "--fail-on", "warning")
                        .code())
                .isEqualTo(ExitCode.FINDINGS);
    }

    @Test
    void aFilmThatIsMissingIsNamed() throws IOException {
        Files.delete(middle);
        AtTheCounter check = say("check", boats, films);
        assertThat(check.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(check.out()).contains("(missing film): there is no film for red");
        assertThat(lastLine(check))
                .startsWith("Not ready: 1 film is missing (red). Once that is mended: Pulls may be ");
    }

    @Test
    void filmsOfOtherNamesAreNamedInTheJob() throws IOException {
        Files.move(middle, films.resolve("plate B.svg"));
        Path job = write(folder.resolve("job.yaml"), "films: {red: plate B.svg}");
        say("check", boats, films, "--job", job).isDone();
        Path wrong = write(folder.resolve("wrong.yaml"), "films: {rust: plate B.svg}");
        say("check", boats, films, "--job", wrong)
                .failsWith(ExitCode.COMMAND_AT_FAULT, "wrong.yaml", "'rust'", "inks are: ", "red");
        Path gone = write(folder.resolve("gone.yaml"), "films: {red: plate C.svg}");
        say("check", boats, films, "--job", gone).failsWith(ExitCode.COMMAND_AT_FAULT, "gone.yaml", "plate C.svg");
    }

    @Test
    void namesMayBeWrittenInManyWaysButNotTwice() throws IOException {
        Files.move(middle, films.resolve("RED.svg"));
        say("check", boats, films).isDone();
        Files.copy(films.resolve("RED.svg"), films.resolve("07 Red.svg"));
        say("check", boats, films).failsWith(ExitCode.COMMAND_AT_FAULT, "07 Red.svg, RED.svg", "Say under films");
    }

    @Test
    void twoFilmsOfOneInkAreAFaultWhateverTheirNumbers() throws IOException {
        Files.copy(middle, films.resolve("red.svg"));
        say("check", boats, films).failsWith(ExitCode.COMMAND_AT_FAULT, "02-red.svg, red.svg", "Say under films");
    }

    @Test
    void filesOfNoInkAreSaid() throws IOException {
        Files.copy(middle, films.resolve("12-varnish.svg"));
        AtTheCounter check = say("check", boats, films).isDone();
        assertThat(check.said()).singleElement().asString().contains("12-varnish.svg is no ink's film");
    }

    @Test
    void filmsWithOtherNamesAreKnownByTheirPicturesAndTheJobFileIsTold() throws IOException {
        Files.move(middle, films.resolve("client 2.svg"));
        assertThat(say("check", boats, films).said())
                .singleElement()
                .asString()
                .contains("client 2.svg is no ink's film", "films: {\"red\": \"client 2.svg\"}");
        Path job = write(folder.resolve("as told.yaml"), "films: {\"red\": \"client 2.svg\"}");
        say("check", boats, films, "--job", job).isDone();
    }

    @Test
    void aFolderInWhichNoFilmIsKnownIsAFaultThatSaysWhichLooksLikeWhich() throws IOException {
        for (Path film : filmsIn(films)) {
            String name = String.valueOf(film.getFileName());
            Files.move(film, films.resolve("client " + (char) (name.charAt(1) + 'a' - '0') + ".svg"));
        }
        Files.delete(films.resolve("films.json"));
        say("check", boats, films)
                .failsWith(
                        ExitCode.COMMAND_AT_FAULT,
                        "not one film here is known",
                        "films: {",
                        "\"red\": \"client c.svg\"");
    }

    private static List<Path> filmsIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> String.valueOf(file.getFileName()).matches("0\\d-.*\\.svg"))
                    .toList();
        }
    }

    @Test
    void theMapTakesNoPlaceOfWhatWasRead() throws IOException {
        Path fog = write(folder.resolve("fog.svg"), drawing());
        Path job =
                write(folder.resolve("job.yaml"), "inks: [{name: fog, prints: '#c8d4d8', hiding: 0.3, from: fog.svg}]");
        for (Path read : List.of(boats, middle, fog, job)) {
            String before = Files.readString(read);
            say("check", boats, films, "--job", job, "--map", read, "--replace")
                    .failsWith(ExitCode.COMMAND_AT_FAULT, "--map", "Name another");
            assertThat(read).hasContent(before);
        }
    }

    @Test
    void aFolderWithoutFilmsIsAFault() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        say("check", boats, empty).failsWith(ExitCode.COMMAND_AT_FAULT, "empty", "no films in this folder");
        say("check", boats, middle).failsWith(ExitCode.COMMAND_AT_FAULT, "02-red.svg", "this is a file");
    }

    @Test
    void aFolderThatIsNotThereIsAFault() {
        say("check", boats, folder.resolve("nowhere"))
                .failsWith(ExitCode.COMMAND_AT_FAULT, "nowhere", "no such folder");
    }

    @Test
    void aFilmThatIsNoSvgIsAFault() throws IOException {
        write(middle, "black");
        say("check", boats, films).failsWith(ExitCode.ARTWORK_AT_FAULT, "02-red.svg");
    }

    @Test
    void findingsAsJson() throws IOException {
        spoil("fill=\"#000000\"", "fill=\"#444444\"");
        AtTheCounter check = say("check", boats, films, "--json");
        assertThat(check.code()).isEqualTo(ExitCode.FINDINGS);
        Map<String, Object> result = JSON.std.mapFrom(check.out());
        assertThat(result.keySet()).containsExactly("verdict", "format", "films", "findings");
        assertThat(result.get("films").toString()).contains("{pull=2, ink=red, file=" + middle + "}");
        Map<?, ?> first = (Map<?, ?>) ((List<?>) result.get("findings")).get(0);
        assertThat(first.keySet().stream().map(Object::toString))
                .contains("severity", "rule", "xMm", "yMm", "measured", "limit", "remedy");
        assertThat(first.get("rule")).isEqualTo("grey paint");
    }

    @Test
    void theMapTakesThePlaceOfMapsAlone() throws IOException {
        Path notes = write(folder.resolve("notes.txt"), "emulsion: 20 min");
        say("check", boats, films, "--map", notes).failsWith(ExitCode.COMMAND_AT_FAULT, "notes.txt", "--replace");
        assertThat(notes).hasContent("emulsion: 20 min");
        Path map = films.resolve("faults.svg");
        say("check", boats, films, "--map", map).isDone();
        assertThat(say("check", boats, films, "--map", map).isDone().said())
                .as("a map is no film")
                .isEmpty();
        say("check", boats, films, "--map", notes, "--replace").isDone();
        assertThat(Files.readString(notes)).contains("<svg");
        say("check", boats, films, "--map", boats, "--replace").failsWith(ExitCode.COMMAND_AT_FAULT, "Name another");
    }

    @Test
    void theMapHasARingAtEachPlace() throws Exception {
        spoil("</svg>", "<circle cx=\"90\" cy=\"60\" r=\"1\"/></svg>");
        Path map = folder.resolve("map.svg");
        AtTheCounter check = say("check", boats, films, "--map", map);
        assertThat(check.code()).isEqualTo(ExitCode.FINDINGS);
        Document drawn =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(map.toFile());
        assertThat(drawn.getElementsByTagName("circle").getLength())
                .as("one place, a ring on a paler one; and the legend's")
                .isEqualTo(3);
        assertThat(drawn.getDocumentElement().getTextContent()).contains("ink on sheet");
    }

    private static String lastLine(AtTheCounter check) {
        List<String> lines = check.out().lines().toList();
        return lines.get(lines.size() - 1);
    }

    private void spoil(String what, String with) throws IOException {
        String text = Files.readString(middle);
        assertThat(text).contains(what);
        write(middle, text.replace(what, with));
    }
}
