package inkstrata.trap;

import inkstrata.colour.Lab;
import inkstrata.plan.Ink;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Sheet;

/**
 * Which of two neighbours gives way to the other: the lighter one, since the darker one's edge is what the eye reads (common
 * practice, no source).
 *
 * <p>A key gives way to nobody but a darker key: its drawing must not grow. Of two inks of the same lightness the one
 * farther from the eye gives way, so that its rim is hidden. Between others the print order decides nothing: a lighter ink
 * printed later grows over the darker one.
 * If it is opaque the rim has its own colour, if it is transparent the rim keeps the darker colour; in both cases the rim
 * lies within the darker area and looks like one of its neighbours.
 */
final class GivingWay {
    private GivingWay() {}

    /**
     * Whether one pull gives way to the other; of two pulls always exactly one does.
     *
     * @param one position in the plan
     * @param other another position
     */
    static boolean gives(Sheet sheet, PrintPlan plan, int one, int other) {
        Ink first = plan.pulls().get(one).ink();
        Ink second = plan.pulls().get(other).ink();
        if (first.key() != second.key()) {
            return second.key();
        }
        int lighter = Double.compare(lightness(first), lightness(second));
        return lighter == 0 ? sheet.isNearer(plan.pulls(), other, one) : lighter > 0;
    }

    /** How much of the trap's width each gives: half if they are alike, then both give. */
    static double share(PrintPlan plan, int one, int other, double alike) {
        Ink first = plan.pulls().get(one).ink();
        Ink second = plan.pulls().get(other).ink();
        boolean isCentred = !first.key() && !second.key() && Math.abs(lightness(first) - lightness(second)) < alike;
        return isCentred ? 0.5 : 1;
    }

    private static double lightness(Ink ink) {
        return Lab.of(ink.swatch()).lightness();
    }
}
