package inkstrata.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length on the sheet.
 *
 * @param millimetres any finite number
 */
public record Length(double millimetres) {
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("\\s*([-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*([A-Za-z]+)\\s*");

    public Length {
        if (!Double.isFinite(millimetres)) {
            throw new IllegalArgumentException("a length must be finite, not " + millimetres);
        }
    }

    /**
     * Reads a number with its unit: {@code 0.4 mm}, {@code 20cm}, {@code 12 in}, {@code 36pt}.
     *
     * @throws IllegalArgumentException if there is no number, no unit, or an unknown unit
     */
    public static Length parse(String text) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "'" + text + "' is not a length. Write a number and a unit, for example 0.4 mm.");
        }
        LengthUnit unit = LengthUnit.named(matcher.group(2))
                .orElseThrow(() -> new IllegalArgumentException("'" + matcher.group(2) + "' in '" + text
                        + "' is not a unit of length. Use mm, cm, in, pt, pc, px or Q."));
        return new Length(Double.parseDouble(matcher.group(1)) * unit.millimetres());
    }
}
