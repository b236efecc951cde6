package inkstrata.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A unit that was taken for another.
 *
 * @param meant the one that lengths are in, in words
 * @param taken the one that they were read in
 * @param times how much larger everything becomes by it
 */
record UnitSlip(String meant, String taken, double times) {
    /** Sizes are told so well by a film, as a ratio. */
    private static final double SAME = 0.002;

    /** Units of CSS (Values and Units 3, section 6.2), and the px of old drawing programs (common practice, no source). */
    private static final List<Unit> UNITS = List.of(
            new Unit("mm", 1),
            new Unit("px (1/96 inch)", 25.4 / 96),
            new Unit("points (1/72 inch)", 25.4 / 72),
            new Unit("px of 1/90 inch", 25.4 / 90),
            new Unit("cm", 10),
            new Unit("inches", 25.4));

    private record Unit(String name, double millimetres) {}

    /** The one that explains a size best: the commoner units first. */
    static Optional<UnitSlip> of(double times) {
        return all().stream()
                .filter(slip -> Math.abs(Math.log(slip.times / times)) < SAME)
                .min(Comparator.comparingDouble(slip -> Math.round(Math.abs(Math.log(slip.times / times)) / SAME)));
    }

    /** Each once. */
    static List<UnitSlip> all() {
        List<UnitSlip> slips = new ArrayList<>();
        for (Unit meant : UNITS) {
            for (Unit taken : UNITS) {
                if (!meant.equals(taken)) {
                    slips.add(new UnitSlip(meant.name, taken.name, taken.millimetres / meant.millimetres));
                }
            }
        }
        return slips;
    }

    String words() {
        return meant + " taken for " + taken;
    }
}
