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
 */
public record MapSettings(int depth, Rgb backdrop, double flatnessMm, int tilePieces, int threads) {
    public static final int ALL = Integer.MAX_VALUE;
    public static final MapSettings DEFAULT = new MapSettings(
            ALL, Rgb.WHITE, Tolerance.FLATNESS_MM, 500, Runtime.getRuntime().availableProcessors());

    public MapSettings {
        if (depth < 1 || !(flatnessMm > 0) || tilePieces < 1 || threads < 1) {
            throw new IllegalArgumentException("depth " + depth + ", flatness " + flatnessMm + " mm, tile pieces "
                    + tilePieces + " and threads " + threads + " must all be more than 0");
        }
    }

    public MapSettings withDepth(int newDepth) {
        return new MapSettings(newDepth, backdrop, flatnessMm, tilePieces, threads);
    }

    public MapSettings withBackdrop(Rgb newBackdrop) {
        return new MapSettings(depth, newBackdrop, flatnessMm, tilePieces, threads);
    }

    public MapSettings withTilePieces(int newTilePieces) {
        return new MapSettings(depth, backdrop, flatnessMm, newTilePieces, threads);
    }

    public MapSettings withThreads(int newThreads) {
        return new MapSettings(depth, backdrop, flatnessMm, tilePieces, newThreads);
    }
}
