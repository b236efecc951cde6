package inkstrata.command;

import java.util.List;

/** The command line or a file it names is at fault: one line that says what, where, and how to mend it. */
final class CommandFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // List.copyOf gives one that is
    private final List<String> more;

    CommandFault(String message) {
        this(message, List.of());
    }

    /** @param more lines that go with it, such as a table */
    CommandFault(String message, List<String> more) {
        super(message);
        this.more = List.copyOf(more);
    }

    CommandFault(String message, Throwable cause) {
        super(message, cause);
        this.more = List.of();
    }

    List<String> more() {
        return more;
    }
}
