package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * All flags of flag-icons 7.5.0 and all emoji of @twemoji/svg 15.0.0 beside the pictures of resvg-js 2.6.2, a renderer in
 * another language. Needs node and npm.
 */
@Tag("long")
class OtherRendererTest {
    /**
     * Where resvg draws another picture, and what differs most.
     *
     * <ul>
     *   <li>us, um: the stars are markers on a path with neither fill nor stroke, which resvg leaves out. SVG 2, section
     *       13.7 draws markers whatever the paint of their path. By hand: 50 stars of 250.6033 square units are 0.0408 of
     *       the canvas of us.svg, and librsvg and jsvg draw them.
     *   <li>tj: seven stars with coordinates of 300,000 units under a scale of 0.00005, which resvg leaves out. By hand: a
     *       pentagram of radius 17.611 has 1.12257 x 17.611² square units, seven of them are 0.00793 of the canvas of
     *       4x3/tj.svg, and jsvg draws them.
     * </ul>
     */
    private static final Map<String, String> RESVG_IS_WRONG =
            Map.of("us", "#ffffff +0.0", "um", "#ffffff +0.0", "tj", "#f8c300 +0.0");

    private static Resvg resvg;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        resvg = Resvg.start();
    }

    @AfterAll
    static void stop() {
        resvg.close();
    }

    @Test
    void flagsLookAsResvgDrawsThem(@TempDir Path folder) throws IOException {
        for (String name : Flags.names()) {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            try (InputStream flag = Flags.open(name)) {
                Files.copy(flag, file);
            }
        }
        FlagsTest.check(verdicts(folder, Flags.names()), RESVG_IS_WRONG);
    }

    /**
     * Drawings of our own, where resvg draws another picture, and why ours is right.
     *
     * <ul>
     *   <li>alpha-mask: mask-type is alpha, so the grey of the mask's shapes does not count (CSS Masking 1, section 7.6;
     *       jsvg agrees).
     *   <li>markers: the shorthand {@code marker} in a style (SVG 2, section 13.7.3; jsvg and librsvg draw those dots).
     *   <li>strokes: vector-effect non-scaling-stroke (SVG 2, section 8.13; jsvg agrees).
     *   <li>switch-css: {@code !important} in a sheet outweighs the style attribute (CSS Cascade 4, section 6.1; librsvg
     *       agrees).
     *   <li>text: resvg is asked for a picture without the fonts of this machine; jsvg agrees.
     *   <li>transforms: CSS transform and transform-origin in a style (CSS Transforms 1, sections 5 and 8).
     * </ul>
     */
    @Test
    void drawingsLookAsResvgDrawsThem() throws IOException, URISyntaxException {
        Map<String, Path> files = new TreeMap<>();
        for (String name : Drawings.NAMES) {
            files.put(name, Path.of(Drawings.url(name).toURI()));
        }
        Drawings.check(
                name -> width -> resvg.areas(files.get(name), width),
                Map.of(
                        "alpha-mask", "#e56b6f +0.0",
                        "markers", "#bc4749 +0.0",
                        "strokes", "#",
                        "switch-css", "#",
                        "text", "#fefae0 -0.0",
                        "transforms", "#ffffff -0.0"));
    }

    @Test
    void emojiLookAsResvgDrawsThem() throws IOException {
        List<String> names;
        try (Stream<Path> files = Files.list(Resvg.emoji())) {
            names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".svg"))
                    .sorted()
                    .toList();
        }
        assertThat(names).hasSize(3720);
        assertThat(verdicts(Resvg.emoji(), names))
                .allSatisfy((name, verdict) -> assertThat(verdict).as(name).isEqualTo(Verdict.SAME));
    }

    @Test
    void emojiShowTheirPublishedAreas() throws IOException {
        Map<String, Map<String, Double>> published = PublishedAreas.of("twemoji");
        assertThat(published).hasSize(26);
        for (Map.Entry<String, Map<String, Double>> emoji : published.entrySet()) {
            Path file = Resvg.emoji().resolve(emoji.getKey());
            PublishedAreas.check(SvgReader.read(file, VisibleAreas.SIZE), emoji.getValue());
        }
    }

    private static Map<String, String> verdicts(Path folder, List<String> names) throws IOException {
        Map<String, String> verdicts = new TreeMap<>();
        for (String name : names) {
            Path file = folder.resolve(name);
            verdicts.put(name, Verdict.of(name, Files.newInputStream(file), width -> resvg.areas(file, width)));
        }
        return verdicts;
    }
}
