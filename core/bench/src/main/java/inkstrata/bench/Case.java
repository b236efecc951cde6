package inkstrata.bench;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Sets of drawings by name; a set is mapped as a whole. */
final class Case {
    /**
     * Of the flags of flag-icons 7.5.0 (MIT) in 4 by 3 without gradients or translucent paint, the twenty with most vertices once flattened to
     * 5 µm.
     */
    private static final List<String> LARGEST_FLAGS = List.of(
            "sv", "bo", "rs", "es", "bt", "va", "ky", "af", "mp", "ec", "arab", "lk", "ht", "fj", "bm", "ad", "je",
            "sm", "pn", "pt");

    private Case() {}

    /**
     * Makes the drawings.
     *
     * @param name {@code blobs-N}, {@code deep-N} or {@code sunburst-N} for N shapes; {@code counties} for a map of
     *     876,096 vertices; {@code flags-20}
     */
    static List<Artwork> drawings(String name) {
        String kind = name.replaceAll("-.*", "");
        int count = name.contains("-") ? Integer.parseInt(name.replaceAll(".*-", "")) : 0;
        return switch (kind) {
            case "blobs" -> List.of(Drawings.blobs(count));
            case "deep" -> List.of(Drawings.deep(count));
            case "sunburst" -> List.of(Drawings.sunburst(count));
            case "counties" -> List.of(Drawings.counties(78, 36));
            case "flags" -> flags();
            default -> throw new IllegalArgumentException("there is no drawing called " + name);
        };
    }

    private static List<Artwork> flags() {
        List<Artwork> flags = new ArrayList<>();
        for (String code : LARGEST_FLAGS) {
            String path = "/META-INF/resources/webjars/flag-icons/7.5.0/flags/4x3/" + code + ".svg";
            try (InputStream in = Case.class.getResourceAsStream(path)) {
                flags.add(SvgReader.read(code + ".svg", in, ReadOptions.DEFAULT));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return flags;
    }
}
