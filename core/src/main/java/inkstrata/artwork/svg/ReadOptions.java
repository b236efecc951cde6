package inkstrata.artwork.svg;

import java.util.OptionalDouble;

/**
 * What the person at the counter says about a file that the file does not say itself.
 *
 * @param widthMm the picture's true width; overrides what the file says
 * @param unitsPerInch how many user units make an inch where the file gives no unit; 96 is CSS's answer
 * @param keepOrigin the picture's corner is where the file's user units put it, not at 0, 0
 * @param leaveOut go on without elements that no film can hold, with a note on each, instead of refusing the file
 */
public record ReadOptions(OptionalDouble widthMm, OptionalDouble unitsPerInch, boolean keepOrigin, boolean leaveOut) {
    public static final ReadOptions DEFAULT = new ReadOptions(OptionalDouble.empty(), OptionalDouble.empty(), false);

    /** With the corner at 0, 0. */
    public ReadOptions(OptionalDouble widthMm, OptionalDouble unitsPerInch, boolean leaveOut) {
        this(widthMm, unitsPerInch, false, leaveOut);
    }

    public ReadOptions keepingOrigin() {
        return new ReadOptions(widthMm, unitsPerInch, true, leaveOut);
    }
}
