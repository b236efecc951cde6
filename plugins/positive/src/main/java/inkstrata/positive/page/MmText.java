package inkstrata.positive.page;

/**
 * Millimetres in text: the shortest decimal of hundredths of a micrometre.
 *
 * <p>A grid step is 25 of them, so vertices on the grid are written exactly.
 */
public final class MmText {
    private static final int PER_MM = 100_000;

    private MmText() {}

    public static String of(double millimetres) {
        StringBuilder text = new StringBuilder();
        append(text, millimetres);
        return text.toString();
    }

    /** Appends the nearest one; never {@code -0}. */
    static void append(StringBuilder text, double millimetres) {
        long units = Math.round(millimetres * PER_MM);
        long size = Math.abs(units);
        if (units < 0) {
            text.append('-');
        }
        text.append(size / PER_MM);
        long rest = size % PER_MM;
        if (rest > 0) {
            text.append('.');
        }
        for (int digit = PER_MM / 10; rest > 0; digit /= 10) {
            text.append((char) ('0' + rest / digit));
            rest %= digit;
        }
    }

    /** Whether two are written alike. */
    static boolean areEqual(double one, double other) {
        return Math.round(one * PER_MM) == Math.round(other * PER_MM);
    }
}
