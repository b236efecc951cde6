package inkstrata.command;

import static inkstrata.command.AtTheCounter.drawing;
import static inkstrata.command.AtTheCounter.say;
import static inkstrata.command.AtTheCounter.write;
import static org.assertj.core.api.Assertions.assertThat;

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
    @ValueSource(strings = {"verdict", "finding", "note", "decision", "artwork", "sheet", "pull", "stack"})
    void thePageHasTheKeysOfWhatIsInCommon(String object) throws IOException {
        assertThat(Schemas.described(PAGE, "## `" + object + "`")).isEqualTo(Schemas.commonKeys(object));
    }

    private static String schema(String verb) {
        return "/inkstrata/command/" + verb + ".schema.json";
    }
}
