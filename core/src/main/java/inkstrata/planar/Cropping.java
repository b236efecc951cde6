package inkstrata.planar;

/**
 * The first tile: everything within the frame.
 *
 * <p>Outlines that lie inside the frame, all around, are taken as they are: at the frame's corner they are not wound. The others are
 * cut from a box around all there is. At that box's corner nothing is wound, and splitting along the frame's sides carries
 * the winding numbers inside.
 */
final class Cropping {
    private final Segments segments;
    private final Box frame;
    private final Crew crew;
    /** For each outline the first of its segments; at the end the number of all. */
    private final int[] first;

    private final boolean[] isInside;

    private Cropping(int outlines, Segments segments, Box frame, Crew crew) {
        this.segments = segments;
        this.frame = frame;
        this.crew = crew;
        this.first = new int[outlines + 1];
        this.isInside = new boolean[outlines];
    }

    static Tile toFrame(Drawing drawing, Segments segments, Box frame, Crew crew) {
        Cropping cropping = new Cropping(drawing.areas().size(), segments, frame, crew);
        cropping.findOutlines();
        int[] shapes = new int[drawing.shapes().size()];
        for (int s = 0; s < shapes.length; s++) {
            shapes[s] = s;
        }
        return cropping.whole(cropping.cropped(shapes));
    }

    private void findOutlines() {
        for (int s = 0; s < segments.size(); s++) {
            first[segments.outline(s) + 1]++;
        }
        for (int o = 0; o < isInside.length; o++) {
            first[o + 1] += first[o];
        }
        crew.share(isInside.length, (from, until) -> {
            for (int o = from; o < until; o++) {
                isInside[o] = isInside(first[o], first[o + 1]);
            }
            return until - from;
        });
    }

    private boolean isInside(int from, int until) {
        for (int s = from; s < until; s++) {
            int x = segments.x0(s);
            int y = segments.y0(s);
            if (x <= frame.left() || x >= frame.right() || y <= frame.low() || y >= frame.high()) {
                return false;
            }
        }
        return true;
    }

    /** The outlines that lie partly or wholly beyond the frame, without what does. */
    private Tile cropped(int[] shapes) {
        Tile tile = beyond(shapes);
        TileSplitter splitter = new TileSplitter(segments);
        Box box = tile.box();
        if (box.left() < frame.left()) {
            tile = splitter.split(tile, true, frame.left())[1];
        }
        if (box.low() < frame.low()) {
            tile = splitter.split(tile, false, frame.low())[1];
        }
        if (box.right() > frame.right()) {
            tile = splitter.split(tile, true, frame.right())[0];
        }
        if (box.high() > frame.high()) {
            tile = splitter.split(tile, false, frame.high())[0];
        }
        return tile;
    }

    private Tile beyond(int[] shapes) {
        Ints outlines = new Ints(64);
        Ints start = new Ints(64);
        Ints pieces = new Ints(1024);
        int left = frame.left();
        int low = frame.low();
        int right = frame.right();
        int high = frame.high();
        for (int o = 0; o < isInside.length; o++) {
            if (isInside[o]) {
                continue;
            }
            outlines.add(o);
            start.add(pieces.size() / Tile.STRIDE);
            for (int s = first[o]; s < first[o + 1]; s++) {
                left = Math.min(left, segments.x0(s));
                low = Math.min(low, segments.y0(s));
                right = Math.max(right, segments.x0(s));
                high = Math.max(high, segments.y0(s));
                pieces.add(segments.x0(s));
                pieces.add(segments.y0(s));
                pieces.add(segments.x1(s));
                pieces.add(segments.y1(s));
                pieces.add(s);
            }
        }
        start.add(pieces.size() / Tile.STRIDE);
        // One step larger, so that no piece lies on the box itself.
        Box box = new Box(left - 1, low - 1, right + 1, high + 1);
        return new Tile(box, outlines.toArray(), start.toArray(), new int[outlines.size()], pieces.raw(), shapes);
    }

    /** All outlines, in their order. */
    private Tile whole(Tile cropped) {
        int n = isInside.length;
        int[] outlines = new int[n];
        int[] start = new int[n + 1];
        int[] winding = new int[n];
        int[] placeIn = new int[n];
        int next = 0;
        for (int o = 0; o < n; o++) {
            outlines[o] = o;
            placeIn[o] = next;
            if (isInside[o]) {
                start[o + 1] = start[o] + first[o + 1] - first[o];
            } else {
                start[o + 1] = start[o] + cropped.start()[next + 1] - cropped.start()[next];
                winding[o] = cropped.winding()[next++];
            }
        }
        int[] pieces = new int[Tile.STRIDE * start[n]];
        crew.share(n, (from, until) -> {
            for (int o = from; o < until; o++) {
                int at = Tile.STRIDE * start[o];
                if (isInside[o]) {
                    putSegments(first[o], first[o + 1], pieces, at);
                } else {
                    int source = Tile.STRIDE * cropped.start()[placeIn[o]];
                    System.arraycopy(cropped.pieces(), source, pieces, at, Tile.STRIDE * start[o + 1] - at);
                }
            }
            return until - from;
        });
        return new Tile(frame, outlines, start, winding, pieces, cropped.shapes());
    }

    private void putSegments(int from, int until, int[] pieces, int start) {
        int at = start;
        for (int s = from; s < until; s++) {
            pieces[at] = segments.x0(s);
            pieces[at + 1] = segments.y0(s);
            pieces[at + 2] = segments.x1(s);
            pieces[at + 3] = segments.y1(s);
            pieces[at + 4] = s;
            at += Tile.STRIDE;
        }
    }
}
