package inkstrata.plugin;

import java.util.List;

/**
 * One thing a job file may set for a plug-in.
 *
 * @param name small letters
 * @param kind what its value looks like
 * @param byDefault the value when the job says nothing, as a job file would write it; or words for where it is taken from, which a job file may write too
 * @param choices for {@link Kind#CHOICE} the values allowed, else empty
 * @param range for {@link Kind#LENGTH} (in millimetres) and {@link Kind#NUMBER} the values allowed, else {@link Range#ALL}
 * @param description one line
 * @param oldName what it was called before; empty if it was called nothing else
 */
public record Option(
        String name,
        Kind kind,
        String byDefault,
        List<String> choices,
        Range range,
        String description,
        String oldName) {
    /** What a value looks like. */
    public enum Kind {
        /** A number with its unit, such as {@code 0.4 mm}. */
        LENGTH,
        NUMBER,
        /** {@code true} or {@code false}. */
        FLAG,
        CHOICE,
        TEXT
    }

    /**
     * Values from one to another, both included.
     *
     * @param least may be infinite
     * @param most may be infinite
     */
    public record Range(double least, double most) {
        public static final Range ALL = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

        public boolean holds(double value) {
            return value >= least && value <= most;
        }

        /** {@code 0.05 to 1}, without digits that say nothing. */
        @Override
        public String toString() {
            return plain(least) + " to " + plain(most);
        }

        private static String plain(double value) {
            return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
        }
    }

    public Option {
        choices = List.copyOf(choices);
        if ((kind == Kind.CHOICE) == choices.isEmpty()) {
            throw new IllegalArgumentException("option " + name + ": choices belong to kind CHOICE, and only there");
        }
    }

    /** A length in a range of millimetres. */
    public static Option length(String name, String byDefault, Range range, String description) {
        return new Option(name, Kind.LENGTH, byDefault, List.of(), range, description, "");
    }

    public static Option number(String name, String byDefault, Range range, String description) {
        return new Option(name, Kind.NUMBER, byDefault, List.of(), range, description, "");
    }

    public static Option flag(String name, boolean byDefault, String description) {
        return new Option(name, Kind.FLAG, Boolean.toString(byDefault), List.of(), Range.ALL, description, "");
    }

    public static Option choice(String name, String byDefault, List<String> choices, String description) {
        return new Option(name, Kind.CHOICE, byDefault, choices, Range.ALL, description, "");
    }

    public static Option text(String name, String byDefault, String description) {
        return new Option(name, Kind.TEXT, byDefault, List.of(), Range.ALL, description, "");
    }

    /** The same; a job file that still has its old name is told the new one. */
    public Option formerly(String newOldName) {
        return new Option(name, kind, byDefault, choices, range, description, newOldName);
    }
}
