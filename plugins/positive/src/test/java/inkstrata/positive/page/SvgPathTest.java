package inkstrata.positive.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.PathParser;
import org.junit.jupiter.api.Test;

/** Paths are read back by Batik's grammar of path data, which knows nothing of this project. */
class SvgPathTest {
    @Test
    void uprightLinesAreShort() throws IOException {
        Outline.Builder outline = Outline.builder();
        Outline.rectangle(1, 2, 10.5, 4).sendTo(outline);
        outline.moveTo(2, 3);
        outline.lineTo(2.25, 3.25025);
        outline.lineTo(2.5, 3.2505);
        assertThat(written(outline.build())).isEqualTo("M1 2H11.5V6H1ZM2 3L2.25 3.25025 2.5 3.2505Z");
    }

    @Test
    void curvesKeepTheirLetterWhileItLasts() throws IOException {
        Outline.Builder outline = Outline.builder();
        outline.moveTo(0, 0);
        outline.cubicTo(1, 0, 2, 1, 2, 2);
        outline.cubicTo(2, 3, 1, 4, 0, 4);
        outline.quadTo(-1, 2, 0, 0);
        assertThat(written(outline.build())).isEqualTo("M0 0C1 0 2 1 2 2 2 3 1 4 0 4Q-1 2 0 0Z");
    }

    @Test
    void everyNumberIsReadBack() throws IOException {
        long seed = 20260101;
        Random random = new Random(seed);
        for (int drawing = 0; drawing < 300; drawing++) {
            Outline outline = anything(random);
            List<Double> found = new ArrayList<>();
            PathParser parser = new PathParser();
            parser.setPathHandler(new Numbers(found));
            parser.parse(written(outline));
            List<Double> wanted = numbers(outline);
            assertThat(found).as("drawing %d of seed %d", drawing, seed).hasSameSizeAs(wanted);
            for (int i = 0; i < wanted.size(); i++) {
                // Batik reads single precision.
                assertThat(found.get(i)).isCloseTo(wanted.get(i), within(0.00001));
            }
        }
    }

    @Test
    void anEmptyOutlineIsAnEmptyPath() throws IOException {
        assertThat(written(Outline.builder().build())).isEmpty();
    }

    private static String written(Outline outline) throws IOException {
        StringBuilder text = new StringBuilder();
        SvgPath.write(outline, text);
        return text.toString();
    }

    /** Points within 50 mm, some straight above or beside the one before. */
    private static Outline anything(Random random) {
        Outline.Builder outline = Outline.builder();
        for (int contour = 0; contour < 1 + random.nextInt(4); contour++) {
            double x = at(random);
            double y = at(random);
            outline.moveTo(x, y);
            for (int i = 0; i < 2 + random.nextInt(20); i++) {
                x = random.nextInt(4) == 0 ? x : at(random);
                y = random.nextInt(4) == 0 ? y : at(random);
                switch (random.nextInt(3)) {
                    case 0 -> outline.lineTo(x, y);
                    case 1 -> outline.quadTo(at(random), at(random), x, y);
                    default -> outline.cubicTo(at(random), at(random), at(random), at(random), x, y);
                }
            }
        }
        return outline.build();
    }

    private static double at(Random random) {
        return Math.rint(random.nextDouble() * 50 * 100_000) / 100_000 - 10;
    }

    private static List<Double> numbers(Outline outline) {
        List<Double> numbers = new ArrayList<>();
        outline.sendTo(new CurveSink() {
            @Override
            public void moveTo(double x, double y) {
                numbers.addAll(List.of(x, y));
            }

            @Override
            public void lineTo(double x, double y) {
                numbers.addAll(List.of(x, y));
            }

            @Override
            public void quadTo(double x1, double y1, double x, double y) {
                numbers.addAll(List.of(x1, y1, x, y));
            }

            @Override
            public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
                numbers.addAll(List.of(x1, y1, x2, y2, x, y));
            }
        });
        return numbers;
    }

    private static final class Numbers extends DefaultPathHandler {
        private final List<Double> numbers;
        private double x;
        private double y;

        Numbers(List<Double> numbers) {
            this.numbers = numbers;
        }

        private void to(double... c) {
            for (double v : c) {
                numbers.add(v);
            }
            x = c[c.length - 2];
            y = c[c.length - 1];
        }

        @Override
        public void movetoAbs(float toX, float toY) {
            to(toX, toY);
        }

        @Override
        public void linetoAbs(float toX, float toY) {
            to(toX, toY);
        }

        @Override
        public void linetoHorizontalAbs(float toX) {
            to(toX, y);
        }

        @Override
        public void linetoVerticalAbs(float toY) {
            to(x, toY);
        }

        @Override
        public void curvetoQuadraticAbs(float x1, float y1, float toX, float toY) {
            to(x1, y1, toX, toY);
        }

        @Override
        public void curvetoCubicAbs(float x1, float y1, float x2, float y2, float toX, float toY) {
            to(x1, y1, x2, y2, toX, toY);
        }
    }
}
