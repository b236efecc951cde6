package inkstrata.job;

/** The job file or a setting is at fault: what, where, and how to mend it, on one line. */
public final class JobException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;

    /**
     * @param file name of the job file; empty if there is none
     * @param line from 1; 0 if unknown
     * @param message what is wrong and what to do
     */
    public JobException(String file, int line, String message) {
        super((file.isEmpty() ? "job" : file) + (line > 0 ? ":" + line : "") + ": " + message);
        this.file = file;
        this.line = line;
    }

    /** Name of the job file; empty if there is none. */
    public String file() {
        return file;
    }

    /** From 1; 0 if unknown. */
    public int line() {
        return line;
    }
}
