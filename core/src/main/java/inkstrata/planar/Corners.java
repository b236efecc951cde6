package inkstrata.planar;

/** How a line drawn around a bent border turns its outer corners. */
public enum Corners {
    /** An arc: nothing lies farther from the border than the width. */
    ROUND,
    /**
     * The sides run on until they meet, at most {@value #MITRE_LIMIT} widths from the corner; a sharper corner is cut off
     * there.
     */
    MITRE,
    /** A straight cut from the end of one side to the end of the other. */
    BEVEL;

    /** The limit of SVG strokes when they name none (SVG 2, section 13.5.5). */
    public static final double MITRE_LIMIT = 4;
}
