package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.command.Main;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.planar.SeamDrawings;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
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

    /** Strips of 20 µm between shapes are closed alike wherever the drawing lies. */
    @Test
    void anotherPlaceOnTheSheetMovesFilmsWhoseStripsWereClosed() {
        for (String kind : SeamDrawings.KINDS) {
            Artwork artwork = SeamDrawings.of(kind, 2, 0.02, 3);
            movesFilms(new Separator(Press.plugins()), artwork, kind);
        }
    }

    /** Every border is a strip. */
    @Test
    @Tag("long")
    void stripsAreClosedAlikeByAnyNumberOfThreads(@TempDir Path folder) throws Exception {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='102mm' height='102mm' viewBox='0 0 102 102'>");
        for (int i = 0; i < 400; i++) {
            int row = i / 20;
            int column = i % 20;
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d='M%1$.3f %2$.3fq2.5 %3$.2f 5 0v5q-2.5 %3$.2f -5 0z' fill='%4$s'/>",
                    1 + column * 5.02,
                    1 + row * 5.02,
                    0.6 * (1 - i % 3),
                    List.of("#b4512d", "#d9a441", "#3c5a99", "#cfe8d5").get((i + row * 7) % 4)));
        }
        Path drawing = Files.writeString(folder.resolve("strips.svg"), svg + "</svg>");
        Map<String, byte[]> one = separated(drawing, folder.resolve("one"), 1);
        assertThat(new String(one.get("plan.json"), StandardCharsets.UTF_8)).contains("\"seams\"");
        isTheSame(separated(drawing, folder.resolve("two"), 2), one);
        isTheSame(separated(drawing, folder.resolve("eight"), 8), one);
    }

    private static Map<String, byte[]> separated(Path drawing, Path folder, int threads) throws Exception {
        run(
                List.of("-XX:ActiveProcessorCount=" + threads),
                Main.class,
                "separate",
                drawing.toString(),
                "-o",
                folder.toString());
        return files(folder);
    }

    private static void movesFilms(Separator separator) {
        int films = 0;
        for (long seed = 1; seed <= 20; seed++) {
            films += movesFilms(separator, GeneratedDrawing.of(seed).artwork(), "seed " + seed);
        }
        assertThat(films).isGreaterThan(20);
    }

    private static int movesFilms(Separator separator, Artwork artwork, String name) {
        int dx = 12_347;
        int dy = -40_001;
        Separation before = separator.separate(artwork, at(120, 120));
        Separation after = separator.separate(artwork, at(120 + Grid.millimetres(dx), 120 + Grid.millimetres(dy)));
        List<Region> expected =
                before.printed().stream().map(region -> region.movedBy(dx, dy)).toList();
        assertThat(expected).isNotEmpty();
        assertThat(after.printed()).as(name).isEqualTo(expected);
        return expected.size();
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
        run(List.of(options), PressRun.class, sample.name(), folder.toString());
    }

    private static void run(List<String> options, Class<?> main, String... arguments) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-Djava.awt.headless=true", "-XX:TieredStopAtLevel=1", "-cp"));
        command.add(System.getProperty("java.class.path"));
        command.add(main.getName());
        command.addAll(List.of(arguments));
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
