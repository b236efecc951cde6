package inkstrata.planar;

import java.util.Arrays;

/**
 * Which shapes of a tile cover the place where a walk over its faces stands: winding numbers of the outlines, and a bit for each
 * covering shape, topmost first.
 */
final class Covers {
    private final Tile tile;
    private final Drawing drawing;
    private final int[] winding;
    private final boolean[] evenOdd;
    private final int[] firstDependent;
    private final int[] dependents;
    private final long[] bits;
    private final int[] place;
    private boolean changed = true;

    Covers(Tile tile, Drawing drawing) {
        this.tile = tile;
        this.drawing = drawing;
        int n = tile.outlines().length;
        winding = tile.winding().clone();
        evenOdd = new boolean[n];
        for (int i = 0; i < n; i++) {
            evenOdd[i] = drawing.evenOdd(tile.outlines()[i]);
        }
        place = new int[tile.shapes().length];
        firstDependent = new int[n + 1];
        dependents = dependents();
        bits = new long[(tile.shapes().length + 63) >> 6];
        for (int s = 0; s < tile.shapes().length; s++) {
            update(s);
        }
    }

    /** Goes across an outline: {@code change} is added to its winding number. */
    void add(int outline, int change) {
        boolean before = inside(outline);
        winding[outline] += change;
        if (before != inside(outline)) {
            for (int d = firstDependent[outline]; d < firstDependent[outline + 1]; d++) {
                update(dependents[d]);
            }
        }
    }

    /** Whether any bit has flipped since this was last asked. */
    boolean changed() {
        boolean answer = changed;
        changed = false;
        return answer;
    }

    /** A bit for each shape of the tile, topmost first, the low bit of the first word first. */
    long[] bits() {
        return bits;
    }

    private boolean inside(int outline) {
        return evenOdd[outline] ? (winding[outline] & 1) != 0 : winding[outline] != 0;
    }

    private void update(int s) {
        boolean covers = covers(s);
        long bit = 1L << (s & 63);
        if (((bits[s >> 6] & bit) != 0) != covers) {
            bits[s >> 6] ^= bit;
            changed = true;
        }
    }

    private boolean covers(int s) {
        if (!inside(place[s])) {
            return false;
        }
        int[][] clips = drawing.clips()[tile.shapes()[s]];
        for (int c = 0; clips != null && c < clips.length; c++) {
            if (!anyInside(clips[c])) {
                return false;
            }
        }
        return true;
    }

    private boolean anyInside(int[] parts) {
        for (int part : parts) {
            int i = Arrays.binarySearch(tile.outlines(), part);
            if (i >= 0 && inside(i)) {
                return true;
            }
        }
        return false;
    }

    /** For each outline of the tile the shapes that depend on it. */
    private int[] dependents() {
        Ints outlines = new Ints(tile.shapes().length);
        Ints shapes = new Ints(tile.shapes().length);
        for (int s = 0; s < tile.shapes().length; s++) {
            int shape = tile.shapes()[s];
            place[s] = Arrays.binarySearch(tile.outlines(), drawing.ownOutline()[shape]);
            outlines.add(place[s]);
            shapes.add(s);
            int[][] clips = drawing.clips()[shape];
            for (int c = 0; clips != null && c < clips.length; c++) {
                for (int part : clips[c]) {
                    int i = Arrays.binarySearch(tile.outlines(), part);
                    if (i >= 0) {
                        outlines.add(i);
                        shapes.add(s);
                    }
                }
            }
        }
        for (int k = 0; k < outlines.size(); k++) {
            firstDependent[outlines.get(k) + 1]++;
        }
        for (int i = 0; i < winding.length; i++) {
            firstDependent[i + 1] += firstDependent[i];
        }
        int[] at = firstDependent.clone();
        int[] result = new int[outlines.size()];
        for (int k = 0; k < result.length; k++) {
            result[at[outlines.get(k)]++] = shapes.get(k);
        }
        return result;
    }
}
