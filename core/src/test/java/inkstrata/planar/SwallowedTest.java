package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SwallowedTest {
    private static final Source SPECK = new Source("path", "speck", 7, List.of());

    @Test
    void aSquareSmallerThanTheGridIsReportedWithItsPlaceAndSize() {
        assertThat(swallowed(Outline.rectangle(10, 20, 0.0001, 0.00005)))
                .singleElement()
                .satisfies(lost -> {
                    assertThat(lost.source()).isEqualTo(SPECK);
                    assertThat(lost.x()).isCloseTo(10.00005, within(1e-6));
                    assertThat(lost.y()).isCloseTo(20.000025, within(1e-6));
                    assertThat(lost.width()).isCloseTo(0.0001, within(1e-7));
                    assertThat(lost.height()).isCloseTo(0.00005, within(1e-7));
                });
    }

    @Test
    void aHairIsReportedHoweverLong() {
        Outline.Builder hair = Outline.builder();
        hair.moveTo(10, 10);
        hair.lineTo(60, 40);
        hair.lineTo(60.00004, 39.99995);
        hair.lineTo(10.00004, 9.99995);
        assertThat(swallowed(hair.build())).singleElement().satisfies(lost -> {
            assertThat(lost.width()).isCloseTo(50, within(0.001));
            assertThat(lost.height()).isCloseTo(30, within(0.001));
        });
    }

    @Test
    void aTinyRoundContourBesideOthersIsReported() {
        Outline.Builder outline = Outline.builder();
        Outline.rectangle(10, 10, 5, 5).sendTo(outline);
        outline.moveTo(30, 30);
        outline.cubicTo(30.0001, 30, 30.0001, 30.0001, 30, 30.0001);
        Outline.rectangle(50, 50, 5, 5).sendTo(outline);
        assertThat(swallowed(outline.build()))
                .singleElement()
                .satisfies(lost -> assertThat(lost.x()).isCloseTo(30.00005, within(1e-4)));
    }

    @Test
    void whatIsStillThereIsNotReported() {
        assertThat(swallowed(Outline.rectangle(10, 20, 0.001, 0.0005))).isEmpty();
        assertThat(swallowed(Outline.rectangle(10, 20, 50, 0.0003))).isEmpty();
        Outline.Builder eight = Outline.builder();
        eight.moveTo(10, 10);
        eight.lineTo(20, 20);
        eight.lineTo(20, 10);
        eight.lineTo(10, 20.001);
        assertThat(swallowed(eight.build())).isEmpty();
    }

    @Test
    void whatEnclosesNothingAsDrawnIsNotReported() {
        Outline.Builder line = Outline.builder();
        line.moveTo(10, 10);
        line.lineTo(30, 17);
        line.lineTo(40, 60);
        line.lineTo(30, 17);
        line.moveTo(5, 5);
        line.lineTo(5, 5);
        line.moveTo(6, 6);
        assertThat(swallowed(line.build())).isEmpty();
    }

    @Test
    void whatLiesOutsideTheFrameIsNotReported() {
        assertThat(swallowed(Outline.rectangle(120, 20, 0.0001, 0.0001))).isEmpty();
    }

    @Test
    void aPartOfAClipIsReportedOnceWithoutASource() {
        Clip clip = new Clip(List.of(area(Outline.rectangle(10, 10, 0.0001, 0.0001))));
        List<FlatShape> shapes = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            shapes.add(new FlatShape(
                    area(Outline.rectangle(i, 0, 20, 20)),
                    new Rgb(1, 2, 3),
                    1,
                    Optional.empty(),
                    List.of(clip),
                    SPECK));
        }
        assertThat(map(shapes).swallowed())
                .singleElement()
                .satisfies(lost -> assertThat(lost.source()).isEqualTo(Source.UNKNOWN));
    }

    private static List<Swallowed> swallowed(Outline outline) {
        return map(List.of(FlatShape.opaque(area(outline), new Rgb(1, 2, 3), SPECK)))
                .swallowed();
    }

    private static Area area(Outline outline) {
        return new Area(outline, FillRule.NONZERO);
    }

    private static PlanarMap map(List<FlatShape> shapes) {
        return PlanarMapper.map(
                new Artwork("specks.svg", new Frame(0, 0, 100, 80), shapes, List.of()), MapSettings.DEFAULT);
    }
}
