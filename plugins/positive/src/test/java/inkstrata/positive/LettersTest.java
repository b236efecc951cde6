package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.measure.Grid;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import org.apache.batik.parser.AWTPathProducer;
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
        assertThat(Letters.path("\ud83d\udc1f", 0, 0, SIZE))
                .as("a mark stands for it")
                .isNotEmpty();
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
    void wordsBeginAtTheirPlaceAndStandOnTheBaseline() throws IOException {
        Rectangle2D bounds = shape(Letters.path("HILT", 10 * Grid.STEPS_PER_MM, 20 * Grid.STEPS_PER_MM, SIZE))
                .getBounds2D();
        assertThat(bounds.getMaxY()).as("baseline").isCloseTo(20, within(0.001));
        assertThat(bounds.getMinX()).isBetween(10.0, 10 + 0.15 * 4);
        assertThat(bounds.getMaxX()).isBetween(10 + 3.6 * Letters.width("HILT"), 10 + 4 * Letters.width("HILT") + 0.05);
        assertThat(bounds.getHeight()).as("capitals: 1493 of 2048 units").isCloseTo(4.0 * 1493 / 2048, within(0.01));
    }

    /** An o is a disc with a hole, an i two pieces. */
    @Test
    void lettersKeepTheirHoles() throws IOException {
        Shape o = shape(Letters.path("o", 0, 0, SIZE));
        Rectangle2D box = o.getBounds2D();
        assertThat(o.contains(box.getCenterX(), box.getCenterY())).isFalse();
        assertThat(o.contains(box.getMinX() + 0.1, box.getCenterY())).isTrue();
        assertThat(new Area(shape(Letters.path("i", 0, 0, SIZE))).isSingular()).isFalse();
    }

    private static Shape shape(String path) throws IOException {
        return AWTPathProducer.createShape(new StringReader(path), PathIterator.WIND_NON_ZERO);
    }
}
