package inkstrata.planar;

import java.util.Arrays;

/**
 * Leaves out of a tile what nobody sees: shapes that are nowhere in it, shapes under a whole cover of their own colour, and
 * shapes under whole covers of as many colours as stacks are deep.
 *
 * <p>Exact, since the first m colours of a stack are settled by the m-th whole opaque cover and what lies above it; a shape
 * in the colour of an opaque cover above it adds no colour. The second rule is off where anything is translucent:
 * what shines through would change when a shape beneath it is left out.
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

    Culling(Drawing drawing, Paints paints, int depth) {
        this.drawing = drawing;
        this.paints = paints;
        this.depth = depth;
        this.evenOdd = new boolean[drawing.areas().size()];
        for (int o = 0; o < evenOdd.length; o++) {
            evenOdd[o] = drawing.evenOdd(o);
        }
        this.place = new int[evenOdd.length];
        Arrays.fill(place, -1);
        this.coloursOver = new boolean[paints.colourCount()];
    }

    /** The same tile without what nobody sees. */
    Tile cull(Tile tile) {
        int n = tile.outlines().length;
        for (int i = 0; i < n; i++) {
            place[tile.outlines()[i]] = i;
        }
        boolean[] needed = new boolean[n];
        Ints shapes = new Ints(tile.shapes().length);
        Ints colours = new Ints(8);
        for (int s : tile.shapes()) {
            if (colours.size() >= depth) {
                break;
            }
            int colour = paints.colourOf(s);
            if (coloursOver[colour] && paints.allOpaque()) {
                continue;
            }
            int state = state(tile, s);
            if (state == NOWHERE) {
                continue;
            }
            shapes.add(s);
            need(tile, s, needed);
            if (state == WHOLE && paints.isOpaque(s) && !coloursOver[colour]) {
                coloursOver[colour] = true;
                colours.add(colour);
            }
        }
        for (int i = 0; i < colours.size(); i++) {
            coloursOver[colours.get(i)] = false;
        }
        for (int i = 0; i < n; i++) {
            place[tile.outlines()[i]] = -1;
        }
        return keep(tile, needed, shapes.toArray());
    }

    private int state(Tile tile, int shape) {
        int state = outlineState(tile, drawing.ownOutline()[shape]);
        int[][] clips = drawing.clips()[shape];
        for (int c = 0; clips != null && c < clips.length && state != NOWHERE; c++) {
            state = Math.min(state, clipState(tile, clips[c]));
        }
        return state;
    }

    private int clipState(Tile tile, int[] parts) {
        int state = NOWHERE;
        for (int part : parts) {
            state = Math.max(state, outlineState(tile, part));
        }
        return state;
    }

    private int outlineState(Tile tile, int outline) {
        int i = place[outline];
        if (i < 0) {
            return NOWHERE;
        }
        if (tile.start()[i + 1] > tile.start()[i]) {
            return IN_PART;
        }
        int winding = tile.winding()[i];
        boolean inside = evenOdd[outline] ? (winding & 1) != 0 : winding != 0;
        return inside ? WHOLE : NOWHERE;
    }

    private void need(Tile tile, int shape, boolean[] needed) {
        needed[place[drawing.ownOutline()[shape]]] = true;
        int[][] clips = drawing.clips()[shape];
        for (int c = 0; clips != null && c < clips.length; c++) {
            boolean whole = clipState(tile, clips[c]) == WHOLE;
            for (int part : clips[c]) {
                int state = outlineState(tile, part);
                if (state == WHOLE || (state == IN_PART && !whole)) {
                    needed[place[part]] = true;
                }
            }
        }
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
        int[] outlines = new int[kept];
        int[] start = new int[kept + 1];
        int[] winding = new int[kept];
        int[] copy = new int[pieces * Tile.STRIDE];
        int k = 0;
        int at = 0;
        for (int i = 0; i < n; i++) {
            if (needed[i]) {
                outlines[k] = tile.outlines()[i];
                winding[k] = tile.winding()[i];
                start[k++] = at;
                int first = tile.start()[i];
                int count = tile.start()[i + 1] - first;
                System.arraycopy(tile.pieces(), first * Tile.STRIDE, copy, at * Tile.STRIDE, count * Tile.STRIDE);
                at += count;
            }
        }
        start[k] = at;
        return new Tile(tile.box(), outlines, start, winding, copy, shapes);
    }
}
