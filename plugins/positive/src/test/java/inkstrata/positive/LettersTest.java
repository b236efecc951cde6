package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;

class LettersTest {
    private static final int SIZE = 4 * Grid.STEPS_PER_MM;

    @Test
    void thereIsAnOutlineForTheLettersOfPrintersNames() {
        "Straße, Ĳsselmeer, Łódź, ÆØÅ, ñ, Žižka, Ωμέγα, Жёлтый · № 5 – 100 % … “n°”"
                .codePoints()
                .forEach(point -> assertThat(Letters.has(point))
                        .as(Character.toString(point))
                        .isTrue());
        assertThat(Letters.has(0x1f41f)).isFalse();
        assertThat(Letters.outline("\ud83d\udc1f", 0, 0, SIZE))
                .as("a mark stands for it")
                .isNotEqualTo(Outline.builder().build());
    }

    /** Figures are equally wide, so that they stand beneath each other: common practice, no source. */
    @Test
    void figuresAreEquallyWide() {
        for (char figure = '0'; figure <= '9'; figure++) {
            assertThat(Letters.width(String.valueOf(figure))).isEqualTo(Letters.width("0"));
        }
        assertThat(Letters.width("pull 3 of 9"))
                .isCloseTo(Letters.width("pull 3") + Letters.width(" of 9"), within(1e-12));
    }

    @Test
    void wordsBeginAtTheirPlaceAndStandOnTheBaseline() {
        Rectangle2D bounds = shape(Letters.outline("HILT", 10 * Grid.STEPS_PER_MM, 20 * Grid.STEPS_PER_MM, SIZE))
                .getBounds2D();
        assertThat(bounds.getMaxY()).as("baseline").isCloseTo(20, within(0.001));
        assertThat(bounds.getMinX()).isBetween(10.0, 10 + 0.15 * 4);
        assertThat(bounds.getMaxX()).isBetween(10 + 3.6 * Letters.width("HILT"), 10 + 4 * Letters.width("HILT") + 0.05);
        assertThat(bounds.getHeight()).as("capitals: 1493 of 2048 units").isCloseTo(4.0 * 1493 / 2048, within(0.01));
    }

    /** An o is a disc with a hole, an i two pieces. */
    @Test
    void lettersKeepTheirHoles() {
        Shape o = shape(Letters.outline("o", 0, 0, SIZE));
        Rectangle2D box = o.getBounds2D();
        assertThat(o.contains(box.getCenterX(), box.getCenterY())).isFalse();
        assertThat(o.contains(box.getMinX() + 0.1, box.getCenterY())).isTrue();
        assertThat(new Area(shape(Letters.outline("i", 0, 0, SIZE))).isSingular())
                .isFalse();
    }

    private static Shape shape(Outline outline) {
        Path2D path = new Path2D.Double(PathIterator.WIND_NON_ZERO);
        outline.sendTo(new CurveSink() {
            @Override
            public void moveTo(double x, double y) {
                path.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                path.lineTo(x, y);
            }

            @Override
            public void quadTo(double x1, double y1, double x, double y) {
                path.quadTo(x1, y1, x, y);
            }

            @Override
            public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
                path.curveTo(x1, y1, x2, y2, x, y);
            }
        });
        return path;
    }
}
