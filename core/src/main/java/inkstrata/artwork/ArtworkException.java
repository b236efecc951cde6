package inkstrata.artwork;

/** The artwork is at fault: what, where, and how to mend it, on one line. */
public final class ArtworkException extends RuntimeException {
    private static final long serialVersionUID = 1L;

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
    }
}
