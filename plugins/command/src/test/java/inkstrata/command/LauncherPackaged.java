package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher and the jar as somebody gets them. Runs after packaging. */
class LauncherPackaged {
    private static final Path LAUNCHER = Path.of("inkstrata").toAbsolutePath();
    private static final Path JAR = Path.of("target/inkstrata.jar");

    @TempDir
    private Path folder;

    @Test
    void theJarIsSmall() throws IOException {
        assertThat(Files.size(JAR)).isLessThan(20_000_000L);
    }

    @Test
    void separates() throws Exception {
        Path drawing = AtTheCounter.write(folder.resolve("two boats.svg"), AtTheCounter.drawing());
        AtTheCounter answer = run(LAUNCHER, "separate", drawing, "-o", folder.resolve("my films"));
        assertThat(answer.code()).as(answer.err()).isZero();
        List<String> lines = answer.out().lines().toList();
        assertThat(lines).hasSize(8);
        assertThat(lines.get(6)).endsWith("plan.json");
        assertThat(lines.get(7)).startsWith("Pulls may be 0.40 mm off before paper shows");
        // On a busy machine it says after two seconds what it is doing.
        assertThat(answer.err().lines().filter(line -> !line.matches("inkstrata: .* \\(\\d+ s\\)")))
                .isEmpty();
    }

    @Test
    void findsItsJarThroughLinks() throws Exception {
        Path first = Files.createSymbolicLink(folder.resolve("first"), LAUNCHER);
        Path second = Files.createSymbolicLink(
                Files.createDirectory(folder.resolve("bin")).resolve("second"), first);
        assertThat(run(second, "--version").out()).startsWith("inkstrata ");
    }

    @Test
    void findsThePluginsInTheJar() throws Exception {
        assertThat(run(LAUNCHER, "plugins").out())
                .contains("knockout (planner, inkstrata.jar)", "positive (writer, inkstrata.jar)");
    }

    @Test
    void passesExitCodesOn() throws Exception {
        assertThat(run(LAUNCHER, "read", folder.resolve("none.svg")).code()).isEqualTo(ExitCode.COMMAND_AT_FAULT);
        Path broken = AtTheCounter.write(folder.resolve("broken.svg"), "<svg");
        assertThat(run(LAUNCHER, "read", broken).code()).isEqualTo(ExitCode.ARTWORK_AT_FAULT);
    }

    private AtTheCounter run(Object... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        for (Object word : words) {
            command.add(word.toString());
        }
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        return new AtTheCounter(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
