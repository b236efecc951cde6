package inkstrata.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths in millimetres as they are said to people. */
public final class LengthText {
    private static final int DECIMALS = 2;

    private LengthText() {}

    /** Rounded down to a hundredth, for what is said to hold: never more than does. */
    public static String down(double millimetres) {
        return BigDecimal.valueOf(millimetres)
                .setScale(DECIMALS, RoundingMode.FLOOR)
                .toPlainString();
    }

    /** With two decimals, or as many as it has, for what somebody asked. */
    public static String asked(double millimetres) {
        BigDecimal exact = BigDecimal.valueOf(millimetres).stripTrailingZeros();
        return exact.setScale(Math.max(DECIMALS, exact.scale())).toPlainString();
    }
}
