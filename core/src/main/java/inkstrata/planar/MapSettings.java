package inkstrata.planar;

import inkstrata.colour.Rgb;
import inkstrata.measure.Tolerance;

/**
 * How a map is made.
 *
 * @param depth how many paints of each stack matter, from the top; {@link #ALL} for whole stacks
 * @param backdrop the sheet's colour, which shows through translucent shapes
 * @param flatnessMm the most a flattened curve may leave its curve
 * @param tilePieces a tile with more pieces than this is split; 500 is fastest, any value gives the same regions up to
 *     vertices on tile lines
 * @param threads 1 or more; the result does not depend on it
 * @param seamMm strips between shapes that are no wider than this, and that nobody drew, are closed; 0 for none ({@link
 *     SeamClosing})
 */
public record MapSettings(int depth, Rgb backdrop, double flatnessMm, int tilePieces, int threads, double seamMm) {
    public static final int ALL = Integer.MAX_VALUE;

    /** Wider strips hold on any mesh, so they are drawn (our own choice). */
    public static final double WIDEST_SEAM_MM = 0.5;

    public static final MapSettings DEFAULT = new MapSettings(
            ALL, Rgb.WHITE, Tolerance.FLATNESS_MM, 500, Runtime.getRuntime().availableProcessors(), 0);

    public MapSettings {
        if (depth < 1 || !(flatnessMm > 0) || tilePieces < 1 || threads < 1) {
            throw new IllegalArgumentException("depth " + depth + ", flatness " + flatnessMm + " mm, tile pieces "
                    + tilePieces + " and threads " + threads + " must all be more than 0");
        }
        if (!(seamMm >= 0 && seamMm <= WIDEST_SEAM_MM)) {
            throw new IllegalArgumentException("a seam of " + seamMm + " mm is outside 0 to " + WIDEST_SEAM_MM + " mm");
        }
    }

    public MapSettings withDepth(int newDepth) {
        return new MapSettings(newDepth, backdrop, flatnessMm, tilePieces, threads, seamMm);
    }

    public MapSettings withBackdrop(Rgb newBackdrop) {
        return new MapSettings(depth, newBackdrop, flatnessMm, tilePieces, threads, seamMm);
    }

    public MapSettings withTilePieces(int newTilePieces) {
        return new MapSettings(depth, backdrop, flatnessMm, newTilePieces, threads, seamMm);
    }

    public MapSettings withThreads(int newThreads) {
        return new MapSettings(depth, backdrop, flatnessMm, tilePieces, newThreads, seamMm);
    }

    public MapSettings withSeam(double newSeamMm) {
        return new MapSettings(depth, backdrop, flatnessMm, tilePieces, threads, newSeamMm);
    }
}
