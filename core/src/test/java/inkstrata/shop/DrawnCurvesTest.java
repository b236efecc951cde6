package inkstrata.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Note;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.measure.Frame;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Drawings with more outlines than can be trapped and checked are refused, with their number. */
class DrawnCurvesTest {
    private static Artwork withRectangles(int count) {
        Area area = new Area(Outline.rectangle(1, 1, 2, 2), FillRule.NONZERO);
        FlatShape shape = FlatShape.opaque(area, Rgb.of(0x204060), Source.UNKNOWN);
        return new Artwork("coast.svg", new Frame(0, 0, 9, 9), Collections.nCopies(count, shape), List.of());
    }

    /** Each has a move-to and three lines; the closing line is none of them. */
    @Test
    void tooManyCurvesAreRefused() {
        assertThatCode(() -> DrawnCurves.check(withRectangles(DrawnCurves.MOST / 4)))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> DrawnCurves.check(withRectangles(DrawnCurves.MOST / 4 + 1)))
                .isInstanceOf(ArtworkException.class)
                .hasMessage(
                        "coast.svg: the drawing's shapes have 2000004 lines and curves; 2000000 are the limit for films."
                                + " Simplify its paths, merge shapes of one colour, or split the drawing.");
    }

    /** Whoever only looks at such a drawing sees all but its strips, and is told so. */
    @Test
    void tooManyCurvesAreLookedAtWithoutStrips() {
        Artwork bricks = new Artwork(
                "bricks.svg", new Frame(0, 0, 21, 9), List.of(brick(0, 10), brick(10.02, 10.98)), List.of());
        assertThat(Look.at(bricks, Job.DEFAULT, 8).map().seams()).hasSize(1);
        Look large = Look.at(bricks, Job.DEFAULT, 7);
        assertThat(large.map().seams()).isEmpty();
        assertThat(large.visible()).containsOnlyKeys(Rgb.of(0x204060), Rgb.of(0x204061));
        assertThat(large.notes())
                .singleElement()
                .extracting(Note::text)
                .asString()
                .startsWith(
                        "8 lines and curves: strips between shapes were not looked for, and films can be made of no more than 7.");
    }

    private static FlatShape brick(double x, double width) {
        Area area = new Area(Outline.rectangle(x, 0, width, 9), FillRule.NONZERO);
        return FlatShape.opaque(area, Rgb.of(x == 0 ? 0x204060 : 0x204061), Source.UNKNOWN);
    }
}
