package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.RecursiveTask;
import java.util.function.UnaryOperator;

/** Splits a tile until it is small and maps the parts, low and left halves first; other threads may take halves. */
final class TileWork extends RecursiveTask<List<MappedTile>> {
    private static final long serialVersionUID = 1L;

    /** No tile is split below this width and height, in grid steps. */
    private static final int SMALLEST = 64;

    /** After so many splits in a row that leave nearly all pieces in one half and cut many, splitting is no use. */
    private static final int MOST_FUTILE = 8;

    private final transient Shared shared;
    private final transient Tile tile;
    private final int futile;

    /**
     * What all tiles of a map share.
     *
     * @param bench one for each thread
     * @param onLines collects the pieces that lie on tile lines, as in {@link Tile}, in any order
     */
    record Shared(
            Drawing drawing,
            Segments segments,
            MapSettings settings,
            ThreadLocal<Workbench> bench,
            Queue<int[]> onLines) {
        static Shared of(
                Drawing drawing, Segments segments, Paints paints, MapSettings settings, UnaryOperator<int[]> meaning) {
            return new Shared(
                    drawing,
                    segments,
                    settings,
                    ThreadLocal.withInitial(() -> Workbench.of(drawing, paints, settings, meaning)),
                    new ConcurrentLinkedQueue<>());
        }
    }

    TileWork(Shared shared, Tile tile, int futile) {
        this.shared = shared;
        this.tile = tile;
        this.futile = futile;
    }

    @Override
    protected List<MappedTile> compute() {
        if (isSmall()) {
            return List.of(MappedTile.of(tile, shared.drawing(), shared.bench().get()));
        }
        Box box = tile.box();
        boolean vertical = box.width() >= box.height();
        int at = vertical ? box.left() + box.width() / 2 : box.low() + box.height() / 2;
        TileSplitter splitter = new TileSplitter(shared.segments());
        Tile[] halves = splitter.split(tile, vertical, at);
        shared.onLines().add(splitter.onLines());
        Culling culling = shared.bench().get().culling();
        Tile lowTile = culling.cull(halves[0]);
        Tile highTile = culling.cull(halves[1]);
        int nowFutile = isFutile(lowTile.pieceCount(), highTile.pieceCount()) ? futile + 1 : 0;
        TileWork low = new TileWork(shared, lowTile, nowFutile);
        TileWork high = new TileWork(shared, highTile, nowFutile);
        high.fork();
        List<MappedTile> result = new ArrayList<>(low.compute());
        result.addAll(high.join());
        return result;
    }

    private boolean isSmall() {
        Box box = tile.box();
        return tile.pieceCount() <= shared.settings().tilePieces()
                || futile >= MOST_FUTILE
                || (box.width() <= SMALLEST && box.height() <= SMALLEST);
    }

    /** Where hardly a piece is cut, a split closes in on what lies in a small part of the tile, and costs next to nothing. */
    private boolean isFutile(int low, int high) {
        int whole = tile.pieceCount();
        return Math.max(low, high) > 0.9 * whole && (long) low + high > 1.1 * whole;
    }
}
