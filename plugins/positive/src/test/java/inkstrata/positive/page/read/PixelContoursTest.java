package inkstrata.positive.page.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines of pixels hold just the pixels they came from, whether they are drawn as they are or with straight lines. */
class PixelContoursTest {
    @Test
    void aPixelHasFourCorners() {
        BitSet[] rows = rows(3, 3);
        rows[1].set(1);
        assertThat(contours(rows, 3))
                .singleElement()
                .satisfies(corners -> assertThat(corners).hasSize(8));
    }

    @Test
    void pixelsThatTouchAtACornerAreApart() {
        for (boolean isFalling : new boolean[] {true, false}) {
            BitSet[] rows = rows(2, 2);
            rows[0].set(isFalling ? 0 : 1);
            rows[1].set(isFalling ? 1 : 0);
            assertThat(contours(rows, 2)).hasSize(2).allMatch(corners -> corners.length == 8);
        }
    }

    @Test
    void outlinesWalkWithBlackOnTheRight() {
        BitSet[] rows = rows(7, 7);
        for (int y = 1; y < 6; y++) {
            rows[y].set(1, 6);
        }
        rows[3].clear(3);
        List<int[]> contours = contours(rows, 7);
        assertThat(contours.stream().mapToDouble(PixelContoursTest::area)).containsExactlyInAnyOrder(25.0, -1.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 63, 64, 65, 130, 300})
    void noiseIsHeldExactly(int width) {
        Random random = new Random(width);
        BitSet[] rows = rows(width, 40);
        for (BitSet row : rows) {
            for (int x = 0; x < width; x++) {
                row.set(x, random.nextInt(3) > 0);
            }
        }
        assertHolds(rows, width, width);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void drawnShapesAreHeldExactlyWithFewLines(long seed) {
        int side = 1200;
        Random random = new Random(seed);
        double[][] shapes = new double[12][];
        for (int i = 0; i < shapes.length; i++) {
            shapes[i] = new double[] {
                random.nextDouble() * side,
                random.nextDouble() * side,
                2 + random.nextDouble() * 240,
                random.nextDouble() * 3,
                0.01 + random.nextDouble() * 0.5
            };
        }
        BitSet[] rows = rows(side, side);
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                rows[y].set(x, isIn(x + 0.5, y + 0.5, shapes));
            }
        }
        int[] drawn = assertHolds(rows, side, seed);
        assertThat(drawn[1]).as("points of %s corners", drawn[0]).isLessThan(drawn[0] / 2);
    }

    /**
     * The hull of the whole points in a disc has about 3.453 r^(2/3) vertices (A. Balog and I. Bárány, On the convex hull of the integer points in
     * a disc, 1991; from memory); lines that start where the last one ended are at most twice as many, where corners of pixels are five times as many.
     */
    @Test
    void aDiscHasFewLines() {
        int radius = 240;
        BitSet[] rows = rows(500, 500);
        for (int y = 0; y < 500; y++) {
            for (int x = 0; x < 500; x++) {
                rows[y].set(x, Math.hypot(x - 249.7, y - 250.2) < radius);
            }
        }
        int[] drawn = assertHolds(rows, 500, 0);
        assertThat(drawn[1]).isLessThan((int) (2 * 3.453 * Math.pow(radius, 2 / 3.0)));
    }

    /** Ellipses at a slant, bars at a slant, and discs, over and out of each other. */
    private static boolean isIn(double x, double y, double[][] shapes) {
        boolean isIn = false;
        for (int i = 0; i < shapes.length; i++) {
            double[] s = shapes[i];
            double dx = x - s[0];
            double dy = y - s[1];
            double along = dx * Math.cos(s[3]) + dy * Math.sin(s[3]);
            double across = dy * Math.cos(s[3]) - dx * Math.sin(s[3]);
            boolean isHere = i % 3 == 0
                    ? Math.abs(along) < s[2] && Math.abs(across) < s[2] * s[4]
                    : along * along + across * across / (s[4] * s[4]) < s[2] * s[2];
            isIn ^= isHere;
        }
        return isIn;
    }

    /** How many corners there are, and points of lines. */
    private static int[] assertHolds(BitSet[] rows, int width, long seed) {
        List<int[]> contours = contours(rows, width);
        Drawn drawn = new Drawn();
        contours.forEach(corners -> StraightSteps.draw(corners, drawn));
        drawn.end();
        int corners = contours.stream().mapToInt(contour -> contour.length / 2).sum();
        int points = drawn.contours.stream().mapToInt(List::size).sum();
        double area = contours.stream().mapToDouble(PixelContoursTest::area).sum();
        int black = 0;
        for (BitSet row : rows) {
            black += row.cardinality();
        }
        assertThat(area).as("seed %s", seed).isEqualTo(black);
        for (int y = 0; y < rows.length; y++) {
            assertThat(drawn.row(y + 0.5, width)).as("seed %s, row %s", seed, y).isEqualTo(rows[y]);
        }
        return new int[] {corners, points};
    }

    private static BitSet[] rows(int width, int height) {
        BitSet[] rows = new BitSet[height];
        for (int y = 0; y < height; y++) {
            rows[y] = new BitSet(width);
        }
        return rows;
    }

    private static List<int[]> contours(BitSet[] rows, int width) {
        PixelContours contours = new PixelContours(width);
        for (BitSet row : rows) {
            long[] words = new long[(width + 63) / 64];
            long[] held = row.toLongArray();
            System.arraycopy(held, 0, words, 0, held.length);
            contours.row(words);
        }
        List<int[]> all = new ArrayList<>();
        contours.end(all::add);
        return all;
    }

    /** Positive where the inside is on the right, as seen with y down. */
    private static double area(int[] corners) {
        double doubled = 0;
        for (int i = 0, j = corners.length - 2; i < corners.length; j = i, i += 2) {
            doubled += (double) corners[j] * corners[i + 1] - (double) corners[i] * corners[j + 1];
        }
        return doubled / 2;
    }

    /** Contours put into pixels again: one is black if its middle is wound around. */
    private static final class Drawn implements inkstrata.artwork.CurveSink {
        private final List<List<double[]>> contours = new ArrayList<>();
        private final List<double[]> edges = new ArrayList<>();

        @Override
        public void moveTo(double x, double y) {
            contours.add(new ArrayList<>());
            lineTo(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            contours.get(contours.size() - 1).add(new double[] {x, y});
        }

        @Override
        public void quadTo(double x1, double y1, double x, double y) {
            throw new AssertionError();
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
            throw new AssertionError();
        }

        void end() {
            for (List<double[]> contour : contours) {
                assertThat(contour).hasSizeGreaterThan(2);
                for (int i = 0, j = contour.size() - 1; i < contour.size(); j = i++) {
                    edges.add(
                            new double[] {contour.get(j)[0], contour.get(j)[1], contour.get(i)[0], contour.get(i)[1]});
                }
            }
        }

        BitSet row(double level, int width) {
            int[] winding = new int[width + 1];
            for (double[] e : edges) {
                if ((e[1] <= level) != (e[3] <= level)) {
                    double x = e[0] + (level - e[1]) / (e[3] - e[1]) * (e[2] - e[0]);
                    int first = (int) Math.max(0, Math.min(width, Math.ceil(x - 0.5)));
                    winding[first] += e[3] > e[1] ? 1 : -1;
                }
            }
            BitSet row = new BitSet(width);
            int sum = 0;
            for (int x = 0; x < width; x++) {
                sum += winding[x];
                row.set(x, sum != 0);
            }
            return row;
        }
    }
}
