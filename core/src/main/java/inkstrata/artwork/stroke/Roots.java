package inkstrata.artwork.stroke;

import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** Where functions of a leg's parameter change sign. */
final class Roots {
    /** Halvings of an interval until its ends are neighbours in 64 bits, about. */
    private static final int HALVINGS = 60;

    private Roots() {}

    /** Adds the places between two parameters where a function changes sign, as found between so many steps. */
    static void add(DoubleUnaryOperator function, double from, double to, int steps, Set<Double> roots) {
        double before = from;
        double valueBefore = function.applyAsDouble(from);
        for (int i = 1; i <= steps; i++) {
            double at = i == steps ? to : from + (to - from) * i / steps;
            double value = function.applyAsDouble(at);
            if (valueBefore * value < 0) {
                roots.add(bisected(function, before, at, valueBefore));
            } else if (value == 0 && at < to) {
                roots.add(at);
            }
            before = at;
            valueBefore = value;
        }
    }

    private static double bisected(DoubleUnaryOperator function, double from, double to, double valueFrom) {
        double low = from;
        double high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double value = function.applyAsDouble(middle);
            if (value == 0) {
                return middle;
            }
            if (value * valueFrom > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
