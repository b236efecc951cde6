package inkstrata.planar;

/** The first tile: everything within the frame. */
final class Cropping {
    private Cropping() {}

    /**
     * All pieces within the frame, cut from a box around all there is. At that box's corner nothing is wound, and splitting along
     * the frame's sides carries the winding numbers inside.
     */
    static Tile toFrame(Drawing drawing, Segments segments, Box frame) {
        Tile tile = everything(drawing, segments, frame);
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

    private static Tile everything(Drawing drawing, Segments segments, Box frame) {
        int outlineCount = drawing.areas().size();
        int[] outlines = new int[outlineCount];
        int[] start = new int[outlineCount + 1];
        int[] pieces = new int[segments.size() * Tile.STRIDE];
        int left = frame.left();
        int low = frame.low();
        int right = frame.right();
        int high = frame.high();
        for (int s = 0; s < segments.size(); s++) {
            int at = s * Tile.STRIDE;
            pieces[at] = segments.x0(s);
            pieces[at + 1] = segments.y0(s);
            pieces[at + 2] = segments.x1(s);
            pieces[at + 3] = segments.y1(s);
            pieces[at + 4] = s;
            start[segments.outline(s) + 1]++;
            left = Math.min(left, segments.x0(s));
            low = Math.min(low, segments.y0(s));
            right = Math.max(right, segments.x0(s));
            high = Math.max(high, segments.y0(s));
        }
        for (int o = 0; o < outlineCount; o++) {
            outlines[o] = o;
            start[o + 1] += start[o];
        }
        int[] shapes = new int[drawing.shapes().size()];
        for (int s = 0; s < shapes.length; s++) {
            shapes[s] = s;
        }
        // One step larger, so that no piece lies on the box itself.
        Box box = new Box(left - 1, low - 1, right + 1, high + 1);
        return new Tile(box, outlines, start, new int[outlineCount], pieces, shapes);
    }
}
