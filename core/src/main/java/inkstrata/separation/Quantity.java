package inkstrata.separation;

import java.util.OptionalDouble;

/**
 * The number behind a finding, for programs.
 *
 * @param measured what is there
 * @param limit what the rule allows; empty where it allows nothing that has a number
 * @param unit of both
 */
public record Quantity(double measured, OptionalDouble limit, Unit unit) {
    /** What a quantity is counted in; results for programs end their keys with it, as in {@code measuredMm}. */
    public enum Unit {
        MILLIMETRES("Mm"),
        SQUARE_MILLIMETRES("Mm2"),
        MICROMETRES("Um"),
        DEGREES("Degrees"),
        /** A ratio of two lengths. */
        TIMES("Times"),
        /** A difference of two colours. */
        CIEDE2000("Ciede2000"),
        /** How many there are. */
        COUNT("Count");

        private final String suffix;

        Unit(String suffix) {
            this.suffix = suffix;
        }

        /** The end of a key that holds a number in this unit. */
        public String suffix() {
            return suffix;
        }
    }

    /** @throws IllegalArgumentException if a number is not finite */
    public Quantity {
        if (!Double.isFinite(measured) || !Double.isFinite(limit.orElse(0))) {
            throw new IllegalArgumentException("measured " + measured + " and limit " + limit + " must be numbers");
        }
    }

    public static Quantity of(double measured, double limit, Unit unit) {
        return new Quantity(measured, OptionalDouble.of(limit), unit);
    }

    /** One for which the rule has no number. */
    public static Quantity of(double measured, Unit unit) {
        return new Quantity(measured, OptionalDouble.empty(), unit);
    }
}
