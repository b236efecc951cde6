package inkstrata.planar;

import inkstrata.artwork.Artwork;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;

/**
 * Areas of a map that have grown into others along the edges they share: by a width, within what they grow into, without
 * what is cut off from that edge, such as parts reached across something else.
 *
 * <p>All areas are mapped once more together with a {@link Corridor} along each border; so everything lies on the grid, work
 * grows as it does for a map, and neighbours share vertices. Vertices of the areas are kept; where a corridor's side comes
 * within half a grid step of an edge, or cuts it, that edge bends to the nearest point of the grid.
 */
public final class Spreading {
    private final List<StackSet> areas;
    private final SpreadStacks stacks;
    private final EdgeTable edges;
    private final double[] borderMm;
    private final int threads;

    private Spreading(List<StackSet> areas, SpreadStacks stacks, EdgeTable edges, double[] borderMm, int threads) {
        this.areas = areas;
        this.stacks = stacks;
        this.edges = edges;
        this.borderMm = borderMm;
        this.threads = threads;
    }

    /**
     * Spreads them all.
     *
     * @param areas may overlap
     * @param spreads no two of one area into the same stack
     * @param widthMm less than a grid step does nothing
     */
    public static Spreading of(
            PlanarMap map, List<StackSet> areas, List<Spread> spreads, double widthMm, Corners corners) {
        List<StackSet> sets = new ArrayList<>(areas);
        for (Spread spread : spreads) {
            sets.add(spread.from());
            sets.add(spread.into());
        }
        StackKinds kinds = StackKinds.of(map.stacks().size(), sets);
        try (Crew crew = new Crew(map.threads())) {
            Borderlines lines = Borderlines.of(map.edges(), kinds.kindOfStack(), crew);
            List<BorderChain> chains = SpreadBorders.chains(lines, kinds, spreads);
            double[] borderMm = new double[spreads.size()];
            chains.forEach(chain -> borderMm[chain.spread()] += chain.lengthMm());
            double width = widthMm * Grid.STEPS_PER_MM;
            Artwork drawing = SpreadDrawing.of(
                    map.frame(), lines, kinds.count(), width < 1 ? List.of() : chains, spreads.size(), width, corners);
            PlanarMap mapped = PlanarMapper.map(drawing, MapSettings.DEFAULT.withThreads(map.threads()));
            SpreadStacks stacks = new SpreadStacks(mapped.stacks(), kinds, spreads);
            EdgeTable edges = mapped.edges();
            for (int area = 0; area < areas.size(); area++) {
                edges = Strays.leftOut(edges, stacks, area, crew);
            }
            return new Spreading(List.copyOf(areas), stacks, edges, borderMm, map.threads());
        }
    }

    /** How long the edges are along which something spreads. */
    public double borderMm(int spread) {
        return borderMm[spread];
    }

    /** An area with all it has gained. */
    public Region grown(int area) {
        try (Crew crew = new Crew(threads)) {
            return Dissolving.dissolve(edges, stacks.grown(area, areas.get(area)), 1, crew)
                    .get(0);
        }
    }
}
