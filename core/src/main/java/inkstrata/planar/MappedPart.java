package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A part of a map, finished: one tile, or two halves, low and left ones first. The next map of nearly the same drawing takes over those
 * parts in which nothing is new.
 *
 * @param box where it lies
 * @param tile if it was not split
 * @param halves if it was: two, else none
 * @param onLines pieces that lie on tile lines, as in {@link Tile}, of the split between the halves
 */
record MappedPart(Box box, Optional<MappedTile> tile, List<MappedPart> halves, int[] onLines) {
    static MappedPart of(MappedTile tile) {
        return new MappedPart(tile.box(), Optional.of(tile), List.of(), new int[0]);
    }

    /** All tiles, in their order. */
    List<MappedTile> tiles() {
        List<MappedTile> tiles = new ArrayList<>();
        forEach(part -> part.tile().ifPresent(tiles::add));
        return tiles;
    }

    /** The pieces on all lines between its tiles. */
    List<int[]> allOnLines() {
        List<int[]> all = new ArrayList<>();
        forEach(part -> all.add(part.onLines()));
        return all;
    }

    private void forEach(Consumer<MappedPart> action) {
        action.accept(this);
        halves.forEach(half -> half.forEach(action));
    }
}
