package inkstrata.positive.page.read;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.Consumer;

/**
 * The outlines of black pixels, exactly along their edges, found row by row from the top.
 *
 * <p>Every edge between a black and a clear pixel is walked with the black one on the right. Rows above the current one are known, so that an edge
 * coming from there has a last corner, and one going there has a next one; corners are linked as rows come. Black pixels that touch only
 * at a corner are apart. Memory grows with the corners, not with the pixels.
 */
final class PixelContours {
    /** More corners than this are no line art: a photograph, or half-tones. */
    static final int MOST_CORNERS = 24_000_000;

    private static final int NORTH = 0;
    private static final int SOUTH = 1;
    private static final int WEST = 2;
    private static final int EAST = 3;

    private final int width;

    private int[] x = new int[1 << 10];
    private int[] y = new int[1 << 10];
    private int[] next = new int[1 << 10];
    private int corners;

    /** Where the row above changes, and for each the corner that is linked with the upright edge below. */
    private int[] upperX = new int[0];

    private int[] upperCorner = new int[0];
    private int upperCount;

    private int[] lowerX = new int[0];
    private int[] lowerCorner = new int[0];
    private int lowerCount;

    private int row;

    /** At the place that is looked at: the level edge on its left, or on its right. */
    private int westCorner;

    private int eastCorner;
    private int atUpper;
    private int atLower;

    PixelContours(int width) {
        this.width = width;
    }

    /** There are more corners than a film has. */
    static final class TooManyException extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * Takes the next row.
     *
     * @param black one bit for each pixel, the leftmost the lowest bit of the first word; bits beyond the width are 0
     * @throws TooManyException if there are too many corners
     */
    void row(long[] black) {
        changes(black);
        level();
        int[] spare = upperX;
        upperX = lowerX;
        lowerX = spare;
        spare = upperCorner;
        upperCorner = lowerCorner;
        lowerCorner = spare;
        upperCount = lowerCount;
        row++;
    }

    /** Ends the picture, and hands over each closed outline: x and y of its corners in turn, in pixels. */
    void end(Consumer<int[]> taker) {
        row(new long[(width + 63) / 64]);
        BitSet done = new BitSet(corners);
        int[] outline = new int[64];
        for (int first = 0; first < corners; first++) {
            if (done.get(first)) {
                continue;
            }
            int count = 0;
            for (int corner = first; !done.get(corner); corner = next[corner]) {
                done.set(corner);
                if (count + 2 > outline.length) {
                    outline = Arrays.copyOf(outline, 2 * outline.length);
                }
                outline[count++] = x[corner];
                outline[count++] = y[corner];
            }
            taker.accept(Arrays.copyOf(outline, count));
        }
    }

    private void changes(long[] black) {
        lowerCount = 0;
        long before = 0;
        for (int word = 0; word <= width >> 6; word++) {
            long bits = word < black.length ? black[word] : 0;
            long changes = bits ^ (bits << 1 | before);
            before = bits >>> 63;
            while (changes != 0) {
                if (lowerCount == lowerX.length) {
                    lowerX = Arrays.copyOf(lowerX, Math.max(16, 2 * lowerCount));
                }
                lowerX[lowerCount++] = (word << 6) + Long.numberOfTrailingZeros(changes);
                changes &= changes - 1;
            }
        }
        if (lowerCorner.length < lowerX.length) {
            lowerCorner = new int[lowerX.length];
        }
    }

    /** Along the line between the row above and this one. */
    private void level() {
        int up = 0;
        int low = 0;
        boolean isUpperBlack = false;
        boolean isLowerBlack = false;
        while (up < upperCount || low < lowerCount) {
            int upper = up < upperCount ? upperX[up] : Integer.MAX_VALUE;
            int lower = low < lowerCount ? lowerX[low] : Integer.MAX_VALUE;
            int at = Math.min(upper, lower);
            boolean hasNorth = upper == at;
            boolean hasSouth = lower == at;
            boolean hasWest = isUpperBlack != isLowerBlack;
            boolean isEastward = isLowerBlack;
            atUpper = up;
            atLower = low;
            if (hasNorth) {
                isUpperBlack = !isUpperBlack;
                up++;
            }
            if (hasSouth) {
                isLowerBlack = !isLowerBlack;
                low++;
            }
            corner(
                    at,
                    hasNorth ? (isUpperBlack ? 1 : -1) : 0,
                    hasSouth ? (isLowerBlack ? 1 : -1) : 0,
                    hasWest ? (isEastward ? 1 : -1) : 0,
                    isUpperBlack == isLowerBlack ? 0 : isLowerBlack ? 1 : -1);
            westCorner = eastCorner;
        }
    }

    /**
     * Links the edges that meet at a place: two, or four.
     *
     * @param north the edge above: 1 is walked upwards, -1 downwards, 0 none
     * @param south the edge below, likewise
     * @param west the edge on the left: 1 is walked to the right, -1 to the left, 0 none
     * @param east the edge on the right, likewise
     */
    private void corner(int at, int north, int south, int west, int east) {
        if (north != 0 && south != 0 && west != 0 && east != 0) {
            if (north < 0) {
                link(NORTH, WEST, at);
                link(SOUTH, EAST, at);
            } else {
                link(WEST, SOUTH, at);
                link(EAST, NORTH, at);
            }
            return;
        }
        int in = north < 0 ? NORTH : south > 0 ? SOUTH : west > 0 ? WEST : EAST;
        int out = north > 0 ? NORTH : south < 0 ? SOUTH : west < 0 ? WEST : EAST;
        link(in, out, at);
    }

    private void link(int in, int out, int at) {
        boolean isStraight = in + out == NORTH + SOUTH || in + out == WEST + EAST;
        boolean isInKnown = in == NORTH || in == WEST;
        boolean isOutKnown = out == NORTH || out == WEST;
        if (isStraight) {
            if (isInKnown) {
                set(out, get(in));
            } else {
                set(in, get(out));
            }
            return;
        }
        int corner = added(at, row);
        if (isInKnown) {
            next[get(in)] = corner;
        } else {
            set(in, corner);
        }
        if (isOutKnown) {
            next[corner] = get(out);
        } else {
            set(out, corner);
        }
    }

    private int get(int edge) {
        return edge == NORTH ? upperCorner[atUpper] : westCorner;
    }

    private void set(int edge, int corner) {
        if (edge == SOUTH) {
            lowerCorner[atLower] = corner;
        } else {
            eastCorner = corner;
        }
    }

    private int added(int atX, int atY) {
        if (corners == x.length) {
            if (corners >= MOST_CORNERS) {
                throw new TooManyException();
            }
            int more = corners + (corners >> 1);
            x = Arrays.copyOf(x, more);
            y = Arrays.copyOf(y, more);
            next = Arrays.copyOf(next, more);
        }
        x[corners] = atX;
        y[corners] = atY;
        return corners++;
    }
}
