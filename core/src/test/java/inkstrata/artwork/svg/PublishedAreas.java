package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.colour.Rgb;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** The areas of visible-areas.csv, where their source stands. */
final class PublishedAreas {
    /** Of the canvas: what two renderers differ by, and a little. */
    private static final double TOLERANCE = 0.001;

    /** Shares of the canvas by colour or {@code none}, by file; of flag-icons or twemoji. */
    static Map<String, Map<String, Double>> of(String set) throws IOException {
        Map<String, Map<String, Double>> files = new TreeMap<>();
        try (InputStream stream = PublishedAreas.class.getResourceAsStream("/inkstrata/artwork/visible-areas.csv")) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            text.lines().filter(line -> line.startsWith(set + ",")).forEach(line -> {
                String[] cells = line.split(",", -1);
                files.computeIfAbsent(cells[1], file -> new TreeMap<>()).put(cells[2], Double.valueOf(cells[3]));
            });
        }
        return files;
    }

    /** Every colour of the table has its area, and nothing else shows. */
    static void check(Artwork artwork, Map<String, Double> published) {
        VisibleAreas ours = VisibleAreas.mapped(artwork);
        Map<String, Double> rest = new TreeMap<>(Map.of("none", ours.bare()));
        ours.colours().forEach((colour, share) -> rest.put(colour.hex(), share));
        published.forEach((colour, share) -> {
            String near = colour.equals("none") ? colour : nearest(rest, Rgb.parse(colour));
            rest.merge(near, -share, Double::sum);
        });
        assertThat(rest)
                .allSatisfy((colour, left) -> assertThat(left)
                        .as(artwork.name() + " " + colour + ": ours less the published share")
                        .isBetween(-TOLERANCE, TOLERANCE));
    }

    /** Where shapes shine through, renderers round the colour they make differently, by a step of a channel or so. */
    private static String nearest(Map<String, Double> among, Rgb colour) {
        return among.containsKey(colour.hex())
                ? colour.hex()
                : among.keySet().stream()
                        .filter(candidate -> !candidate.equals("none") && apart(Rgb.parse(candidate), colour) <= 2)
                        .findFirst()
                        .orElse(colour.hex());
    }

    private static int apart(Rgb one, Rgb other) {
        return Math.max(
                Math.abs(one.red() - other.red()),
                Math.max(Math.abs(one.green() - other.green()), Math.abs(one.blue() - other.blue())));
    }

    private PublishedAreas() {}
}
