package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Drawings of our own, each written in the manner of one kind of drawing program, with what those really use. */
final class Drawings {
    static final List<String> NAMES = List.of(
            "alpha-mask",
            "clips",
            "entities-and-classes",
            "evenodd-mix",
            "layers-and-arrowheads",
            "map",
            "markers",
            "nested-symbols",
            "opacity",
            "paths",
            "strokes",
            "switch-css",
            "text",
            "transforms",
            "units");

    private Drawings() {}

    static URL url(String name) {
        return Drawings.class.getResource("/inkstrata/artwork/drawings/" + name + ".svg");
    }

    /**
     * Holds every drawing against another renderer.
     *
     * @param otherIsWrong what differs most where the other draws another picture, and must go on to
     */
    static void check(Function<String, Verdict.OtherPicture> other, Map<String, String> otherIsWrong)
            throws IOException {
        Map<String, String> verdicts = new TreeMap<>();
        for (String name : NAMES) {
            InputStream svg = url(name).openStream();
            verdicts.put(name, Verdict.of(name + ".svg", svg, other.apply(name)));
        }
        assertThat(verdicts)
                .allSatisfy((name, verdict) ->
                        assertThat(verdict).as(name).startsWith(otherIsWrong.getOrDefault(name, Verdict.SAME)));
    }
}
