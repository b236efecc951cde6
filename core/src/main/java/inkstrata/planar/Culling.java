package inkstrata.planar;

import java.util.Arrays;

/**
 * Leaves out of a tile what nobody sees: shapes that are nowhere in it, shapes under a whole cover of their own colour, and
 * shapes under whole covers of as many colours as stacks are deep.
 *
 * <p>Exact. Each paint is what a shape, or an outermost group, makes together with all that lies beneath it; so what lies
 * above a whole opaque cover, and the cover itself, makes the same paints whatever lies under the cover. Hence:
 * <ul>
 *   <li>Whole opaque covers of m colours settle the first m paints with what lies above the lowest of them. The rest
 *       adds nothing to a stack of m.
 *   <li>An opaque shape under a whole cover of its own colour adds a paint that is there already, farther up. Leaving it out
 *       changes no other paint if nothing between it and the lowest whole cover above it is translucent: the paints of what
 *       is opaque are their own colours, and those of what lies above that cover do not depend on it.
 * </ul>
 * Marks lie on top of all and hide nothing.
 */
final class Culling {
    private static final int NOWHERE = 0;
    private static final int IN_PART = 1;
    private static final int WHOLE = 2;

    private final Drawing drawing;
    private final Paints paints;
    private final int depth;
    private final boolean[] evenOdd;
    private final int[] place;
    private final boolean[] coloursOver;
    private final int[] clipState;
    private final boolean[] clipNeeded;

    Culling(Drawing drawing, Paints paints, int depth) {
        this.drawing = drawing;
        this.paints = paints;
        this.depth = depth;
        this.evenOdd = drawing.evenOdd();
        this.place = new int[evenOdd.length];
        Arrays.fill(place, -1);
        this.coloursOver = new boolean[paints.colourCount()];
        this.clipState = new int[drawing.clipCount()];
        this.clipNeeded = new boolean[drawing.clipCount()];
    }

    /** The same tile without what nobody sees. */
    Tile cull(Tile tile) {
        int n = tile.outlines().length;
        for (int i = 0; i < n; i++) {
            place[tile.outlines()[i]] = i;
            int owner = drawing.owner()[tile.outlines()[i]];
            if (owner < 0) {
                clipState[~owner] = Math.max(clipState[~owner], outlineState(tile, i));
            }
        }
        boolean[] needed = new boolean[n];
        Ints shapes = new Ints(tile.shapes().length);
        Ints colours = new Ints(8);
        boolean shinesThrough = false;
        for (int s : tile.shapes()) {
            if (colours.size() >= depth) {
                break;
            }
            int colour = paints.colourOf(s);
            if (coloursOver[colour] && paints.isOpaque(s) && !shinesThrough) {
                continue;
            }
            int state = state(tile, s);
            if (state == NOWHERE) {
                continue;
            }
            shapes.add(s);
            needed[place[drawing.ownOutline()[s]]] = true;
            if (s < paints.marks()) {
                continue;
            }
            for (int clip : drawing.clips()[s]) {
                clipNeeded[clip] = true;
            }
            if (!paints.isOpaque(s)) {
                shinesThrough = true;
            } else if (state == WHOLE) {
                shinesThrough = false;
                if (!coloursOver[colour]) {
                    coloursOver[colour] = true;
                    colours.add(colour);
                }
            }
        }
        for (int i = 0; i < colours.size(); i++) {
            coloursOver[colours.get(i)] = false;
        }
        for (int i = 0; i < n; i++) {
            int outline = tile.outlines()[i];
            place[outline] = -1;
            int clip = ~drawing.owner()[outline];
            if (clip >= 0 && clipNeeded[clip]) {
                // Where a part lets everything through, the parts that end in the tile open or close nothing.
                int state = outlineState(tile, i);
                needed[i] = state != NOWHERE && state == clipState[clip];
            }
        }
        for (int i = 0; i < n; i++) {
            int clip = ~drawing.owner()[tile.outlines()[i]];
            if (clip >= 0) {
                clipState[clip] = NOWHERE;
                clipNeeded[clip] = false;
            }
        }
        return keep(tile, needed, shapes.toArray());
    }

    private int state(Tile tile, int shape) {
        int i = place[drawing.ownOutline()[shape]];
        int state = i < 0 ? NOWHERE : outlineState(tile, i);
        for (int clip : drawing.clips()[shape]) {
            state = Math.min(state, clipState[clip]);
        }
        return state;
    }

    private int outlineState(Tile tile, int i) {
        if (tile.start()[i + 1] > tile.start()[i]) {
            return IN_PART;
        }
        int winding = tile.winding()[i];
        boolean inside = evenOdd[tile.outlines()[i]] ? (winding & 1) != 0 : winding != 0;
        return inside ? WHOLE : NOWHERE;
    }

    private static Tile keep(Tile tile, boolean[] needed, int[] shapes) {
        int n = needed.length;
        int kept = 0;
        int pieces = 0;
        for (int i = 0; i < n; i++) {
            if (needed[i]) {
                kept++;
                pieces += tile.start()[i + 1] - tile.start()[i];
            }
        }
        if (kept == n) {
            return new Tile(tile.box(), tile.outlines(), tile.start(), tile.winding(), tile.pieces(), shapes);
        }
        int[] outlines = new int[kept];
        int[] start = new int[kept + 1];
        int[] winding = new int[kept];
        // Mostly those that go have no pieces here; then all pieces stay where they are.
        boolean allPieces = pieces == tile.pieceCount();
        int[] copy = allPieces ? tile.pieces() : new int[pieces * Tile.STRIDE];
        int k = 0;
        int at = 0;
        for (int i = 0; i < n; i++) {
            if (needed[i]) {
                outlines[k] = tile.outlines()[i];
                winding[k] = tile.winding()[i];
                start[k++] = at;
                int first = tile.start()[i];
                int count = tile.start()[i + 1] - first;
                if (!allPieces) {
                    System.arraycopy(tile.pieces(), first * Tile.STRIDE, copy, at * Tile.STRIDE, count * Tile.STRIDE);
                }
                at += count;
            }
        }
        start[k] = at;
        return new Tile(tile.box(), outlines, start, winding, copy, shapes);
    }
}
