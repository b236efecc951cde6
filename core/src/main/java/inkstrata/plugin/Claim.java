package inkstrata.plugin;

/** A decision that only one planner of a plan can take. */
public enum Claim {
    RUNNING_ON("what runs on beneath what");

    private final String words;

    Claim(String words) {
        this.words = words;
    }

    /** What is decided. */
    public String words() {
        return words;
    }
}
