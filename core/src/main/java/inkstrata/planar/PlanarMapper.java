package inkstrata.planar;

import inkstrata.artwork.Artwork;
import inkstrata.measure.Frame;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Makes the planar map of an artwork: flatten, cut into tiles leaving out what nobody sees, snap-round and label each tile on its
 * own, and glue the tiles along their straight borders.
 *
 * <p>Work grows as (n + k) log n for n segments and k crossings. Where the files lead: {@link Flattener}, {@link
 * TileWork} with {@link TileSplitter} and {@link Culling}, {@link MappedTile} with {@link TileNoding}, {@link HalfEdges},
 * {@link TileFaces} and {@link TileLabels}, then {@link Glue} and {@link Straightening}.
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
        return map(artwork, settings, UnaryOperator.identity());
    }

    /**
     * Maps an artwork whose colours stand for something.
     *
     * @param meaning what a stack of packed colours, top first, comes to: no edges run between places of one meaning
     */
    static PlanarMap map(Artwork artwork, MapSettings settings, UnaryOperator<int[]> meaning) {
        try (Crew crew = new Crew(settings.threads())) {
            Noded noded = noded(artwork, settings, meaning, crew);
            EdgeTable edges = Straightening.of(noded.edges(), noded.segments(), crew);
            return new PlanarMap(
                    edges, noded.segments(), noded.frame(), noded.stacks(), noded.swallowed(), settings.threads());
        }
    }

    /**
     * A map with all vertices that came up on the way.
     *
     * @param segments that the edges' sources name
     */
    record Noded(EdgeTable edges, Segments segments, Frame frame, List<PaintStack> stacks, List<Swallowed> swallowed) {}

    static Noded noded(Artwork artwork, MapSettings settings, UnaryOperator<int[]> meaning, Crew crew) {
        Drawing drawing = Drawing.of(artwork);
        Box frame = Box.of(artwork.frame());
        Flattened flattened = Flattened.of(drawing, settings.flatnessMm(), frame, crew);
        Segments segments = flattened.segments();
        Paints paints = new Paints(drawing.shapes());
        Tile whole = Cropping.toFrame(drawing, segments, frame, crew);
        Tile root = new Culling(drawing, paints, settings.depth()).cull(whole);
        TileWork.Shared shared = TileWork.Shared.of(drawing, segments, paints, settings, meaning);
        Glue.Glued glued = Glue.glue(crew.all(new TileWork(shared, root, 0)), shared.onLines(), paints, crew);
        return new Noded(glued.edges(), segments, frame.frame(), glued.stacks(), flattened.swallowed());
    }
}
