package inkstrata.shop;

/** Runs the line. */
public final class Separator {
    private Separator() {}
}
