package inkstrata.command;

import static inkstrata.command.AtTheCounter.drawing;
import static inkstrata.command.AtTheCounter.say;
import static inkstrata.command.AtTheCounter.write;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.jr.ob.JSON;
import inkstrata.report.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Results of all verbs, their schemas and the page that describes them agree. */
class ResultsTest {
    private static final Path PAGE = Path.of("docs/json.md");

    @TempDir
    private Path folder;

    private Path boats;

    @BeforeEach
    void aDrawing() throws IOException {
        boats = write(folder.resolve("boats.svg"), drawing());
    }

    @Test
    void everyVerbKeepsItsSchema() throws IOException {
        Path films = folder.resolve("films");
        keeps("read", say("read", boats, "--json").isDone());
        keeps("plan", say("plan", boats, "--json").isDone());
        keeps("separate", say("separate", boats, "-o", films, "--json").isDone());
        keeps("plugins", say("plugins", "--json").isDone());
        AtTheCounter right = say("check", boats, films, "--json").isDone();
        keeps("check", right);
        assertThat(JSON.std.mapFrom(right.out()).keySet().iterator().next()).isEqualTo("verdict");
        Files.delete(films.resolve("02-red.svg"));
        AtTheCounter missing = say("check", boats, films, "--json");
        keeps("check", missing);
        assertThat(missing.code()).isEqualTo(ExitCode.FINDINGS);
        Map<?, ?> verdict = (Map<?, ?>) JSON.std.mapFrom(missing.out()).get("verdict");
        assertThat(verdict.get("answer")).isEqualTo("not ready");
        assertThat((String) verdict.get("text")).startsWith("Not ready: 1 film is missing (red)");
    }

    @Test
    void warningsHaveTheirNumbers() throws IOException {
        Path job = write(folder.resolve("job.yaml"), "register: 0.6 mm\nuse: {trap: {width: 0.4 mm}}");
        AtTheCounter plan = say("plan", boats, "--job", job, "--json").isDone();
        keeps("plan", plan);
        Map<String, Object> result = JSON.std.mapFrom(plan.out());
        assertThat(((Map<?, ?>) result.get("verdict")).get("answer")).isEqualTo("does not hold");
        Map<?, ?> first = (Map<?, ?>) ((List<?>) result.get("findings")).get(0);
        assertThat(first.get("rule")).isEqualTo("register");
        assertThat(((Number) first.get("limitMm")).doubleValue()).isEqualTo(0.6);
        assertThat(((Number) first.get("measuredMm")).doubleValue()).isBetween(0.4, 0.41);
    }

    /** Bricks 0.001 mm apart and two that are 0.08 mm apart, 12 mm long: in the picture's coordinates, and on the sheet. */
    @Test
    void seamsAreData() throws IOException {
        Path bricks = write(
                folder.resolve("bricks.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='40mm' height='20mm' viewBox='0 0 40 20'>"
                        + "<rect x='7.827' y='4' width='12.439' height='12' fill='#b41414'/>"
                        + "<rect x='20.267' y='4' width='5' height='12' fill='#fadc3c'/>"
                        + "<rect x='25.347' y='4' width='5' height='12' fill='#b41414'/></svg>");
        Path job = write(
                folder.resolve("job.yaml"), "sheet: {size: 200 x 100 mm}\nartwork: {place: {x: 50 mm, y: 30 mm}}");
        AtTheCounter read = say("read", bricks, "--job", job, "--json").isDone();
        keeps("read", read);
        List<?> places = places(read, 20.2665, 25.307, 4);
        assertThat(((Map<?, ?>) places.get(0)).get("closed")).isEqualTo(true);
        assertThat(List.of(((Map<?, ?>) places.get(0)).get("one"), ((Map<?, ?>) places.get(0)).get("other")))
                .isEqualTo(List.of("#fadc3c", "#b41414"));
        assertThat(((Map<?, ?>) places.get(1)).get("closed")).isEqualTo(false);
        AtTheCounter plan = say("plan", bricks, "--job", job, "--json").isDone();
        keeps("plan", plan);
        places(plan, 70.2665, 75.307, 34);
        assertThat(say("read", bricks, "--job", job).isDone().out()).contains("from the picture's top left corner");
        assertThat(say("plan", bricks, "--job", job).isDone().out()).contains("mm on the sheet");
    }

    private static List<?> places(AtTheCounter answer, double closedAt, double keptAt, double top) throws IOException {
        Map<?, ?> seams = (Map<?, ?>) JSON.std.mapFrom(answer.out()).get("seams");
        tally(seams.get("closed"), 0.001);
        tally(seams.get("kept"), 0.08);
        List<?> places = (List<?>) seams.get("places");
        assertThat(places).hasSize(2);
        for (int i = 0; i < 2; i++) {
            Map<?, ?> place = (Map<?, ?>) places.get(i);
            assertThat(number(place, "xMm")).isCloseTo(i == 0 ? closedAt : keptAt, within(0.001));
            assertThat(number(place, "yMm")).isBetween(top, top + 12);
            assertThat(place.get("shows")).isNull();
        }
        return places;
    }

    private static void tally(Object tally, double widest) {
        assertThat(((Map<?, ?>) tally).get("count")).isEqualTo(1);
        assertThat(number((Map<?, ?>) tally, "lengthMm")).isCloseTo(12, within(0.001));
        assertThat(number((Map<?, ?>) tally, "widestMm")).isCloseTo(widest, within(1e-5));
    }

    private static double number(Map<?, ?> map, String key) {
        return ((Number) map.get(key)).doubleValue();
    }

    @Test
    void faultsAreJsonToo() throws IOException {
        Path broken = write(
                folder.resolve("broken.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'>\n<image id='sea' width='9' height='9'/></svg>");
        Map<?, ?> artwork = fault(say("read", broken, "--json"), ExitCode.ARTWORK_AT_FAULT, "artwork");
        assertThat(artwork.get("file")).isEqualTo("broken.svg");
        assertThat(artwork.get("line")).isEqualTo(2);
        assertThat(artwork.get("element")).isEqualTo("<image id=\"sea\">");
        Path job = write(folder.resolve("job.yaml"), "title: x\nregistre: 1 mm");
        Map<?, ?> key = fault(say("plan", boats, "--json", "--job", job), ExitCode.COMMAND_AT_FAULT, "job");
        assertThat(key.get("file")).isEqualTo("job.yaml");
        assertThat(key.get("line")).isEqualTo(2);
        fault(say("plan", "--json", boats, "--inkz", "3"), ExitCode.COMMAND_AT_FAULT, "command");
        fault(say("read", "--json", folder.resolve("none.svg")), ExitCode.COMMAND_AT_FAULT, "command");
        fault(
                say("plan", boats, "--json", "--plugins", StrangersJar.failing(folder.resolve("jars"))),
                ExitCode.OUR_FAULT,
                "program");
        assertThat(say("read", broken).out()).isEmpty();
    }

    private static Map<?, ?> fault(AtTheCounter answer, int code, String kind) throws IOException {
        keeps("fault", answer);
        assertThat(answer.code()).isEqualTo(code);
        Map<?, ?> fault = (Map<?, ?>) JSON.std.mapFrom(answer.out()).get("fault");
        assertThat(fault.get("exitCode")).isEqualTo(code);
        assertThat(fault.get("kind")).isEqualTo(kind);
        assertThat(answer.err()).contains("inkstrata: " + fault.get("message"));
        return fault;
    }

    private static void keeps(String verb, AtTheCounter answer) throws IOException {
        assertThat(Schemas.faults(schema(verb), answer.out())).as(answer.out()).isEmpty();
        Map<String, Object> result = JSON.std.mapFrom(answer.out());
        result.put("another", 1);
        assertThat(Schemas.faults(schema(verb), JSON.std.asString(result)))
                .as("%s: no other key is known", verb)
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"read", "plan", "separate", "check", "plugins", "fault"})
    void thePageHasTheKeysOfEverySchema(String verb) throws IOException {
        assertThat(Schemas.described(PAGE, "## `" + verb + "`")).isEqualTo(Schemas.keys(schema(verb)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"verdict", "finding", "note", "seams", "seam", "decision", "artwork", "sheet", "pull", "stack"})
    void thePageHasTheKeysOfWhatIsInCommon(String object) throws IOException {
        assertThat(Schemas.described(PAGE, "## `" + object + "`")).isEqualTo(Schemas.commonKeys(object));
    }

    private static String schema(String verb) {
        return "/inkstrata/command/" + verb + ".schema.json";
    }
}
