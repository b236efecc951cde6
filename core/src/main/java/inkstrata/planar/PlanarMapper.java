package inkstrata.planar;

import inkstrata.artwork.Artwork;
import inkstrata.measure.Frame;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Makes the planar map of an artwork: flatten, cut into tiles leaving out what nobody sees, snap-round and label each tile on its
 * own, and glue the tiles along their straight borders.
 *
 * <p>Work grows as (n + k) log n for n segments and k crossings. Where the files lead: {@link Flattener}, {@link
 * TileWork} with {@link TileSplitter} and {@link Culling}, {@link MappedTile} with {@link TileNoding}, {@link HalfEdges},
 * {@link TileFaces} and {@link TileLabels}, then {@link Glue}, {@link SeamClosing} and {@link Straightening}.
 */
public final class PlanarMapper {
    private PlanarMapper() {}

    /**
     * Maps an artwork.
     *
     * @param artwork on the sheet; what lies outside its frame is cut off
     * @throws IllegalArgumentException if the frame does not lie on the grid's 8 m
     */
    public static PlanarMap map(Artwork artwork, MapSettings settings) {
        try (Crew crew = new Crew(settings.threads())) {
            FlatDrawing flat = FlatDrawing.of(artwork, settings, crew);
            SeamClosing.Closed closed = SeamClosing.close(flat, settings, crew);
            return straightened(flat, closed.noded(), closed.seams(), settings, crew);
        }
    }

    /**
     * Maps an artwork whose colours stand for something; no seams are looked for.
     *
     * @param meaning what a stack of packed colours, top first, comes to: no edges run between places of one meaning
     */
    static PlanarMap map(Artwork artwork, MapSettings settings, UnaryOperator<int[]> meaning) {
        try (Crew crew = new Crew(settings.threads())) {
            FlatDrawing flat = FlatDrawing.of(artwork, settings, crew);
            return straightened(flat, noded(flat, settings, meaning, crew), List.of(), settings, crew);
        }
    }

    private static PlanarMap straightened(
            FlatDrawing flat, Noded noded, List<Seam> seams, MapSettings settings, Crew crew) {
        EdgeTable edges = Straightening.of(noded.edges(), noded.segments(), crew);
        return new PlanarMap(
                edges, noded.segments(), noded.frame(), noded.stacks(), flat.swallowed(), seams, settings.threads());
    }

    /**
     * An artwork as numbers, its curves as straight segments.
     *
     * @param swallowed contours of which rounding left nothing
     */
    record FlatDrawing(Drawing drawing, Segments segments, Box frame, List<Swallowed> swallowed) {
        static FlatDrawing of(Artwork artwork, MapSettings settings, Crew crew) {
            Drawing drawing = Drawing.of(artwork);
            Box frame = Box.of(artwork.frame());
            Flattened flattened = Flattened.of(drawing, settings.flatnessMm(), frame, crew);
            return new FlatDrawing(drawing, flattened.segments(), frame, flattened.swallowed());
        }

        /** The same beneath so many more marks, whose segments come after all others. */
        FlatDrawing under(int marks, Segments theirs, Crew crew) {
            return new FlatDrawing(
                    drawing.under(marks), Segments.joined(List.of(segments, theirs), crew), frame, swallowed);
        }
    }

    /**
     * A map with all vertices that came up on the way.
     *
     * @param segments that the edges' sources name
     */
    record Noded(EdgeTable edges, Segments segments, Frame frame, List<PaintStack> stacks) {}

    static Noded noded(Artwork artwork, MapSettings settings, UnaryOperator<int[]> meaning, Crew crew) {
        return noded(FlatDrawing.of(artwork, settings, crew), settings, meaning, crew);
    }

    static Noded noded(FlatDrawing flat, MapSettings settings, UnaryOperator<int[]> meaning, Crew crew) {
        return glued(flat, tiles(flat, settings, meaning, Optional.empty(), crew), crew);
    }

    /**
     * A drawing's tiles, mapped.
     *
     * @param outlines how many the drawing has
     */
    record Tiles(MappedPart root, int outlines) {}

    /**
     * Maps a drawing's tiles.
     *
     * @param before of the same drawing and settings, without its last outlines; tiles are taken over where these are not
     */
    static Tiles tiles(
            FlatDrawing flat, MapSettings settings, UnaryOperator<int[]> meaning, Optional<Tiles> before, Crew crew) {
        Drawing drawing = flat.drawing();
        Segments segments = flat.segments();
        Paints paints = new Paints(drawing);
        Tile whole = Cropping.toFrame(drawing, segments, flat.frame(), crew);
        Tile root = new Culling(drawing, paints, settings.depth()).cull(whole);
        int known = before.map(Tiles::outlines).orElse(0);
        TileWork.Shared shared = TileWork.Shared.of(drawing, segments, paints, settings, meaning, known);
        MappedPart part = crew.all(new TileWork(shared, root, 0, before.map(Tiles::root)));
        return new Tiles(part, drawing.areas().size());
    }

    static Noded glued(FlatDrawing flat, Tiles tiles, Crew crew) {
        Glue.Glued glued = Glue.glue(tiles.root().tiles(), tiles.root().allOnLines(), new Paints(flat.drawing()), crew);
        return new Noded(glued.edges(), flat.segments(), flat.frame().frame(), glued.stacks());
    }
}
