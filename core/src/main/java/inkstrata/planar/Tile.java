package inkstrata.planar;

/**
 * A part of the canvas with the pieces of outlines that run through it.
 *
 * <p>A piece is the part of a source segment within the tile, as five ints: ax, ay, bx, by, segment. Pieces are grouped by
 * outline. An outline that is not listed is wound nowhere in the tile and has no piece in it; one without pieces is wound
 * everywhere or nowhere, by its winding number alone.
 *
 * @param box where the tile lies
 * @param outlines numbers of the outlines that matter, rising
 * @param start for each of them its first piece, and at the end the number of all
 * @param winding for each of them the winding number just inside the tile's left side, just above its low left corner
 * @param pieces five ints each; the array may be longer than needed
 * @param shapes the shapes that may be seen, topmost first
 */
record Tile(Box box, int[] outlines, int[] start, int[] winding, int[] pieces, int[] shapes) {
    /** Ints in one piece. */
    static final int STRIDE = 5;

    int pieceCount() {
        return start[outlines.length];
    }
}
