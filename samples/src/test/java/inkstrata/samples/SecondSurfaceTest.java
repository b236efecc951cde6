package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.film.FilmReader;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.planar.Region;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same picture on the back of a sheet: what lies over what stays, the order of printing turns, films are mirrored. */
class SecondSurfaceTest {
    @TempDir
    private Path folder;

    private final Map<String, Map<String, List<BigDecimal>>> paths = new TreeMap<>();

    @Test
    void filmsForTheBackAreTheFrontsMirroredToTheGrid() throws IOException {
        Sample sample = new Sample("carafe");
        Artwork artwork = Press.read(sample);
        String front = Files.readString(sample.job()).replace("build: true", "build: false");
        String back =
                front.replace("print: front", "print: back").replace("[lemon, water, both]", "[both, water, lemon]");
        assertThat(back).contains("print: back", "[both, water, lemon]");
        Map<String, Region> one = films(artwork, JobReader.read("front.yaml", front), "front");
        Map<String, Region> other = films(artwork, JobReader.read("back.yaml", back), "back");
        assertThat(one).hasSize(3);
        assertThat(other.keySet()).isEqualTo(one.keySet());
        // Halves of a grid step go up whichever way the film lies.
        one.forEach((ink, region) -> assertThat(region.differenceMm2(other.get(ink)))
                .as(ink)
                .isLessThanOrEqualTo(region.perimeterMm() * Grid.STEP_MM));
        assertThat(paths).hasSize(2);
        assertThat(paths.get("back")).isEqualTo(paths.get("front"));
    }

    private static String data(String picture) {
        return Pattern.compile(" d=\"([^\"]*)\"")
                .matcher(picture)
                .results()
                .map(path -> path.group(1))
                .collect(Collectors.joining());
    }

    /** Numbers of all paths of a picture, as they are seen from the front, by ink. */
    private static Map<String, List<BigDecimal>> seenFromFront(List<String> pictures, BigDecimal mirrored) {
        Map<String, List<BigDecimal>> seen = new TreeMap<>();
        for (String picture : pictures) {
            List<BigDecimal> numbers = new ArrayList<>();
            Matcher token = Pattern.compile("([MLHVQCZ])([^MLHVQCZ\"]*)").matcher(data(picture));
            while (token.find()) {
                int at = token.group(1).equals("V") ? 1 : 0;
                for (String number : token.group(2).strip().split(" +", -1)) {
                    if (!number.isEmpty()) {
                        BigDecimal value = new BigDecimal(number);
                        boolean turns = at % 2 == 0 && mirrored.signum() != 0;
                        numbers.add((turns ? mirrored.subtract(value) : value).stripTrailingZeros());
                        at++;
                    }
                }
            }
            seen.put(picture.replaceAll("(?s).*: ([^<]*)</title>.*", "$1"), numbers);
        }
        return seen;
    }

    /** For each ink its region as read back from its film, seen from the front. */
    private Map<String, Region> films(Artwork artwork, Job job, String name) throws IOException {
        Plugins plugins = Press.plugins();
        Map<String, byte[]> files = Press.files(artwork, job, plugins);
        Separation separation = new Separator(plugins).separate(artwork, job);
        FilmReader reader =
                new FilmReader(separation.table().sheet(), separation.artwork().frame());
        List<Ink> inks = new ArrayList<>();
        separation.plan().pulls().forEach(pull -> inks.add(pull.ink()));
        List<String> svgs = files.keySet().stream()
                .filter(file -> file.endsWith(".svg") && !file.equals("overview.svg"))
                .sorted()
                .toList();
        Map<String, Region> regions = new TreeMap<>();
        BigDecimal width = BigDecimal.valueOf(separation.table().sheet().size().width());
        paths.put(
                name,
                seenFromFront(
                        svgs.stream()
                                .map(svg -> new String(files.get(svg), StandardCharsets.UTF_8))
                                .map(svg -> svg.substring(0, svg.indexOf("<g id=\"register\"")))
                                .toList(),
                        name.equals("back") ? width : BigDecimal.ZERO));
        for (int pull = 0; pull < inks.size(); pull++) {
            Path file = folder.resolve(name + pull + ".svg");
            Files.write(file, files.get(svgs.get(pull)));
            String text = Files.readString(file, StandardCharsets.UTF_8);
            assertThat(text.contains("mirrored for the back")).isEqualTo(name.equals("back"));
            regions.put(inks.get(pull).name(), reader.read(file, inks.get(pull)).picture());
        }
        return Collections.unmodifiableMap(regions);
    }
}
