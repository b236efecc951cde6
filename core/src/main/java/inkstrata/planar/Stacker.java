package inkstrata.planar;

/** What a set of covering shapes makes of a place: its marks, then its colours, top first, each once, at most so many. */
interface Stacker {
    /**
     * The stack of a place.
     *
     * @param shapes shapes of the tile, topmost first
     * @param covers a bit for each of them
     * @return packed sRGB colours
     */
    int[] stack(int[] shapes, long[] covers);

    /** A stacker for a drawing; it has scratch space of its own, so one for each thread. */
    static Stacker of(Drawing drawing, Paints paints, MapSettings settings) {
        return paints.allOpaque()
                ? new OpaqueStacker(paints, settings.depth())
                : new TranslucentStacker(drawing.shapes(), paints, settings.depth(), settings.backdrop());
    }
}
