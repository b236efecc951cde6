package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed while it replaces a set of films by another: what is there then is one of them, or none. Runs after packaging. */
class KilledPackaged {
    private static final Path JAR = Path.of("target/inkstrata.jar").toAbsolutePath();

    @TempDir
    private Path folder;

    @Test
    void killedAtAFewMoments(TestReporter reporter) throws Exception {
        killed(4, reporter);
    }

    @Test
    @Tag("long")
    void killedAtFiftyMoments(TestReporter reporter) throws Exception {
        killed(50, reporter);
    }

    private void killed(int times, TestReporter reporter) throws Exception {
        Path films = folder.resolve("films");
        Path drawing = AtTheCounter.write(folder.resolve("boats.svg"), AtTheCounter.drawing());
        Path other = AtTheCounter.write(
                folder.resolve("other.svg"), AtTheCounter.drawing().replace("#d2603f", "#3d6590"));
        long whole = nanoseconds(other, films);
        Map<String, String> newer = sums(films);
        whole = Math.min(whole, nanoseconds(drawing, films));
        Map<String, String> older = sums(films);
        assertThat(older).isNotEqualTo(newer);
        long seed = 50;
        Random random = new Random(seed);
        Map<String, Integer> found = new TreeMap<>();
        for (int i = 0; i < times; i++) {
            // The end, at which folders change their names, is looked at more often.
            double share = i % 2 == 0 ? random.nextDouble() * 1.1 : 0.8 + 0.3 * random.nextDouble();
            Process run = start(other, films);
            boolean isOver = run.waitFor((long) (share * whole), TimeUnit.NANOSECONDS);
            run.destroyForcibly().waitFor();
            String what = "none";
            if (Files.exists(films)) {
                Map<String, String> there = sums(films);
                assertThat(there).as("kill %d of seed %d", i, seed).isIn(older, newer);
                what = there.equals(older) ? "old" : "new";
            }
            found.merge(what + (isOver ? ", ended before" : ""), 1, Integer::sum);
            assertThat(start(drawing, films).waitFor())
                    .as("the next run tidies up")
                    .isZero();
            assertThat(sums(films)).isEqualTo(older);
            assertThat(hidden()).isEmpty();
        }
        reporter.publishEntry(times + " kills: " + found);
        assertThat(found).containsKey("old");
    }

    /** What a run takes that nobody kills. */
    private long nanoseconds(Path drawing, Path films) throws Exception {
        long began = System.nanoTime();
        assertThat(start(drawing, films).waitFor()).isZero();
        return System.nanoTime() - began;
    }

    private Process start(Path drawing, Path films) throws IOException {
        return new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-jar",
                        JAR.toString(),
                        "separate",
                        drawing.toString(),
                        "-o",
                        films.toString(),
                        "--replace",
                        "--quiet")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
    }

    /** Each file with its checksum, the list of them held against what is there. */
    private static Map<String, String> sums(Path films) throws IOException {
        Map<String, String> sums = new TreeMap<>();
        List<String> files = Trees.files(films);
        for (String file : files) {
            sums.put(file, Checksums.of(films.resolve(file)));
        }
        List<String> listed = new ArrayList<>(Checksums.read(films).keySet());
        listed.add(Checksums.FILE);
        assertThat(files).containsExactlyInAnyOrderElementsOf(listed);
        Checksums.read(films).forEach((file, sum) -> assertThat(sums.get(file)).isEqualTo(sum));
        return sums;
    }

    private List<String> hidden() throws IOException {
        try (var beside = Files.list(folder)) {
            return beside.map(path -> path.getFileName().toString())
                    .filter(name -> name.startsWith("."))
                    .toList();
        }
    }
}
