package inkstrata.artwork;

import java.util.List;
import java.util.stream.Collectors;

/** The artwork is at fault: what, where, and how to mend it, on one line for each element that is. */
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
        super(oneLine(file
                + (source.line() > 0 ? ":" + source.line() : "")
                + (source.toString().isEmpty() ? "" : " " + source)
                + ": " + wrong + " " + mend));
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

    /**
     * Several elements are at fault.
     *
     * @param each of them, one or more
     * @param more how many there are beyond these
     * @param outlook what can be done about all of them, a sentence
     */
    public ArtworkException(List<ArtworkException> each, int more, String outlook) {
        super(each.stream().map(ArtworkException::getMessage).collect(Collectors.joining("\n"))
                + (each.size() + more == 1 ? " " : "\n")
                + (more == 0 ? "" : "And " + more + " more of the kind.\n")
                + outlook);
        this.file = each.get(0).file;
        this.element = each.size() + more == 1 ? each.get(0).element : "";
        this.line = each.get(0).line;
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s*\\R\\s*", " ");
    }
}
