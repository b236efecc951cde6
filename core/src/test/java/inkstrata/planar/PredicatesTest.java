package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rounding where doubles cannot decide. */
class PredicatesTest {
    @Test
    void crossingsHalfWayBetweenGridLinesGoUp() {
        assertThat(Predicates.crossing(10, 5, 1, 2)).isEqualTo(13);
        assertThat(Predicates.crossing(10, -5, 1, 2)).isEqualTo(8);
        assertThat(Predicates.crossing(-10, 5, -3, -6)).isEqualTo(-7);
        assertThat(Predicates.crossing(0, -1, 1, 2)).isZero();
    }

    /** The quotients differ from one half by less than a double of that size can tell. */
    @Test
    void aHairFromHalfWayTheExactQuotientDecides() {
        long m = (1L << 52) + 2;
        int d = (1 << 26) - 1;
        for (int k = 1; k < 2_000; k += 37) {
            // d n / m is as near as can be to k + 1/2, from either side.
            long n = Math.floorDiv((2L * k + 1) * (m / 2), d);
            for (long near = n - 1; near <= n + 2; near++) {
                assertThat(Predicates.crossing(7, d, near, m)).isEqualTo(7 + rounded(d, near, m));
                assertThat(Predicates.crossing(7, -d, near, m)).isEqualTo(7 + rounded(-d, near, m));
                assertThat(Predicates.crossing(7, d, -near, -m)).isEqualTo(7 + rounded(d, near, m));
            }
        }
    }

    @Test
    void exactRoundingAgreesWithDecimals() {
        Random random = new Random(5);
        for (int i = 0; i < 5_000; i++) {
            long m = random.nextInt(1_000) + 2L;
            long n = 1L + random.nextInt((int) m - 1);
            long d = random.nextInt(2_001) - 1_000L;
            boolean flip = random.nextBoolean();
            assertThat(Predicates.roundedExactly(d, flip ? -n : n, flip ? -m : m))
                    .as("%d * %d / %d", d, n, m)
                    .isEqualTo(rounded(d, n, m));
            assertThat(Predicates.crossing(0, d, flip ? -n : n, flip ? -m : m)).isEqualTo(rounded(d, n, m));
        }
    }

    /** A pixel owns its low and left sides and its low left corner alone. */
    @Test
    void aSegmentPassesThePixelsItsPointsRoundTo() {
        for (int bx = -6; bx <= 6; bx++) {
            for (int by = -6; by <= 6; by++) {
                if (bx == 0 && by == 0) {
                    continue;
                }
                for (int px = -7; px <= 7; px++) {
                    for (int py = -7; py <= 7; py++) {
                        assertThat(Predicates.passes(0, 0, bx, by, px, py))
                                .as("0,0 to %d,%d past %d,%d", bx, by, px, py)
                                .isEqualTo(somePointRoundsTo(bx, by, px, py));
                    }
                }
            }
        }
    }

    /** In units of 1/5040 of the way, which holds every place where a segment that short crosses a side, and places between. */
    private static boolean somePointRoundsTo(int bx, int by, int px, int py) {
        for (int t = 0; t <= 5_040; t++) {
            if (Math.floorDiv(2 * bx * t + 5_040, 10_080) == px && Math.floorDiv(2 * by * t + 5_040, 10_080) == py) {
                return true;
            }
        }
        return false;
    }

    private static long rounded(long d, long n, long m) {
        BigDecimal floor = BigDecimal.valueOf(2 * d)
                .multiply(BigDecimal.valueOf(n))
                .add(BigDecimal.valueOf(m))
                .divide(BigDecimal.valueOf(2).multiply(BigDecimal.valueOf(m)), 0, RoundingMode.FLOOR);
        return floor.longValueExact();
    }
}
