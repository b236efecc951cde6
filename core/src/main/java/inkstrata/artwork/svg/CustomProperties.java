package inkstrata.artwork.svg;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Custom properties in force at an element, and what {@code var()} makes of them (CSS Custom Properties 1). */
final class CustomProperties {
    static final CustomProperties NONE = new CustomProperties(Map.of());
    private static final int DEEPEST = 20;

    private final Map<String, String> values;

    private CustomProperties(Map<String, String> values) {
        this.values = values;
    }

    /** Those of the parent with the element's own over them. */
    CustomProperties with(Map<String, String> own) {
        if (own.isEmpty()) {
            return this;
        }
        Map<String, String> all = new HashMap<>(values);
        all.putAll(own);
        return new CustomProperties(all);
    }

    /** The value without {@code var()}; empty if one has no value, leads back to itself, or grows too long. */
    Optional<String> resolved(String value) {
        return resolved(value, 0);
    }

    private Optional<String> resolved(String value, int depth) {
        StringBuilder text = new StringBuilder();
        int from = 0;
        int call = indexOfVar(value, 0);
        while (call >= 0) {
            int end = CssText.find(value, call + 4, ")");
            Optional<String> replacement =
                    depth == DEEPEST ? Optional.empty() : replacement(value.substring(call + 4, end), depth + 1);
            if (replacement.isEmpty() || text.length() > Limits.VALUE_CHARACTERS) {
                return Optional.empty();
            }
            text.append(value, from, call).append(replacement.get());
            from = Math.min(value.length(), end + 1);
            call = indexOfVar(value, from);
        }
        text.append(value, from, value.length());
        return text.length() > Limits.VALUE_CHARACTERS
                ? Optional.empty()
                : Optional.of(text.toString().trim());
    }

    private Optional<String> replacement(String arguments, int depth) {
        int comma = CssText.find(arguments, 0, ",");
        String value = values.get(arguments.substring(0, comma).trim());
        if (value != null) {
            Optional<String> resolved = resolved(value, depth);
            if (resolved.isPresent()) {
                return resolved;
            }
        }
        return comma < arguments.length() ? resolved(arguments.substring(comma + 1), depth) : Optional.empty();
    }

    static boolean hasVar(String value) {
        return indexOfVar(value, 0) >= 0;
    }

    private static int indexOfVar(String value, int from) {
        for (int at = value.indexOf('(', from); at >= 0; at = value.indexOf('(', at + 1)) {
            if (at >= 3 && at - 3 >= from && value.regionMatches(true, at - 3, "var", 0, 3)) {
                return at - 3;
            }
        }
        return -1;
    }
}
