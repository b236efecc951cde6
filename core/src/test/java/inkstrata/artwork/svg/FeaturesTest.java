package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.ArtworkException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * One small drawing for each thing that is read, pixel by pixel beside pictures of renderers that are not ours: those
 * committed beside the drawings, and jsvg's. How they came about stands in {@code features/README.md}.
 */
class FeaturesTest {
    private static final int WIDTH = 120;

    @Test
    void eachFeatureLooksAsExpected() {
        assertSame(verdicts(FeaturesTest::ours), Set.of());
    }

    /** Where jsvg draws another picture stands in {@code differ.tsv}, with the sentence that says why it is not right. */
    @Test
    void jsvgDrawsTheSameButWhereTheStandardDecides() throws IOException {
        assertSame(verdicts(FeaturesTest::jsvg), otherwise("jsvg"));
    }

    private static void assertSame(Map<String, String> verdicts, Set<String> otherwise) {
        assertThat(verdicts).hasSizeGreaterThanOrEqualTo(400);
        Map<String, String> differ = new TreeMap<>(verdicts);
        differ.values().removeIf(PixelVerdict.SAME::equals);
        Set<String> listed = new TreeSet<>(otherwise);
        listed.removeAll(differ.keySet());
        assertThat(listed).as("listed as drawn otherwise, though they are not").isEmpty();
        differ.keySet().removeAll(otherwise);
        assertThat(differ).as("features that look otherwise").isEmpty();
    }

    @FunctionalInterface
    private interface Drawn {
        SmoothPicture picture(Path svg) throws IOException, Verdict.OtherPicture.CannotRead;
    }

    private static SmoothPicture ours(Path svg) throws IOException {
        try (InputStream stream = Files.newInputStream(svg)) {
            return SmoothPicture.ofOurs(svg.getFileName().toString(), stream, WIDTH);
        }
    }

    /** Where jsvg would never come to an end it is not asked: dashes whose pathLength is 0 or less. */
    private static SmoothPicture jsvg(Path svg) throws MalformedURLException, Verdict.OtherPicture.CannotRead {
        if (name(svg).matches("dashes/pathlength-(zero|negative)-counts-not")) {
            throw new Verdict.OtherPicture.CannotRead();
        }
        return SmoothPicture.ofJsvg(svg.toUri().toURL(), WIDTH);
    }

    private static Map<String, String> verdicts(Drawn drawn) {
        return drawings().parallelStream()
                .collect(Collectors.toMap(
                        FeaturesTest::name, svg -> verdict(drawn, svg), (one, two) -> one, TreeMap::new));
    }

    private static String verdict(Drawn drawn, Path svg) {
        try {
            return PixelVerdict.of(drawn.picture(svg), expected(svg));
        } catch (ArtworkException refused) {
            return refused.getMessage();
        } catch (Verdict.OtherPicture.CannotRead unread) {
            return unread.getMessage();
        } catch (IllegalArgumentException thrown) {
            return "cannot be drawn: " + thrown.getMessage();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    /** The picture beside it; that of text, whose fonts are this machine's, is drawn here and now by jsvg. */
    private static SmoothPicture expected(Path svg) throws IOException, Verdict.OtherPicture.CannotRead {
        Path png = beside(svg, ".png");
        if (Files.exists(png)) {
            return SmoothPicture.ofPng(png.toUri().toURL());
        }
        Path plain = beside(svg, ".plain.svg");
        return jsvg(Files.exists(plain) ? plain : svg);
    }

    private static Path beside(Path svg, String ending) {
        return svg.resolveSibling(svg.getFileName().toString().replace(".svg", ending));
    }

    private static String name(Path svg) {
        return svg.getName(svg.getNameCount() - 2) + "/"
                + svg.getFileName().toString().replace(".svg", "");
    }

    private static List<Path> drawings() {
        try (Stream<Path> files = Files.walk(folder())) {
            return files.filter(file -> file.toString().endsWith(".svg"))
                    .filter(file -> !file.toString().endsWith(".plain.svg"))
                    .sorted()
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static Set<String> otherwise(String renderer) throws IOException {
        return Files.readString(folder().resolve("differ.tsv"), StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .map(line -> line.split("\t", -1))
                .filter(cells -> List.of(cells[1].split(" ", -1)).contains(renderer))
                .map(cells -> cells[0])
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Path folder() {
        URL folder = FeaturesTest.class.getResource("/inkstrata/artwork/features");
        try {
            return Path.of(folder.toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
