package inkstrata.command;

/** What the program tells the shell when it ends. */
final class ExitCode {
    static final int DONE = 0;

    /** All was written, but something was found that is at least as bad as {@code --fail-on} says. */
    static final int FINDINGS = 1;

    static final int ARTWORK_AT_FAULT = 2;

    /** The command line, the job file, a folder or a plug-in jar is at fault. */
    static final int COMMAND_AT_FAULT = 3;

    static final int OUR_FAULT = 4;

    private ExitCode() {}
}
