package inkstrata.planar;

import java.math.BigInteger;

/**
 * The exact questions of the map, all in integers of less than 2^26 in size.
 *
 * <p>Snap rounding after J. D. Hobby, Practical segment intersection with finite precision output, Comput. Geom. 13
 * (1999) 199-214. A pixel is the square of one step around a grid point; of its sides the low and the left one, of its corners
 * only the low left one belong to it, as floor(v + 1/2) has it.
 */
final class Predicates {
    /** A quotient nearer to a tie than this is rounded by exact division; the error of the double is below 1e-7. */
    private static final double NEAR_TIE = 1e-6;

    private Predicates() {}

    /** Positive if p lies on the side of a to b on which cross products are positive. */
    static long cross(int ax, int ay, int bx, int by, int px, int py) {
        return ((long) bx - ax) * ((long) py - ay) - ((long) by - ay) * ((long) px - ax);
    }

    /** Whether the segment from a to b meets the pixel around p. */
    static boolean passes(int ax, int ay, int bx, int by, int px, int py) {
        long dx = (long) bx - ax;
        long dy = (long) by - ay;
        long twice = 2 * (dx * ((long) py - ay) - dy * ((long) px - ax));
        long reach = Math.abs(dx) + Math.abs(dy);
        // Most points asked about are off the line, so that goes first.
        if (Math.abs(twice) > reach) {
            return false;
        }
        if (px < Math.min(ax, bx) || px > Math.max(ax, bx) || py < Math.min(ay, by) || py > Math.max(ay, by)) {
            return false;
        }
        // Where it touches a corner: of a falling segment that may be the low left one, which belongs to the pixel.
        return Math.abs(twice) < reach || ((dx < 0) != (dy < 0) && twice == dx - dy);
    }

    /**
     * One coordinate of the crossing of two segments, rounded: floor(a + d n / m + 1/2).
     *
     * @param a the first segment's start on this axis
     * @param d its extent on this axis
     * @param n numerator of the crossing's parameter on the first segment
     * @param m denominator, not 0; 0 &lt; n / m &lt; 1
     */
    static int crossing(int a, long d, long n, long m) {
        double exactly = d * (n / (double) m);
        double floor = Math.floor(exactly + 0.5);
        if (Math.abs(exactly + 0.5 - Math.rint(exactly + 0.5)) > NEAR_TIE) {
            return (int) (a + (long) floor);
        }
        return (int) (a + roundedExactly(d, n, m));
    }

    /** floor(d n / m + 1/2) by integers alone. */
    static long roundedExactly(long d, long n, long m) {
        BigInteger twice = BigInteger.valueOf(d)
                .multiply(BigInteger.valueOf(n))
                .multiply(BigInteger.TWO)
                .add(BigInteger.valueOf(m));
        BigInteger[] parts = twice.divideAndRemainder(BigInteger.valueOf(m).multiply(BigInteger.TWO));
        boolean negative = parts[1].signum() != 0 && (parts[1].signum() < 0) != (m < 0);
        return parts[0].longValueExact() - (negative ? 1 : 0);
    }
}
