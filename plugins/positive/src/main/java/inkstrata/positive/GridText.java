package inkstrata.positive;

import inkstrata.measure.Grid;

/**
 * Grid steps as millimetres in text: the shortest decimal that is exactly the step's value.
 *
 * <p>A step is 0.00025 mm, so five decimals are always enough; whole numbers alone are used on the way.
 */
final class GridText {
    /** Hundred-thousandths of a millimetre in one step. */
    private static final int UNITS_PER_STEP = 100_000 / Grid.STEPS_PER_MM;

    private GridText() {}

    static String of(int steps) {
        StringBuilder text = new StringBuilder();
        append(text, steps);
        return text.toString();
    }

    static void append(StringBuilder text, int steps) {
        int size = Math.abs(steps);
        if (steps < 0) {
            text.append('-');
        }
        text.append(size / Grid.STEPS_PER_MM);
        int rest = size % Grid.STEPS_PER_MM * UNITS_PER_STEP;
        if (rest > 0) {
            text.append('.');
        }
        for (int digit = 10_000; rest > 0; digit /= 10) {
            text.append((char) ('0' + rest / digit));
            rest %= digit;
        }
    }
}
