package inkstrata.artwork;

/**
 * Something the reader could live with: what was found and what was done about it.
 *
 * @param severity how much it matters
 * @param source the element, or {@link Source#UNKNOWN}
 * @param text one sentence or two, without file, line and element
 */
public record Note(Severity severity, Source source, String text) {
    /** How much a note matters to the print. */
    public enum Severity {
        /** The film shows what the artist drew. */
        INFO,
        /** The film may differ from what the artist expects. */
        WARNING
    }

    public static Note info(Source source, String text) {
        return new Note(Severity.INFO, source, text);
    }

    public static Note warning(Source source, String text) {
        return new Note(Severity.WARNING, source, text);
    }
}
