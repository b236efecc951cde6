package inkstrata.planar;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.RecursiveTask;
import java.util.function.UnaryOperator;

/**
 * Splits a tile until it is small and maps the parts, low and left halves first; other threads may take halves.
 *
 * <p>What a tile comes to depends on nothing but the pieces in it. So a part of an earlier map is taken over if the tile of that box
 * holds no outline that is new since.
 */
final class TileWork extends RecursiveTask<MappedPart> {
    private static final long serialVersionUID = 1L;

    /** No tile is split below this width and height, in grid steps. */
    private static final int SMALLEST = 64;

    /** After so many splits in a row that leave nearly all pieces in one half and cut many, splitting is no use. */
    private static final int MOST_FUTILE = 8;

    private final transient Shared shared;
    private final transient Tile tile;
    private final transient Optional<MappedPart> before;
    private final int futile;

    /**
     * What all tiles of a map share.
     *
     * @param bench one for each thread
     * @param known outlines with lower numbers are as they were in the map before
     */
    record Shared(Drawing drawing, Segments segments, MapSettings settings, ThreadLocal<Workbench> bench, int known) {
        static Shared of(
                Drawing drawing,
                Segments segments,
                Paints paints,
                MapSettings settings,
                UnaryOperator<int[]> meaning,
                int known) {
            return new Shared(
                    drawing,
                    segments,
                    settings,
                    ThreadLocal.withInitial(() -> Workbench.of(drawing, paints, settings, meaning)),
                    known);
        }
    }

    TileWork(Shared shared, Tile tile, int futile, Optional<MappedPart> before) {
        this.shared = shared;
        this.tile = tile;
        this.before = before;
        this.futile = futile;
    }

    @Override
    protected MappedPart compute() {
        if (before.isPresent() && holdsNothingNew()) {
            return before.get();
        }
        if (isSmall()) {
            return MappedPart.of(
                    MappedTile.of(tile, shared.drawing(), shared.bench().get()));
        }
        Box box = tile.box();
        boolean vertical = box.width() >= box.height();
        int at = vertical ? box.left() + box.width() / 2 : box.low() + box.height() / 2;
        TileSplitter splitter = new TileSplitter(shared.segments());
        Tile[] halves = splitter.split(tile, vertical, at);
        Culling culling = shared.bench().get().culling();
        Tile lowTile = culling.cull(halves[0]);
        Tile highTile = culling.cull(halves[1]);
        int nowFutile = isFutile(lowTile.pieceCount(), highTile.pieceCount()) ? futile + 1 : 0;
        TileWork low = new TileWork(shared, lowTile, nowFutile, halfBefore(0));
        TileWork high = new TileWork(shared, highTile, nowFutile, halfBefore(1));
        high.fork();
        MappedPart lowPart = low.compute();
        return new MappedPart(box, Optional.empty(), List.of(lowPart, high.join()), splitter.onLines());
    }

    private Optional<MappedPart> halfBefore(int half) {
        return before.filter(part -> part.tile().isEmpty())
                .map(part -> part.halves().get(half));
    }

    private boolean holdsNothingNew() {
        int[] outlines = tile.outlines();
        return outlines.length == 0 || outlines[outlines.length - 1] < shared.known();
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
