package inkstrata.plugin;

import java.util.List;

/**
 * One thing a job file may set for a plug-in.
 *
 * @param name small letters
 * @param kind what its value looks like
 * @param byDefault the value when the job says nothing, as a job file would write it; or words for where it is taken from
 * @param choices for {@link Kind#CHOICE} the values allowed, else empty
 * @param description one line
 */
public record Option(String name, Kind kind, String byDefault, List<String> choices, String description) {
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

    public Option {
        choices = List.copyOf(choices);
        if ((kind == Kind.CHOICE) == choices.isEmpty()) {
            throw new IllegalArgumentException("option " + name + ": choices belong to kind CHOICE, and only there");
        }
    }

    public static Option length(String name, String byDefault, String description) {
        return new Option(name, Kind.LENGTH, byDefault, List.of(), description);
    }

    public static Option number(String name, String byDefault, String description) {
        return new Option(name, Kind.NUMBER, byDefault, List.of(), description);
    }

    public static Option flag(String name, boolean byDefault, String description) {
        return new Option(name, Kind.FLAG, Boolean.toString(byDefault), List.of(), description);
    }

    public static Option choice(String name, String byDefault, List<String> choices, String description) {
        return new Option(name, Kind.CHOICE, byDefault, choices, description);
    }

    public static Option text(String name, String byDefault, String description) {
        return new Option(name, Kind.TEXT, byDefault, List.of(), description);
    }
}
