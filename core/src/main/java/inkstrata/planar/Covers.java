package inkstrata.planar;

import java.util.Arrays;

/**
 * Which shapes of a tile cover the place where a walk over its faces stands: winding numbers of the outlines, and a bit for each
 * covering shape, topmost first.
 *
 * <p>Of each clip it counts the parts that are wound there, and of each shape the clips without any; so going across an
 * outline costs one step, and one more for each shape under a clip that opens or closes.
 */
final class Covers {
    private final int[] winding;
    private final boolean[] evenOdd;

    /** For each outline its shape in the tile, or {@code ~clip} in the tile. */
    private final int[] owner;

    private final ClipShapes clips;
    private final int[] woundParts;
    private final int[] closedClips;
    private final boolean[] ownIsWound;
    private final long[] bits;
    private boolean changed = true;

    Covers(Tile tile, Drawing drawing) {
        int n = tile.outlines().length;
        int shapes = tile.shapes().length;
        winding = tile.winding().clone();
        evenOdd = new boolean[n];
        owner = new int[n];
        clips = ClipShapes.of(tile, drawing);
        woundParts = new int[clips.count()];
        closedClips = new int[shapes];
        ownIsWound = new boolean[shapes];
        bits = new long[(shapes + 63) >> 6];
        for (int i = 0; i < n; i++) {
            int outline = tile.outlines()[i];
            evenOdd[i] = drawing.evenOdd()[outline];
            int of = drawing.owner()[outline];
            owner[i] = of >= 0 ? Arrays.binarySearch(tile.shapes(), of) : ~clips.place(~of);
        }
        for (int clip = 0; clip < clips.count(); clip++) {
            open(clip, false);
        }
        for (int i = 0; i < n; i++) {
            if (inside(i)) {
                wind(i, true);
            }
        }
    }

    /** Goes across an outline: {@code change} is added to its winding number. */
    void add(int outline, int change) {
        boolean before = inside(outline);
        winding[outline] += change;
        if (before != inside(outline)) {
            wind(outline, !before);
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

    private void wind(int outline, boolean wound) {
        int of = owner[outline];
        if (of >= 0) {
            ownIsWound[of] = wound;
            update(of);
        } else {
            int clip = ~of;
            woundParts[clip] += wound ? 1 : -1;
            if (woundParts[clip] == (wound ? 1 : 0)) {
                open(clip, wound);
            }
        }
    }

    private void open(int clip, boolean open) {
        for (int k = clips.first(clip); k < clips.first(clip + 1); k++) {
            int s = clips.shape(k);
            closedClips[s] += open ? -1 : 1;
            update(s);
        }
    }

    private void update(int s) {
        boolean covers = ownIsWound[s] && closedClips[s] == 0;
        long bit = 1L << (s & 63);
        if (((bits[s >> 6] & bit) != 0) != covers) {
            bits[s >> 6] ^= bit;
            changed = true;
        }
    }
}
