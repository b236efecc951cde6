package inkstrata.plugin;

/** A plug-in is at fault: it can't be loaded, or two claim the same id. One line: what, which, and how to mend it. */
public final class PluginException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public PluginException(String message) {
        super(message);
    }

    public PluginException(String message, Throwable cause) {
        super(message, cause);
    }
}
