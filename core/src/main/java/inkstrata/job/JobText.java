package inkstrata.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A job file as it was written, for what only its lines can tell.
 *
 * @param file its name, for messages
 * @param lines without their ends
 */
record JobText(String file, List<String> lines) {
    private static final String COLOUR = "#(?:[0-9A-Fa-f]{3}){1,2}";

    JobText {
        lines = List.copyOf(lines);
    }

    static JobText of(String file, String text) {
        return new JobText(file, text.lines().toList());
    }

    /**
     * What to say of a line in which a colour, or the name of an element, lacks its quotes: YAML takes it for a remark.
     *
     * @param line counted from 1
     */
    Optional<JobException> unquoted(int line) {
        return line < 1 || line > lines.size()
                ? Optional.empty()
                : unquoted(lines.get(line - 1))
                        .map(word -> new JobException(
                                file,
                                line,
                                "put the " + (word.matches(COLOUR) ? "colour" : "name") + " in quotes: \"" + word
                                        + "\". Without them YAML passes over all from # on."));
    }

    /** The first line down to one where YAML gave up that leaves a bracket open since a colour or name lacks its quotes. */
    Optional<JobException> unclosed(int to) {
        return IntStream.rangeClosed(1, Math.min(to, lines.size()))
                .filter(line -> leavesOpen(lines.get(line - 1)))
                .boxed()
                .flatMap(line -> unquoted(line).stream())
                .findFirst();
    }

    private static boolean leavesOpen(String line) {
        String before = line.substring(0, Math.max(0, remark(line)));
        return before.chars().filter(c -> c == '[' || c == '{').count()
                > before.chars().filter(c -> c == ']' || c == '}').count();
    }

    /** After a comma a remark may well stand, so that only what looks like a colour is taken for one. */
    private static Optional<String> unquoted(String line) {
        int at = remark(line);
        if (at < 0) {
            return Optional.empty();
        }
        String before = line.substring(0, at).stripTrailing();
        String word = line.substring(at).split("[\\s,\\]}]", 2)[0];
        boolean isValue =
                before.endsWith(":") || before.endsWith("[") || before.strip().equals("-");
        boolean isColour = word.matches(COLOUR) && before.endsWith(",");
        return word.length() > 1 && (isValue || isColour) ? Optional.of(word) : Optional.empty();
    }

    /** Where a line's remark begins; -1 if it has none. */
    private static int remark(String line) {
        char quote = 0;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean begins = i == 0 || " \t[{,".indexOf(line.charAt(i - 1)) >= 0;
            if (quote == '"' && c == '\\') {
                i++;
            } else if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (begins && (c == '"' || c == '\'')) {
                quote = c;
            } else if (begins && c == '#') {
                return i;
            }
        }
        return -1;
    }
}
