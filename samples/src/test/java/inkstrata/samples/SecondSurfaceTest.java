package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.film.FilmReader;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.plan.Ink;
import inkstrata.planar.Region;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same picture on the back of a sheet: what lies over what stays, the order of printing turns, films are mirrored. */
class SecondSurfaceTest {
    @TempDir
    private Path folder;

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
        assertThat(other).isEqualTo(one);
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
                .filter(file -> file.endsWith(".svg"))
                .sorted()
                .toList();
        Map<String, Region> regions = new TreeMap<>();
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
