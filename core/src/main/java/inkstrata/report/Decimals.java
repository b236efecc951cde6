package inkstrata.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers of results: rounded half up, without zeros at the end, never with an exponent. */
public final class Decimals {
    private Decimals() {}

    /** In millimetres or any other unit of a finding, to 0.00001: all of the grid's steps. */
    public static BigDecimal length(double millimetres) {
        return rounded(millimetres, 5);
    }

    /** In square millimetres, to 0.0001. */
    public static BigDecimal area(double squareMillimetres) {
        return rounded(squareMillimetres, 4);
    }

    /** A share from 0 to 1, to 0.0001. */
    public static BigDecimal share(double share) {
        return rounded(share, 4);
    }

    /** Of two colours (CIEDE2000), to 0.01. */
    public static BigDecimal difference(double ciede2000) {
        return rounded(ciede2000, 2);
    }

    private static BigDecimal rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
