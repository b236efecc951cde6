package inkstrata.artwork;

/** The artwork is at fault: what, where, and how to mend it, on one line. */
public final class ArtworkException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final String element;
    private final int line;

    /**
     * @param file name of the file
     * @param source element and line, or {@link Source#UNKNOWN}
     * @param wrong what is wrong, a sentence
     * @param mend what to do about it, a sentence
     */
    public ArtworkException(String file, Source source, String wrong, String mend) {
        super(file
                + (source.line() > 0 ? ":" + source.line() : "")
                + (source.toString().isEmpty() ? "" : " " + source)
                + ": " + wrong + " " + mend);
        this.file = file;
        this.element = source.toString();
        this.line = source.line();
    }

    /** Name of the file. */
    public String file() {
        return file;
    }

    /** As in {@code <path id="sail">}; empty if it is not one element. */
    public String element() {
        return element;
    }

    /** From 1; 0 if unknown. */
    public int line() {
        return line;
    }
}
