package inkstrata.command;

import java.util.Locale;

/** The drawing is too large for the memory that the program may use. */
final class MemoryFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * At work on something.
     *
     * @param doing said as what was being done: {@code mapping 400 shapes}
     */
    MemoryFault(String doing, Throwable cause) {
        super(
                String.format(
                        Locale.ROOT,
                        "%s took more than the %d MiB of memory that the program may use: the drawing or its films are too"
                                + " large for that. Merge shapes of one colour, simplify paths, split the drawing, or give the"
                                + " program more memory: JDK_JAVA_OPTIONS=-Xmx8g.",
                        doing,
                        Runtime.getRuntime().maxMemory() >> 20),
                cause);
    }

    /** The fault itself, or this if it came from a lack of memory, on whatever thread. */
    static Throwable in(Throwable fault, String doing) {
        for (Throwable at = fault; at != null; at = at.getCause()) {
            if (at instanceof OutOfMemoryError) {
                return new MemoryFault(doing, fault);
            }
        }
        return fault;
    }
}
