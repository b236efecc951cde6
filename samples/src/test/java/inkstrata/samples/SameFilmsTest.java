package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same job gives the same films, whoever runs it and wherever the drawing lies. */
class SameFilmsTest {
    @Test
    void aSecondRunInAnotherLocaleWithOtherThreadsWritesTheSameBytes(@TempDir Path folder) throws Exception {
        Sample sample = new Sample("ropeway");
        Map<String, byte[]> here = Press.files(Press.read(sample), JobReader.read(sample.job()), Press.plugins());
        Path one = folder.resolve("one");
        Path other = folder.resolve("other");
        print(sample, one, "-XX:ActiveProcessorCount=1", "-Duser.language=tr", "-Duser.country=TR");
        print(
                sample,
                other,
                "-XX:ActiveProcessorCount=4",
                "-Duser.language=ar",
                "-Duser.country=EG",
                "-Duser.extensions=u-nu-arab",
                "-Duser.timezone=Asia/Kolkata",
                "-Dfile.encoding=ISO-8859-1");
        assertThat(here).hasSizeGreaterThan(5);
        isTheSame(files(one), here);
        isTheSame(files(other), here);
    }

    @Test
    void anotherPlaceOnTheSheetMovesTheFilmsByWholeGridSteps() {
        movesFilms(new Separator(Press.withoutShapers()));
    }

    @Test
    void anotherPlaceOnTheSheetMovesTrapsByWholeGridSteps() {
        movesFilms(new Separator(Press.plugins()));
    }

    private static void movesFilms(Separator separator) {
        int films = 0;
        for (long seed = 1; seed <= 20; seed++) {
            Artwork artwork = GeneratedDrawing.of(seed).artwork();
            int dx = 12_347;
            int dy = -40_001;
            Separation before = separator.separate(artwork, at(120, 120));
            Separation after = separator.separate(artwork, at(120 + Grid.millimetres(dx), 120 + Grid.millimetres(dy)));
            List<Region> expected = before.printed().stream()
                    .map(region -> region.movedBy(dx, dy))
                    .toList();
            films += expected.size();
            assertThat(after.printed()).as("seed %d", seed).isEqualTo(expected);
        }
        assertThat(films).isGreaterThan(20);
    }

    private static Job at(double x, double y) {
        return JobReader.read(
                "",
                String.format(
                        Locale.ROOT,
                        "sheet: {size: 400 x 400 mm}\nartwork: {place: {x: %s mm, y: %s mm}}",
                        BigDecimal.valueOf(x).toPlainString(),
                        BigDecimal.valueOf(y).toPlainString()));
    }

    private static void print(Sample sample, Path folder, String... options) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(options));
        command.addAll(List.of("-Djava.awt.headless=true", "-XX:TieredStopAtLevel=1", "-cp"));
        command.add(System.getProperty("java.class.path"));
        command.addAll(List.of(PressRun.class.getName(), sample.name(), folder.toString()));
        Process process = new ProcessBuilder(command).inheritIO().start();
        assertThat(process.waitFor()).isZero();
    }

    private static Map<String, byte[]> files(Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.toList()) {
                files.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    private static void isTheSame(Map<String, byte[]> found, Map<String, byte[]> expected) {
        assertThat(found).containsOnlyKeys(expected.keySet());
        expected.forEach((name, bytes) -> assertThat(found.get(name)).as(name).isEqualTo(bytes));
    }
}
