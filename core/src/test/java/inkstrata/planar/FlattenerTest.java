package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Outline;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Tolerance;
import java.awt.geom.Line2D;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** How far chords leave their curves, by dense samples of the curves in many decimal digits. */
class FlattenerTest {
    private static final Frame FRAME = new Frame(0, 0, 100, 80);
    private static final MathContext DIGITS = new MathContext(400);

    @Test
    void chordsStayWithinFiveMicrometresOfCurvesOfAllKinds() {
        Random random = new Random(7);
        int seen = 0;
        for (int kind = 2; kind <= 4; kind++) {
            for (int i = 0; i < 60; i++) {
                double reach = Math.pow(10, random.nextDouble() * 4 - 2);
                double[] c = new double[2 * kind];
                for (int k = 0; k < c.length; k++) {
                    c[k] = 40 + (random.nextDouble() - 0.5) * reach;
                }
                if (i % 5 == 0) {
                    c[c.length - 2] = c[0];
                    c[c.length - 1] = c[1] + (kind == 2 ? 1 : 0);
                }
                seen += samplesWithinTolerance(c, evenly(150), MathContext.DECIMAL128);
            }
        }
        assertThat(seen).isGreaterThan(15_000);
    }

    /**
     * The area that a curve and the line between its ends bound: by Green's theorem over many chords between points of the curve, and what
     * those lack, extrapolated (L. F. Richardson, 1911).
     */
    @Test
    void chordsHaveTheAreaOfTheirCurve() {
        Random random = new Random(11);
        for (int kind = 3; kind <= 4; kind++) {
            for (int i = 0; i < 200; i++) {
                double reach = Math.pow(10, random.nextDouble() * 2.5 - 0.7);
                double[] c = new double[2 * kind];
                for (int k = 0; k < c.length; k++) {
                    c[k] = Grid.millimetres(Grid.steps(40 + (random.nextDouble() - 0.5) * Math.min(reach, 60)));
                }
                double area = (4 * areaOfChords(c, 2048) - areaOfChords(c, 1024)) / 3;
                Segments segments = flattened(c);
                double found = 0;
                double length = 0;
                for (int s = 0; s < segments.size(); s++) {
                    double x0 = Grid.millimetres(segments.x0(s));
                    double y0 = Grid.millimetres(segments.y0(s));
                    double x1 = Grid.millimetres(segments.x1(s));
                    double y1 = Grid.millimetres(segments.y1(s));
                    found += (x0 * y1 - x1 * y0) / 2;
                    length += Math.hypot(x1 - x0, y1 - y0);
                }
                assertThat(found)
                        .as("curve %d of %d points", i, kind)
                        .isCloseTo(area, within(length * Grid.STEP_MM / 2));
            }
        }
    }

    @Test
    void noChordRunsFartherFromItsCurveThanFiveMicrometres() {
        Random random = new Random(13);
        for (int i = 0; i < 120; i++) {
            double reach = Math.pow(10, random.nextDouble() * 3 - 2);
            double[] c = new double[6 + 2 * (i % 2)];
            for (int k = 0; k < c.length; k++) {
                c[k] = 40 + (random.nextDouble() - 0.5) * reach;
            }
            if (i % 5 == 0) {
                // Narrow turns, loops and cusps.
                c[c.length - 2] = c[0];
                c[c.length - 1] = c[1];
            }
            List<double[]> curve = new ArrayList<>();
            for (int k = 0; k <= 1_500; k++) {
                curve.add(new double[] {point(c, 0, k / 1500.0), point(c, 1, k / 1500.0)});
            }
            Segments segments = flattened(c);
            // The last may be the line that closes the contour.
            int last = segments.size() - (i % 5 == 0 ? 0 : 1);
            for (int s = 0; s < last; s++) {
                for (int look = 0; look < 4; look++) {
                    double x = Grid.millimetres(segments.x0(s))
                            + look / 4.0 * (Grid.millimetres(segments.x1(s)) - Grid.millimetres(segments.x0(s)));
                    double y = Grid.millimetres(segments.y0(s))
                            + look / 4.0 * (Grid.millimetres(segments.y1(s)) - Grid.millimetres(segments.y0(s)));
                    double nearest = Double.MAX_VALUE;
                    for (int k = 0; k + 1 < curve.size(); k++) {
                        double[] p = curve.get(k);
                        double[] q = curve.get(k + 1);
                        nearest = Math.min(nearest, Line2D.ptSegDist(p[0], p[1], q[0], q[1], x, y));
                    }
                    assertThat(nearest).as("curve %d, chord %d", i, s).isLessThanOrEqualTo(Tolerance.FLATNESS_MM);
                }
            }
        }
    }

    private static double areaOfChords(double[] c, int count) {
        double area = 0;
        double x = c[0];
        double y = c[1];
        for (int i = 1; i <= count; i++) {
            double nextX = point(c, 0, i / (double) count);
            double nextY = point(c, 1, i / (double) count);
            area += (x * nextY - nextX * y) / 2;
            x = nextX;
            y = nextY;
        }
        return area + (x * c[1] - c[0] * y) / 2;
    }

    @Test
    void whatIsSeenOfACurveWithAFarControlPointStaysWithinFiveMicrometres() {
        for (double far : new double[] {1e4, 1e6, 1e9, 1e12, 1e20, 1e60, 1e200, 1e280}) {
            double[][] curves = {
                {10, 10, far, 3 * far, 90, 10},
                {10, 10, far, 3 * far, 20, 70, 90, 10},
                {10, 10, 20, 70, -far, far / 7, 90, 40},
                {10, 10, far, 30, -far, 60, 90, 70},
                {10, 10, far, far, far, -far, 30, 30},
                {10, 10, 2 * far, 3 * far},
                {-far, -2 * far, 30, 40},
                {20, 30, -far, far / 3, 5 * far, far}
            };
            for (double[] c : curves) {
                assertThat(samplesWithinTolerance(c, towardsBothEnds(far), DIGITS))
                        .as("a curve of %d points that reaches %s mm", c.length / 2, far)
                        .isGreaterThan(20);
            }
        }
    }

    @Test
    void aLineFromFarToFarRunsThroughTheMiddleWhereItShould() {
        for (double far : new double[] {1e6, 1e12, 1e280, 1e300, Double.MAX_VALUE}) {
            Segments segments = flattened(-far, -far, far, far);
            assertThat(distance(segments, 40, 40)).isLessThan(Grid.STEP_MM);
            assertThat(distance(segments, 0.125, 0.125)).isLessThan(Grid.STEP_MM);
            segments = flattened(-far, 30, far, 30);
            assertThat(distance(segments, 99, 30)).isZero();
        }
    }

    @Test
    void noCoordinateIsTooLarge() {
        double[] sizes = {1e5, 1e12, 1e38, 1e300, Double.MAX_VALUE};
        Random random = new Random(3);
        for (int i = 0; i < 2_000; i++) {
            double[] c = new double[4 + 2 * random.nextInt(3)];
            for (int k = 0; k < c.length; k++) {
                c[k] = random.nextInt(3) == 0
                        ? random.nextDouble() * 100
                        : (random.nextDouble() - 0.5) * 2 * sizes[random.nextInt(sizes.length)];
            }
            Segments segments = flattened(c);
            Box around = Box.of(FRAME).surroundings();
            int x = 0;
            int y = 0;
            for (int s = 0; s < segments.size(); s++) {
                assertThat(segments.x0(s)).isBetween(around.left(), around.right());
                assertThat(segments.y0(s)).isBetween(around.low(), around.high());
                if (s > 0) {
                    assertThat(segments.x0(s)).isEqualTo(x);
                    assertThat(segments.y0(s)).isEqualTo(y);
                }
                x = segments.x1(s);
                y = segments.y1(s);
                assertThat(segments.t0(s)).isBetween(0.0, segments.t1(s));
                assertThat(segments.t1(s)).isLessThanOrEqualTo(1);
            }
            if (segments.size() > 0) {
                assertThat(x).as("a closed contour").isEqualTo(segments.x0(0));
                assertThat(y).as("a closed contour").isEqualTo(segments.y0(0));
            }
            assertThat(segments.size()).isLessThan(40_000);
        }
    }

    /** How many of the points on a curve, in the frame and each less than the tolerance from a chord, there are. */
    private static int samplesWithinTolerance(double[] c, List<BigDecimal> parameters, MathContext digits) {
        Segments segments = flattened(c);
        int seen = 0;
        for (BigDecimal t : parameters) {
            double x = point(c, 0, t, digits).doubleValue();
            double y = point(c, 1, t, digits).doubleValue();
            if (x > 0 && x < FRAME.right() && y > 0 && y < FRAME.bottom()) {
                seen++;
                // A curve so small that its chord is a point has no segments.
                double away = segments.size() == 0 ? Math.hypot(x - c[0], y - c[1]) : distance(segments, x, y);
                assertThat(away).as("at %s", t.doubleValue()).isLessThanOrEqualTo(Tolerance.FLATNESS_MM);
            }
        }
        return seen;
    }

    private static List<BigDecimal> evenly(int n) {
        List<BigDecimal> parameters = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            parameters.add(BigDecimal.valueOf(i).divide(BigDecimal.valueOf(n), DIGITS));
        }
        return parameters;
    }

    /** Where a curve that reaches so far may be seen: near its ends. */
    private static List<BigDecimal> towardsBothEnds(double far) {
        List<BigDecimal> parameters = new ArrayList<>();
        for (double share = 0.05; share < 200; share *= 1.05) {
            BigDecimal t = BigDecimal.valueOf(share).divide(BigDecimal.valueOf(far), DIGITS);
            if (t.compareTo(BigDecimal.ONE) < 0) {
                parameters.add(t);
                parameters.add(BigDecimal.ONE.subtract(t));
            }
        }
        return parameters;
    }

    /** De Casteljau on one axis. */
    private static BigDecimal point(double[] c, int axis, BigDecimal t, MathContext digits) {
        BigDecimal[] p = new BigDecimal[c.length / 2];
        for (int i = 0; i < p.length; i++) {
            p[i] = new BigDecimal(c[2 * i + axis]);
        }
        for (int n = p.length - 1; n > 0; n--) {
            for (int i = 0; i < n; i++) {
                p[i] = p[i].add(p[i + 1].subtract(p[i]).multiply(t, digits), digits);
            }
        }
        return p[0];
    }

    /** Likewise, in doubles. */
    private static double point(double[] c, int axis, double t) {
        double[] p = new double[c.length / 2];
        for (int i = 0; i < p.length; i++) {
            p[i] = c[2 * i + axis];
        }
        for (int n = p.length - 1; n > 0; n--) {
            for (int i = 0; i < n; i++) {
                p[i] += (p[i + 1] - p[i]) * t;
            }
        }
        return p[0];
    }

    private static double distance(Segments s, double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < s.size(); i++) {
            nearest = Math.min(
                    nearest,
                    Line2D.ptSegDist(
                            Grid.millimetres(s.x0(i)),
                            Grid.millimetres(s.y0(i)),
                            Grid.millimetres(s.x1(i)),
                            Grid.millimetres(s.y1(i)),
                            x,
                            y));
        }
        return nearest;
    }

    private static Segments flattened(double... c) {
        Outline.Builder outline = Outline.builder();
        outline.moveTo(c[0], c[1]);
        switch (c.length) {
            case 4 -> outline.lineTo(c[2], c[3]);
            case 6 -> outline.quadTo(c[2], c[3], c[4], c[5]);
            default -> outline.cubicTo(c[2], c[3], c[4], c[5], c[6], c[7]);
        }
        Segments segments = new Segments();
        new Flattener(segments, Tolerance.FLATNESS_MM, Box.of(FRAME)).add(outline.build(), 0);
        return segments;
    }
}
