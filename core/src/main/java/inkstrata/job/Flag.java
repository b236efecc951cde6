package inkstrata.job;

/** A setting that is {@code true} or {@code false}, and nothing else: what {@code on} or {@code yes} is depends on who reads it. */
public final class Flag {
    private Flag() {}

    /**
     * Reads one.
     *
     * @throws IllegalArgumentException if it is neither, with a sentence that says which was meant
     */
    public static boolean parse(String text) {
        return switch (text) {
            case "true" -> true;
            case "false" -> false;
            case "yes", "on", "True", "TRUE" -> throw neither(text, "true");
            case "no", "off", "False", "FALSE" -> throw neither(text, "false");
            default -> throw neither(text, "true or false");
        };
    }

    private static IllegalArgumentException neither(String text, String meant) {
        return new IllegalArgumentException("'" + text + "' is neither true nor false. Write " + meant + ".");
    }
}
