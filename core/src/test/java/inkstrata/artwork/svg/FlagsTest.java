package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.ArtworkException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Reads all 542 flags of flag-icons and compares what is seen of each colour with another renderer. */
class FlagsTest {
    /** Of the canvas, for each colour. */
    private static final double TOLERANCE = 0.003;

    /** Channels that renderers may round apart where shapes shine through. */
    private static final int ROUNDING = 3;

    /** Pixels across. Strokes thinner than a pixel are drawn a pixel wide, so where that shows, a larger picture decides. */
    private static final int WIDTH = 1000;

    private static final int LARGE_WIDTH = 4000;

    /** Those that are not flat: a gradient fills one of their shapes. */
    private static final Set<String> GRADIENTS = Set.of("bz", "fk", "gs", "gt", "mx", "ni", "vg");

    /**
     * Where jsvg draws another picture, and who is right: half the fills of sh-ac lead to gradients that are not in the file;
     * SVG 2, section 13.2 draws nothing for these, as we do and as resvg does, where jsvg draws black.
     */
    private static final Set<String> JSVG_IS_WRONG = Set.of("sh-ac");

    @Test
    void flatFlagsShowTheColoursThatAnotherRendererShows() {
        assertThat(Flags.names()).hasSize(542);
        Map<String, String> verdicts = Flags.names().parallelStream()
                .collect(Collectors.toMap(name -> name, FlagsTest::verdict, (one, two) -> one, TreeMap::new));
        Map<String, String> expected = new TreeMap<>();
        for (String name : Flags.names()) {
            String flag = name.substring(name.indexOf('/') + 1).replace(".svg", "");
            expected.put(
                    name,
                    GRADIENTS.contains(flag)
                            ? "refused: a gradient"
                            : JSVG_IS_WRONG.contains(flag) ? "another picture" : "the same picture");
        }
        assertThat(verdicts)
                .allSatisfy((name, verdict) -> assertThat(verdict).as(name).startsWith(expected.get(name)));
    }

    private static String verdict(String name) {
        VisibleAreas ours;
        try (InputStream stream = Flags.open(name)) {
            ours = VisibleAreas.mapped(SvgReader.read(name, stream, ReadOptions.DEFAULT))
                    .onWhite();
        } catch (ArtworkException refused) {
            return refused.getMessage().contains("fill is a gradient") ? "refused: a gradient" : refused.getMessage();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
        VisibleAreas.Difference worst = worst(ours, name, WIDTH);
        if (Math.abs(worst.share()) > TOLERANCE) {
            worst = worst(ours, name, LARGE_WIDTH);
        }
        return Math.abs(worst.share()) > TOLERANCE
                ? String.format(Locale.ROOT, "another picture: %s %+.4f", worst.colour(), worst.share())
                : "the same picture";
    }

    private static VisibleAreas.Difference worst(VisibleAreas ours, String name, int width) {
        return ours.from(VisibleAreas.counted(JsvgPicture.pixels(Flags.url(name), width)), ROUNDING);
    }
}
