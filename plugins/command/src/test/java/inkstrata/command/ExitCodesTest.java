package inkstrata.command;

import static inkstrata.command.AtTheCounter.drawing;
import static inkstrata.command.AtTheCounter.say;
import static inkstrata.command.AtTheCounter.write;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every exit code, and one line that says what, where and how to mend it. */
class ExitCodesTest {
    @TempDir
    private Path folder;

    private Path boats;

    @BeforeEach
    void aDrawing() throws IOException {
        boats = write(folder.resolve("boats.svg"), drawing());
    }

    @Test
    void zeroWhenDone() {
        say("separate", boats, "-o", folder.resolve("films")).isDone();
    }

    @Test
    void oneWhereSomethingWasFoundThatIsBadEnough() throws IOException {
        Path jars = StrangersJar.finding(folder.resolve("jars"));
        AtTheCounter error = say("separate", boats, "-o", folder.resolve("films"), "--plugins", jars);
        assertThat(error.code()).as("a warning is not an error").isEqualTo(ExitCode.DONE);
        assertThat(error.out()).contains("warning at 1.0, 2.0 mm (gap): 0.1 mm, limit 0.2 mm. Draw it wider.");
        AtTheCounter warning = say(
                "separate",
                boats,
                "-o",
                folder.resolve("films"),
                "--plugins",
                jars,
                "--fail-on",
                "warning",
                "--replace");
        assertThat(warning.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(folder.resolve("films/plan.json"))
                .as("films are written all the same")
                .exists();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    <svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'> | drawing.svg:1
                    <html/> | drawing.svg:1
                    not xml | drawing.svg:1
                    <svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><image id='photo' width='5' height='5' href='a.png'/></svg> | drawing.svg:1 <image id="photo">
                    """)
    void twoWhereTheDrawingIsAtFault(String text, String where) throws IOException {
        Path drawing = write(folder.resolve("drawing.svg"), text);
        say("read", drawing).failsWith(ExitCode.ARTWORK_AT_FAULT, where);
        say("plan", drawing).failsWith(ExitCode.ARTWORK_AT_FAULT, where);
        say("separate", drawing, "-o", folder.resolve("films")).failsWith(ExitCode.ARTWORK_AT_FAULT, where);
        assertThat(folder.resolve("films")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    trup: 1 | boats.yaml:1:
                    use: {trep: {width: 1 mm}} | 'trep'
                    use: {trap: {wide: 1 mm}} | 'wide'
                    use: {trap: {width: 1 parsec}} | parsec
                    order: [sand] | 'sand'
                    sheet: {size: 10 x 10 mm} | does not lie on the sheet
                    title: [ | boats.yaml:
                    """)
    void threeWhereTheJobFileIsAtFault(String text, String what) throws IOException {
        write(folder.resolve("boats.yaml"), text);
        say("separate", boats, "-o", folder.resolve("films")).failsWith(ExitCode.COMMAND_AT_FAULT, "boats.yaml", what);
        assertThat(folder.resolve("films")).doesNotExist();
    }

    @Test
    void threeWhereTheCommandIsAtFault() {
        say().failsWith(ExitCode.COMMAND_AT_FAULT, "verb is missing", "--help");
        say("paint").failsWith(ExitCode.COMMAND_AT_FAULT, "paint", "--help");
        say("read").failsWith(ExitCode.COMMAND_AT_FAULT, "ARTWORK.svg", "inkstrata read --help");
        say("read", boats, "--colour").failsWith(ExitCode.COMMAND_AT_FAULT, "--colour");
        say("separate", boats).failsWith(ExitCode.COMMAND_AT_FAULT, "--output");
        say("read", folder.resolve("none.svg")).failsWith(ExitCode.COMMAND_AT_FAULT, "no such drawing");
        say("read", folder).failsWith(ExitCode.COMMAND_AT_FAULT, "no such drawing");
        say("read", boats, "--job", folder.resolve("none.yaml"))
                .failsWith(ExitCode.COMMAND_AT_FAULT, "no such job file");
        say("plugins", "--plugins", folder.resolve("none")).failsWith(ExitCode.COMMAND_AT_FAULT, "no such folder");
        say("separate", boats, "-o", boats).failsWith(ExitCode.COMMAND_AT_FAULT, "not a folder");
        say("separate", boats, "-o", "/").failsWith(ExitCode.COMMAND_AT_FAULT, "folder of their own");
    }

    @Test
    void whatWasMisspeltIsTakenForWhatWasMeant() {
        says("There is no verb 'seperate'. Did you mean 'separate'? See inkstrata --help.", "seperate", boats);
        says("There is no verb 'frob'. Known here are read, plan, ", "frob");
        says("There is no verb 'pln'. Did you mean 'plan'? See", "help", "pln");
        says("There is no option '--widht' of read. Did you mean '--width'? See", "read", boats, "--widht", "3 mm");
        says("There is no option '--ouput' of separate. Did you mean '--output'?", "separate", boats, "--ouput", "x");
        says("There is no option '--replace' of plan. It belongs to separate and check.", "plan", boats, "--replace");
        says("--fail-on: 'warnig' is none of note, warning, error. Did", "plan", boats, "--fail-on", "warnig");
        says("--inks: 'five' is not a whole number. See", "plan", boats, "--inks", "five");
        says("--width needs a LENGTH. See", "read", boats, "--width");
        says("'boats' is one word too many.", "read", boats, "boats");
    }

    private static void says(String what, Object... words) {
        AtTheCounter answer = say(words);
        answer.failsWith(ExitCode.COMMAND_AT_FAULT, what);
        assertThat(answer.err()).startsWith("inkstrata: " + what);
    }

    /** What separate would refuse after minutes is refused before anything runs. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    use: {positive: {formats: pfd}} | Did you mean 'pdf'?
                    use: {positive: {resolution: 1440.5}} | not whole
                    use: {positive: {tiles: A9x}} | positive.tiles
                    use: {positive: {date: 2026, tiles: 20 x 20 mm}} | too small
                    register: 6 mm | a trap as wide as the register
                    use: {trap: {corners: rond}} | Did you mean 'round'?
                    use: {trip: {corners: round}} | Did you mean 'trap'?
                    use: {underbase: {on: true}} | 'on' of underbase is now 'enabled'. Write enabled instead.
                    use: {reduction: {on: true}} | 'on' of reduction is now 'enabled'. Write enabled instead.
                    """)
    void planRefusesWhatSeparateRefuses(String text, String what) throws IOException {
        write(folder.resolve("boats.yaml"), text);
        say("plan", boats).failsWith(ExitCode.COMMAND_AT_FAULT, "boats.yaml", what);
        say("separate", boats, "-o", folder.resolve("films")).failsWith(ExitCode.COMMAND_AT_FAULT, "boats.yaml", what);
    }

    @ParameterizedTest
    @ValueSource(strings = {"wide", "0 mm", "-3 mm", "3", "1e999 mm"})
    void threeWhereAWidthIsNone(String width) {
        say("read", boats, "--width", width).failsWith(ExitCode.COMMAND_AT_FAULT, "--width");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-72", "NaN", "Infinity", "many"})
    void threeWhereUnitsAreNone(String units) {
        say("read", boats, "--units-per-inch=" + units).failsWith(ExitCode.COMMAND_AT_FAULT, "--units-per-inch");
    }

    /** {@code read} asks no plug-in anything, but a word that is wrong in the job file is wrong for every verb. */
    @Test
    void threeWhereTheJobNamesAPlugInThatIsNotThere() throws IOException {
        write(folder.resolve("boats.yaml"), "use:\n  trapp: {width: 0.3 mm}\n");
        for (String verb : new String[] {"read", "plan"}) {
            say(verb, boats).failsWith(ExitCode.COMMAND_AT_FAULT, "use names the plug-in 'trapp'");
        }
    }

    @Test
    void threeWhereAJarIsNone() throws IOException {
        Path jars = Files.createDirectory(folder.resolve("jars"));
        write(jars.resolve("bad.jar"), "nothing of the kind");
        say("plugins", "--plugins", jars).failsWith(ExitCode.COMMAND_AT_FAULT, "bad.jar: this is not a jar");
    }

    @Test
    void threeWhereASheetIsLargerThanTheGrid() throws IOException {
        say("plan", boats, "--width", "8380 mm").failsWith(ExitCode.COMMAND_AT_FAULT, "larger than 8388 mm");
        write(folder.resolve("boats.yaml"), "sheet: {size: 9000 x 9000 mm}");
        say("plan", boats).failsWith(ExitCode.COMMAND_AT_FAULT, "boats.yaml", "larger than 8388 mm");
    }

    @Test
    void threeWhereAJobFileIsNotUtf8() throws IOException {
        Files.write(folder.resolve("boats.yaml"), new byte[] {'t', ':', ' ', (byte) 0xf6});
        say("plan", boats).failsWith(ExitCode.COMMAND_AT_FAULT, "boats.yaml", "UTF-8");
    }

    @Test
    void fourWhereAProgramIsAtFault() throws IOException {
        Path jars = StrangersJar.failing(folder.resolve("jars"));
        say("separate", boats, "-o", folder.resolve("films"), "--plugins", jars)
                .failsWith(ExitCode.OUR_FAULT, "fault of the program", "the ladder fell over", "--debug");
        assertThat(folder.resolve("films")).doesNotExist();
        AtTheCounter debug = say("separate", boats, "-o", folder.resolve("films"), "--plugins", jars, "--debug");
        assertThat(debug.code()).isEqualTo(ExitCode.OUR_FAULT);
        assertThat(debug.err()).contains("\tat stranger.Stranger");
    }

    @Test
    void nothingIsLeftLyingAboutAfterAFault() throws IOException {
        Path jars = StrangersJar.failing(folder.resolve("jars"));
        say("separate", boats, "-o", folder.resolve("deep/er/films"), "--plugins", jars);
        try (var files = Files.list(folder.resolve("deep/er"))) {
            assertThat(files).isEmpty();
        }
    }
}
