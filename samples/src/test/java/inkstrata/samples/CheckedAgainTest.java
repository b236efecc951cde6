package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.film.Film;
import inkstrata.film.FilmReader;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Finding;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Films of the samples, read back from their files with all their curves: nothing is wrong with them, and they hold as far as was said. */
class CheckedAgainTest {
    @TempDir
    private Path folder;

    static List<Sample> everySample() {
        return Sample.all();
    }

    @ParameterizedTest
    @MethodSource("everySample")
    void ourOwnFilmsAreRightAndHoldAsFar(Sample sample) throws IOException {
        Plugins plugins = Press.plugins();
        Job job = JobReader.read(sample.job());
        Separator separator = new Separator(plugins);
        Separation separation = separator.separate(Press.read(sample), job);
        FilmReader reader =
                new FilmReader(separation.table().sheet(), separation.artwork().frame());
        List<Optional<Film>> films = new ArrayList<>();
        for (Map.Entry<String, byte[]> file :
                Press.files(separation, job, plugins).entrySet()) {
            if (file.getKey().matches("\\d.*\\.svg")) {
                Path path = Files.write(folder.resolve(file.getKey()), file.getValue());
                films.add(Optional.of(reader.read(
                        path, separation.plan().pulls().get(films.size()).ink())));
            }
        }
        Inspection said = separator.inspect(separation, job);
        Inspection found = separator.compare(separation, films, job);
        assertThat(found.findings()).noneMatch(finding -> finding.severity() == Finding.Severity.ERROR);
        assertThat(ofRegister(found)).isEqualTo(ofRegister(said));
        assertThat(found.verdict()).isEqualTo(said.verdict());
    }

    private static List<Finding> ofRegister(Inspection inspection) {
        return inspection.findings().stream()
                .filter(finding -> finding.rule().startsWith("register"))
                .toList();
    }
}
