package inkstrata.command;

/** The command line or a file it names is at fault: one line that says what, where, and how to mend it. */
final class CommandFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CommandFault(String message) {
        super(message);
    }

    CommandFault(String message, Throwable cause) {
        super(message, cause);
    }
}
