package inkstrata.planar;

/**
 * Cuts a tile in two along a vertical or horizontal grid line.
 *
 * <p>A piece across the line is cut where its <em>source segment</em> meets the line, rounded: a function of segment and line
 * alone, so equal for both tiles and all duplicates, and cuts do not add up. Pieces that lie on a tile's frame are dropped
 * from it. How the winding number travels to the corner of the other half is told at {@link #windingBeyond}.
 */
final class TileSplitter {
    private final Segments segments;
    private final Ints onLines = new Ints(16);

    private Tile tile;
    private boolean vertical;
    private int line;
    private Half below;
    private Half above;
    private int cornerChange;
    private int windingChange;

    TileSplitter(Segments segments) {
        this.segments = segments;
    }

    /** Where a piece goes. */
    private enum Way {
        BELOW,
        ALONG,
        ABOVE,
        ACROSS
    }

    /** One half while it fills. */
    private static final class Half {
        private final Box box;
        private final int[] start;
        private final Ints pieces;
        private final Ints onLines;

        Half(Box box, int outlines, int expected, Ints onLines) {
            this.box = box;
            this.start = new int[outlines + 1];
            this.pieces = new Ints(expected);
            this.onLines = onLines;
        }

        void add(int ax, int ay, int bx, int by, int segment) {
            boolean onFrame = (ax == bx && (ax == box.left() || ax == box.right()))
                    || (ay == by && (ay == box.low() || ay == box.high()));
            Ints list = onFrame ? onLines : pieces;
            list.add(ax);
            list.add(ay);
            list.add(bx);
            list.add(by);
            list.add(segment);
        }
    }

    /**
     * The two halves: left and right for a vertical line, low and high for a horizontal one.
     *
     * @param at x or y of the line, within the tile
     */
    Tile[] split(Tile whole, boolean verticalLine, int at) {
        tile = whole;
        vertical = verticalLine;
        line = at;
        Box box = whole.box();
        int n = whole.outlines().length;
        int expected = Tile.STRIDE * (whole.pieceCount() * 5 / 8 + 8);
        below = new Half(
                vertical
                        ? new Box(box.left(), box.low(), at, box.high())
                        : new Box(box.left(), box.low(), box.right(), at),
                n,
                expected,
                onLines);
        above = new Half(
                vertical
                        ? new Box(at, box.low(), box.right(), box.high())
                        : new Box(box.left(), at, box.right(), box.high()),
                n,
                expected,
                onLines);
        int[] windingBelow = new int[n];
        int[] windingAbove = new int[n];
        for (int i = 0; i < n; i++) {
            below.start[i] = below.pieces.size() / Tile.STRIDE;
            above.start[i] = above.pieces.size() / Tile.STRIDE;
            cornerChange = 0;
            windingChange = 0;
            dealOut(whole.pieces(), whole.start()[i] * Tile.STRIDE, whole.start()[i + 1] * Tile.STRIDE);
            windingBelow[i] = whole.winding()[i] + cornerChange;
            windingAbove[i] = windingBelow[i] + windingChange;
        }
        below.start[n] = below.pieces.size() / Tile.STRIDE;
        above.start[n] = above.pieces.size() / Tile.STRIDE;
        return new Tile[] {
            new Tile(below.box, whole.outlines(), below.start, windingBelow, below.pieces.raw(), whole.shapes()),
            new Tile(above.box, whole.outlines(), above.start, windingAbove, above.pieces.raw(), whole.shapes()),
        };
    }

    /** Deals out the pieces of one outline, as many at once as go the same way. */
    private void dealOut(int[] p, int start, int end) {
        int first = start;
        Way way = Way.BELOW;
        for (int k = start; k < end; k += Tile.STRIDE) {
            Way next = way(p, k);
            if (next != way) {
                send(way, p, first, k);
                first = k;
                way = next;
            }
        }
        send(way, p, first, end);
    }

    private Way way(int[] p, int k) {
        int u = vertical ? p[k] : p[k + 1];
        int v = vertical ? p[k + 2] : p[k + 3];
        if (u <= line && v <= line) {
            return u == v && u == line ? Way.ALONG : Way.BELOW;
        }
        return u >= line && v >= line ? Way.ABOVE : Way.ACROSS;
    }

    private void send(Way way, int[] p, int first, int end) {
        switch (way) {
            case BELOW -> {
                passBelow(p, first, end);
                below.pieces.addAll(p, first, end);
            }
            case ALONG -> {
                passBelow(p, first, end);
                onLines.addAll(p, first, end);
            }
            case ABOVE -> {
                passAbove(p, first, end);
                above.pieces.addAll(p, first, end);
            }
            case ACROSS -> {
                for (int k = first; k < end; k += Tile.STRIDE) {
                    cut(p[k], p[k + 1], p[k + 2], p[k + 3], p[k + 4]);
                }
            }
        }
    }

    private void passBelow(int[] p, int first, int end) {
        for (int k = first; k < end; k += Tile.STRIDE) {
            windingBeyond(p[k], p[k + 1], p[k + 2], p[k + 3]);
        }
    }

    private void passAbove(int[] p, int first, int end) {
        for (int k = first; k < end && !vertical; k += Tile.STRIDE) {
            windingAbove(p[k], p[k + 1], p[k + 2], p[k + 3]);
        }
    }

    /** The pieces dropped so far because they lie on a tile's frame, as in {@link Tile}. */
    int[] onLines() {
        return onLines.toArray();
    }

    private void cut(int ax, int ay, int bx, int by, int segment) {
        boolean rising = vertical ? ax < bx : ay < by;
        int cx = vertical ? line : segments.xAt(segment, line);
        int cy = vertical ? segments.yAt(segment, line) : line;
        if (!vertical && cx == tile.box().left()) {
            cornerChange += bentOntoLeftSide(ax, ay, bx, by);
        }
        if (rising) {
            putBelow(ax, ay, cx, cy, segment);
            putAbove(cx, cy, bx, by, segment);
        } else {
            putAbove(ax, ay, cx, cy, segment);
            putBelow(cx, cy, bx, by, segment);
        }
    }

    private void putBelow(int ax, int ay, int bx, int by, int segment) {
        windingBeyond(ax, ay, bx, by);
        below.add(ax, ay, bx, by, segment);
    }

    private void putAbove(int ax, int ay, int bx, int by, int segment) {
        if (!vertical) {
            windingAbove(ax, ay, bx, by);
        }
        above.add(ax, ay, bx, by, segment);
    }

    /**
     * Follows the corner's winding number to the other half.
     *
     * <p>Vertical line: walking right along the low side, each piece of the left half or on the line that rises from the low
     * side is crossed. Horizontal line: walking up the left side, the low half's pieces that touch the left side above
     * the corner and the pieces on the line that start at the left side are crossed; the high half's pieces that leave its
     * own low left corner too ({@link #windingAbove}).
     */
    private void windingBeyond(int ax, int ay, int bx, int by) {
        Box box = tile.box();
        if (vertical) {
            if (ay != by && Math.min(ay, by) == box.low()) {
                windingChange += by > ay ? -1 : 1;
            }
        } else if (ax != bx) {
            int y = ax < bx ? ay : by;
            if (Math.min(ax, bx) == box.left() && y > box.low()) {
                windingChange += bx > ax ? 1 : -1;
            }
        }
    }

    /**
     * A piece that left the tile's own corner and is bent onto the left side by the cut passes the place of the corner's
     * winding number, just inside that side.
     */
    private int bentOntoLeftSide(int ax, int ay, int bx, int by) {
        Box box = tile.box();
        if (ax == box.left() && ay == box.low()) {
            return -1;
        }
        return bx == box.left() && by == box.low() ? 1 : 0;
    }

    /** A piece that leaves the high half's low left corner. */
    private void windingAbove(int ax, int ay, int bx, int by) {
        int left = tile.box().left();
        if (ax < bx ? ax == left && ay == line : ax > bx && bx == left && by == line) {
            windingChange += bx > ax ? 1 : -1;
        }
    }
}
