package inkstrata.shop;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Thousands of colours are refused before anything is mapped. */
class DrawnColoursTest {
    private static Artwork inColours(int count) {
        Area area = new Area(Outline.rectangle(1, 1, 2, 2), FillRule.NONZERO);
        List<FlatShape> shapes = IntStream.range(0, 2 * count)
                .mapToObj(i -> FlatShape.opaque(area, Rgb.of(i % count), Source.UNKNOWN))
                .toList();
        return new Artwork("photo.svg", new Frame(0, 0, 9, 9), shapes, List.of());
    }

    @Test
    void tooManyColoursAreRefused() {
        assertThatCode(() -> DrawnColours.check(inColours(DrawnColours.MOST))).doesNotThrowAnyException();
        assertThatThrownBy(() -> DrawnColours.check(inColours(DrawnColours.MOST + 1)))
                .isInstanceOf(ArtworkException.class)
                .hasMessage(
                        "photo.svg: the drawing's shapes have 2001 colours; 2000 are the limit for films. Reduce its"
                                + " colours in the drawing program, or trace it again with fewer.");
    }
}
