package inkstrata.positive.page.read;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;

/** Why a film's file is not read, in words. */
final class Refused {
    private static final int LONGEST = 160;

    private Refused() {}

    /** @param kind of file, such as PDF */
    static ArtworkException broken(String name, String kind, Throwable cause) {
        String reason = cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
        String words = reason.substring(0, Math.min(LONGEST, reason.length())).replaceFirst("\\.$", "");
        return new ArtworkException(
                name,
                Source.UNKNOWN,
                "it can't be read as " + kind + " (" + words + ").",
                "It may be cut off or damaged: output it again.");
    }

    static ArtworkException tooFine(String name, Throwable cause) {
        ArtworkException fault = new ArtworkException(
                name,
                Source.UNKNOWN,
                "its outlines have more corners than line art has.",
                "Films with half-tones are not read: output plain black areas.");
        fault.initCause(cause);
        return fault;
    }

    static ArtworkException tooLarge(String name, Throwable cause) {
        ArtworkException fault = new ArtworkException(
                name,
                Source.UNKNOWN,
                "it takes more memory than there is (" + (Runtime.getRuntime().maxMemory() >> 20) + " MiB).",
                "Output it simpler, or give the program more: JDK_JAVA_OPTIONS=-Xmx8g.");
        fault.initCause(cause);
        return fault;
    }
}
