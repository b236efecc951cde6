package inkstrata.measure;

/** Every tolerance of the shop, by name, in millimetres. */
public final class Tolerance {
    /**
     * The most a flattened curve may leave its curve. A twentieth of the finest line a screen holds at film printer
     * resolution; a larger value shows facets on big discs, a smaller one only adds vertices.
     */
    public static final double FLATNESS_MM = 0.005;

    private Tolerance() {}
}
